import type { SourceKey } from '../../sources/bibliography.js';
import { type Cited, cite } from '../../sources/cited.js';
import type { CrownEquation, SpeciesRow, TreeForm, VigourClass, WaterDemand } from '../species-row.js';
import { waterOfGenus } from './water-of-genus.js';

/** `Platanus × acerifolia` -> `platanus-x-acerifolia`, `×Genus species` -> `x-genus-species`. */
export function keyOf(botanical: string): string {
  return botanical
    .toLowerCase()
    .replace(/×\s*/, 'x-')
    .replace(/[^a-z]+/g, '-')
    .replace(/-$/, '');
}

/** A vigour class of ours without a list behind it. */
export function ours(vigour: VigourClass, why: string): Cited<VigourClass> {
  return cite(vigour, 'our-judgement', 'judgement', why);
}

/** A vigour class of ours that rests on what a published list says of the tree. */
export function listed(vigour: VigourClass, source: SourceKey, says: string): Cited<VigourClass> {
  return cite(vigour, source, 'judgement', `our class; the list says: ${says}`);
}

/** Water demand of a tree that the building standard names. */
export const named = (demand: WaterDemand): Cited<WaterDemand> =>
  cite(demand, 'nhbc-4.2', 'read', 'table 12');

/** Mature height that the building standard lists. */
export const standardHeight = (metres: number): Cited<number> => cite(metres, 'nhbc-4.2', 'read', 'table 12');

/** Height or crown that 95 % of the measured trees do not pass. */
export function p95(metres: number, place = '95th percentile of measured city trees'): Cited<number> {
  return cite(metres, 'mcpherson-2016', 'calculated', place);
}

/** A figure as tree books give it. */
export const book = (metres: number): Cited<number> => cite(metres, 'tree-books', 'memory');

/** Median crown diameter over stem diameter, and how many trees. */
export function ratio(median: number, trees: number, pooled?: string): Cited<number> {
  const place = `median of ${trees} trees of 10 cm and more${pooled === undefined ? '' : `, with ${pooled}`}`;
  return cite(median, 'mcpherson-2016', 'calculated', place);
}

/** Median growth of the stem in centimetres a year, and of how many trees. */
export function growth(median: number, trees: number, pooled?: string): Cited<number> {
  const place = `median of ${trees} trees of known age${pooled === undefined ? '' : `, with ${pooled}`}`;
  return cite(median, 'mcpherson-2016', 'calculated', place);
}

/** Growth where none was measured: the middle of all measured species. */
export const USUAL_GROWTH = cite(1.4, 'mcpherson-2016', 'calculated', 'middle of all measured species');

/**
 * A published crown equation. Rows of the database in the cubic form are left out: their last coefficient is
 * rounded so far that they bend upward past about 45 cm.
 */
export function equation(row: CrownEquation): Cited<CrownEquation> {
  return cite(row, 'mcpherson-2016', 'read', 'table TS6 of the data');
}

interface MeasuredTree {
  readonly form?: TreeForm;
  readonly synonyms?: readonly string[];
  readonly vigour: Cited<VigourClass>;
  readonly water: Cited<WaterDemand>;
  readonly height: Cited<number>;
  readonly crown: Cited<number>;
  readonly ratio?: Cited<number>;
  readonly growth?: Cited<number>;
  readonly equation?: Cited<CrownEquation>;
}

/** A species with what was read or measured of it. */
export function species(
  botanical: string,
  common: readonly [string, ...string[]],
  tree: MeasuredTree,
): SpeciesRow {
  return {
    key: keyOf(botanical),
    botanical,
    common,
    synonyms: tree.synonyms ?? [],
    rank: 'species',
    form: tree.form ?? 'broadleaf',
    vigour: tree.vigour,
    waterDemand: tree.water,
    matureHeightM: tree.height,
    matureCrownM: tree.crown,
    crownRatio: tree.ratio ?? null,
    crownEquation: tree.equation ?? null,
    dbhGrowthCmPerYear: tree.growth ?? USUAL_GROWTH,
  };
}

/** A species of which nothing was measured: sizes from memory, vigour as its nearest kin, water by its genus. */
export function remembered(
  botanical: string,
  common: readonly [string, ...string[]],
  vigour: VigourClass,
  heightM: number,
  crownM: number,
  rest: { readonly synonyms?: readonly string[]; readonly form?: TreeForm } = {},
): SpeciesRow {
  return species(botanical, common, {
    ...rest,
    vigour: ours(vigour, 'by its kin and habit'),
    water: waterOfGenus(botanical),
    height: book(heightM),
    crown: book(crownM),
  });
}
