import type { RawRow } from '../take/raw-table.js';
import { sizeOf } from '../values/size.js';
import { UNIT_WORDS } from '../values/units.js';
import type { ColumnMap, ColumnUse, Field } from './column-map.js';
import { drainFieldNames, treeFieldNames } from './field-names.js';
import { guessPosition } from './guess-position.js';
import { type GuessedUnit, guessLengthUnit, guessPipeUnit, guessTrunkUnit } from './guess-unit.js';
import { type Header, headerOf, isCalled } from './header.js';
import { shareOf, valuesOf } from './sample.js';

/** One thing that was guessed, and from what. */
export interface Guess {
  readonly what: Field | 'position' | 'kind';
  readonly taken: string;
  readonly why: string;
  readonly sure: boolean;
}

/** A column map, and what was guessed to come to it. */
export interface GuessedMap {
  readonly map: ColumnMap;
  readonly guesses: readonly Guess[];
}

/** Number of rows that a guess looks at. */
export const SAMPLE_ROWS = 2000;

const SIZES: readonly Field[] = ['trunk', 'girth', 'canopyDiameter', 'canopyRadius', 'height'];
const NAMES: readonly Field[] = ['species', 'common', 'genus', 'material', 'street'];
/** A height or crown above this is more likely feet than metres (judgement: one street tree in twenty). */
const TALL_M = 32;
const WIDE_M = 24;
/** So is a pipe's cover (judgement). */
const DEEP_M = 4.5;

function unitOf(
  field: Field,
  what: ColumnMap['what'],
  header: Header,
  values: readonly unknown[],
): GuessedUnit | null {
  switch (field) {
    case 'trunk':
    case 'girth':
      return guessTrunkUnit(header, values, field === 'girth');
    case 'size':
      return guessPipeUnit(header, values);
    case 'height':
      return guessLengthUnit(header, values, TALL_M);
    case 'canopyDiameter':
      return guessLengthUnit(header, values, WIDE_M);
    case 'canopyRadius':
      return guessLengthUnit(header, values, WIDE_M / 2);
    case 'depth':
      return what === 'drain' ? guessLengthUnit(header, values, DEEP_M) : null;
    default:
      return null;
  }
}

/** A column of sizes holds sizes; a column of names does not. */
function fits(field: Field, values: readonly unknown[]): boolean {
  const sizes = shareOf(values, (value) => sizeOf(value) !== null);
  if (SIZES.includes(field)) return values.length === 0 || sizes > 0.5;
  if (NAMES.includes(field)) return sizes < 0.5;
  return true;
}

function columnFor(
  field: Field,
  names: readonly string[],
  headers: readonly Header[],
  rows: readonly RawRow[],
  taken: ReadonlySet<string>,
): Header | null {
  for (const name of names) {
    const found = headers.find(
      ({ words, column }) =>
        isCalled(words, name) && !taken.has(column) && fits(field, valuesOf(rows, column)),
    );
    if (found) return found;
  }
  return null;
}

/** Lines in the file's geometry or in a cell: GeoJSON, or well-known binary of type 2 or 5. */
function isLine({ geometry, properties }: RawRow): boolean {
  if (geometry !== null) return geometry.type.endsWith('LineString');
  return Object.values(properties).some(
    (value) =>
      typeof value === 'string' &&
      (/"type"\s*:\s*"(?:Multi)?LineString"/.test(value) ||
        /^01(?:02|05)0000[02]0[0-9a-fA-F]{32}/.test(value)),
  );
}

/**
 * How to read a file's columns, from their names and from a sample of their values.
 * @param sample up to `SAMPLE_ROWS` rows.
 * @param columns their names in the file.
 * @param crs grid of the positions; null where the file names none.
 */
export function guessMap(
  sample: readonly RawRow[],
  columns: readonly string[],
  crs: string | null,
): GuessedMap {
  const rows = sample.slice(0, SAMPLE_ROWS);
  const what = rows.filter(isLine).length > rows.length / 2 ? 'drain' : 'tree';
  const names: Readonly<Partial<Record<Field, readonly string[]>>> =
    what === 'tree' ? treeFieldNames : drainFieldNames;
  const place = guessPosition(rows, columns);
  const guesses: Guess[] = [
    { what: 'kind', taken: what, why: what === 'tree' ? 'it has no lines' : 'it has lines', sure: true },
  ];
  guesses.push({
    what: 'position',
    taken: place.why,
    why: 'name and values',
    sure: place.position.from !== 'none',
  });
  const used = new Set<string>(place.position.from === 'columns' ? [place.position.x, place.position.y] : []);
  const found: Partial<Record<Field, ColumnUse>> = {};
  const headers = columns.map(headerOf);
  for (const [field, list] of Object.entries(names) as [Field, readonly string[]][]) {
    const header = columnFor(field, list, headers, rows, used);
    if (!header) continue;
    used.add(header.column);
    const unit = unitOf(field, what, header, valuesOf(rows, header.column));
    found[field] = unit ? { column: header.column, unit: unit.unit } : { column: header.column };
    const taken = unit ? `${header.column} in ${UNIT_WORDS[unit.unit]}` : header.column;
    guesses.push({ what: field, taken, why: unit?.why ?? 'its name', sure: unit?.sure ?? true });
  }
  const map: ColumnMap = {
    schema: 1,
    kind: 'rootreach-columns',
    what,
    position: place.position,
    crs: place.onGrid ? crs : null,
    latitudeFirst: place.latitudeFirst,
    columns: found,
  };
  return { map, guesses };
}
