import { type Cited, cite } from '../sources/cited.js';

/** What rain falls on, as the table of runoff knows it. */
export type SurfaceKey =
  | 'roof'
  | 'asphalt'
  | 'concrete'
  | 'brick'
  | 'roof-or-paving'
  | 'lawn-sandy-flat'
  | 'lawn-sandy-average'
  | 'lawn-sandy-steep'
  | 'lawn-heavy-flat'
  | 'lawn-heavy-average'
  | 'lawn-heavy-steep';

/** Share of the rain that runs off a surface at once, for storms of about 5 to 10 years. */
export interface RunoffRow {
  readonly key: SurfaceKey;
  readonly name: string;
  readonly low: Cited<number>;
  readonly mid: Cited<number>;
  readonly high: Cited<number>;
}

const ASCE = 'asce-runoff-table';

/** A range of the table of the civil engineers; its middle is ours. */
function ranged(key: SurfaceKey, name: string, low: number, high: number): RunoffRow {
  const mid = Number(((low + high) / 2).toFixed(3));
  return {
    key,
    name,
    low: cite(low, ASCE, 'quoted'),
    mid: cite(mid, 'our-judgement', 'judgement', 'middle of the range'),
    high: cite(high, ASCE, 'quoted'),
  };
}

/** Shares of the rain that run off each surface, low to high: the rational method's C. */
export const runoffTable: readonly RunoffRow[] = [
  {
    key: 'roof',
    name: 'roof',
    low: cite(0.75, ASCE, 'quoted', 'roofs'),
    mid: cite(0.95, ASCE, 'quoted', 'roofs, high end'),
    high: cite(1, 'us-plumbing-code-storm', 'calculated', '0.0104 gpm per sq ft and in/h is all of the rain'),
  },
  ranged('asphalt', 'asphalt', 0.7, 0.95),
  ranged('concrete', 'concrete', 0.8, 0.95),
  ranged('brick', 'brick paving', 0.7, 0.85),
  {
    key: 'roof-or-paving',
    name: 'roof or paving',
    low: cite(0.7, ASCE, 'quoted', 'asphalt and brick, low end'),
    mid: cite(0.95, ASCE, 'quoted', 'roofs, asphalt and concrete, high end'),
    high: cite(1, 'us-plumbing-code-storm', 'calculated', '0.0104 gpm per sq ft and in/h is all of the rain'),
  },
  ranged('lawn-sandy-flat', 'lawn on sand, to 2 %', 0.05, 0.1),
  ranged('lawn-sandy-average', 'lawn on sand, 2 to 7 %', 0.1, 0.15),
  ranged('lawn-sandy-steep', 'lawn on sand, over 7 %', 0.15, 0.2),
  ranged('lawn-heavy-flat', 'lawn on heavy soil, to 2 %', 0.13, 0.17),
  ranged('lawn-heavy-average', 'lawn on heavy soil, 2 to 7 %', 0.18, 0.22),
  ranged('lawn-heavy-steep', 'lawn on heavy soil, over 7 %', 0.25, 0.35),
];

const rows: ReadonlyMap<string, RunoffRow> = new Map(runoffTable.map((row) => [row.key, row]));

/** @throws RangeError when the surface is not in the table. */
export function runoffRow(key: SurfaceKey): RunoffRow {
  const row = rows.get(key);
  if (row === undefined) throw new RangeError(`no surface '${key}'`);
  return row;
}
