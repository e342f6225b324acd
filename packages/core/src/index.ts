/** @rootreach/core: where tree roots threaten a buried drain line, why, and how sure that is. */

export { adviceFor, reasonFor } from './explain/advice.js';
export { wordAssumption } from './explain/assumption-words.js';
export { bandMeaning, wordChance } from './explain/chance-words.js';
export { wordIssue } from './explain/issue-words.js';
export { type WaterNumbers, wordWaterGap, wordWaterWarning } from './explain/water-words.js';
export { indexAround as treeIndex } from './geometry/box-index.js';
export { stretchesInside } from './geometry/overlap.js';
export { planeFor } from './geometry/plane.js';
export { polylineOf } from './geometry/polyline.js';
export { type Backtest, backtestBySite, backtestByTime, type SiteRecord } from './learn/backtest.js';
export { itemsOf } from './learn/items.js';
export { learn, observe } from './learn/learn.js';
export { readLearnedModel } from './learn/model-file.js';
export type { Caution } from './model/caution.js';
export type { Factor } from './model/factor.js';
export type { Assumption, Issue, IssueCode, Place, Severity } from './model/issue.js';
export type { LearnedGroup, LearnedModel } from './model/learned.js';
export type * from './model/result.js';
export type * from './model/site.js';
export type { MaterialMatch, SpeciesMatch } from './model/species-match.js';
export type * from './model/water-result.js';
export { resolveMaterial } from './names/resolve-material.js';
export { resolveSpecies } from './names/resolve-species.js';
export type { TextInput } from './read/parse-json.js';
export { assumptionsOf } from './risk/assumptions.js';
export type { RankOptions } from './risk/context.js';
export { factorsOf } from './risk/factors.js';
export type { Observation } from './risk/observed.js';
export { bandLimits, rank } from './risk/rank.js';
export { rootDensity } from './roots/density.js';
export { GLOBAL_BETA, shareBelow, trenchDepthFactor } from './roots/depth.js';
export { type Relation, relations } from './roots/relations.js';
export { bibliography, type SourceKey } from './sources/bibliography.js';
export { jointRow } from './tables/joints.js';
export { judgement } from './tables/judgement.js';
export { pipeRow } from './tables/pipes.js';
export { runoffTable, type SurfaceKey } from './tables/runoff.js';
export { speciesRow } from './tables/species.js';
export { yearOf } from './units/calendar.js';
export { fromInchesPerHour, toGallonsPerMinute, toInchesPerHour, toLitresPerSecond } from './units/flow.js';
export {
  fromFeet,
  fromInches,
  toCentimetres,
  toFeet,
  toInches,
  toMillimetres,
  toSquareFeet,
} from './units/length.js';
export { readSite, type SiteReading } from './validate/read-site.js';
export { siteFileSchemas } from './validate/schemas.js';
export { manningFull, manningPartial } from './water/manning.js';
export { type WaterOptions, waterOf } from './water/water.js';
