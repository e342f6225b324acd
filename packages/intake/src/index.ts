/** @rootreach/intake: other people's files to GeoJSON that the core reads, with a report of what was assumed. */

export type {
  ColumnMap,
  ColumnUse,
  DrainField,
  Field,
  PositionUse,
  TreeField,
} from './columns/column-map.js';
export { drainFieldNames, treeFieldNames } from './columns/field-names.js';
export { type Guess, type GuessedMap, guessMap, SAMPLE_ROWS } from './columns/guess-map.js';
export { readColumnMap } from './columns/read-map.js';
export type {
  ElevationFault,
  ElevationOptions,
  ElevationReading,
  HeightUnit,
} from './elevation/elevation-reading.js';
export { readElevation } from './elevation/read-elevation.js';
export type { PiecedFile } from './formats/open-pieces.js';
export { type SourceFile, textOf, Unreadable } from './formats/open-table.js';
export type { TextPieces } from './formats/text-pieces.js';
export { type Projection, projectionOf, type ToLonLat } from './positions/projection.js';
export { fate, type IntakeReport, type Reason, type ReportEntry } from './take/intake-report.js';
export { isSiteFile, needsTakingIn } from './take/is-site-file.js';
export type { Format, RawRow } from './take/raw-table.js';
export {
  columnsIn,
  type TakeInOptions,
  type TakenIn,
  type TakenInPieces,
  takeIn,
  takeInPieces,
} from './take/take-in.js';
export { Taker } from './take/taker.js';
export type { Unit } from './values/units.js';
export { wordElevationFault } from './words/elevation-words.js';
export { wordEntry, wordGuess, wordIntake } from './words/report-words.js';
