import {
  type BoxIndex,
  type IndexRoom,
  indexFrom,
  type PackedIndex,
  packSquares,
} from '../geometry/box-index.js';
import type { Site, Tree } from '../model/site.js';
import { crownRadius as crownOfStem } from '../roots/crown.js';
import { crownAfter, PLANTED_STEM_M, stemAfter } from '../roots/growth.js';
import { soilFactor } from '../roots/reach.js';
import { rootSpreadRate } from '../roots/regrowth.js';
import { structuralRadius } from '../roots/structural.js';
import { type TreeSize, treeSize } from '../roots/tree-size.js';
import { reachOf } from '../roots/zones.js';
import { judgement } from '../tables/judgement.js';
import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import type { Horizon } from './horizon.js';
import { patternsOf, type TreePatterns } from './tree-patterns.js';

/** Beyond 1.6 times the reach less than 1 % of the root curve is left: not looked at. */
const SEARCH_REACHES = 1.6;

/** What the load of a line asks of trees, as columns. */
export interface GrownTrees {
  readonly lon: Float64Array;
  readonly lat: Float64Array;
  /** Number of each tree's pattern, by which all columns below go. */
  readonly pattern: Uint32Array;
  /** Log-sd that a tree's missing inputs add. */
  readonly extraLogSd: Float64Array;
  /** At each moment of the horizon: `[pattern * moments + moment]`. */
  readonly reachM: Float64Array;
  /** Vigour weight x size weight x share of the roots alive. */
  readonly weight: Float64Array;
  /** 0..4, vigour class less one. */
  readonly vigour: Uint8Array;
  readonly structuralM: Float64Array;
  readonly spreadMPerYear: Float64Array;
  readonly searchM: Float64Array;
}

/** Trees of a site grown through the horizon, with an index over all that they reach. */
export interface TreeField extends GrownTrees {
  readonly trees: readonly Tree[];
  /** Size of one tree now: worked out when asked for, since a million of them would fill the memory. */
  readonly sizeOf: (tree: number) => TreeSize;
  readonly moments: number;
  readonly index: BoxIndex;
}

/** Share of a tree's roots alive in a year: none before planting, fading over five years after felling. */
function aliveShare(tree: Tree, year: number): number {
  if (tree.plantedYear !== null && year < tree.plantedYear) return 0;
  if (tree.felledYear === null || year <= tree.felledYear) return 1;
  return Math.max(0, 1 - (year - tree.felledYear) / judgement.felledDecayYears.value);
}

function sizeWeight(stemM: number): number {
  return Math.min(1, stemM / judgement.sizeFullM.value) ** judgement.sizeExponent.value;
}

/** Stem some years after planting. */
const stemSince = (row: SpeciesRow, years: number): Metres =>
  stemAfter(row, metres(PLANTED_STEM_M), Math.max(0, years));

/** Fills the columns of a field, pattern by pattern. */
class FieldColumns {
  readonly reachM: Float64Array;
  readonly weight: Float64Array;
  readonly vigour: Uint8Array;
  readonly structuralM: Float64Array;
  readonly spreadMPerYear: Float64Array;
  readonly searchM: Float64Array;
  readonly extraLogSd: Float64Array;

  constructor(
    count: number,
    private readonly nowYear: number,
    private readonly yearsAhead: readonly number[],
    private readonly ground: number,
  ) {
    const column = (): Float64Array => new Float64Array(count);
    this.reachM = new Float64Array(count * yearsAhead.length);
    this.weight = new Float64Array(count * yearsAhead.length);
    this.vigour = new Uint8Array(count);
    this.structuralM = column();
    this.spreadMPerYear = column();
    this.searchM = column();
    this.extraLogSd = column();
  }

  grow(i: number, tree: Tree, size: TreeSize): void {
    const { row, stemDiameter, crownRadius, stemBasis } = size;
    // years back to the planting that the stem of now was taken from
    const back = stemBasis === 'planting' ? this.nowYear - (tree.plantedYear as number) : null;
    const vigourClass = row.vigour.value;
    const vigourWeight = judgement.vigourWeights.value[vigourClass - 1] as number;
    this.extraLogSd[i] = size.extraLogSd;
    this.vigour[i] = vigourClass - 1;
    this.structuralM[i] = structuralRadius(stemDiameter);
    this.spreadMPerYear[i] = rootSpreadRate(vigourClass);
    const usualNow = crownOfStem(row, stemDiameter);
    let column = i * this.yearsAhead.length;
    for (const ahead of this.yearsAhead) {
      const stem =
        back !== null && ahead < 0 ? stemSince(row, back + ahead) : stemAfter(row, stemDiameter, ahead);
      const crown = stem === stemDiameter ? crownRadius : crownAfter(row, crownRadius, usualNow, stem);
      this.reachM[column] = reachOf(row, stem, crown, this.ground);
      this.weight[column] = vigourWeight * sizeWeight(stem) * aliveShare(tree, this.nowYear + ahead);
      column++;
    }
    this.searchM[i] = SEARCH_REACHES * (this.reachM[column - 1] as number);
  }
}

/**
 * Trees grown to every moment of the horizon.
 * @param patterns Of the same trees.
 */
export function growTrees(
  trees: readonly Tree[],
  patterns: TreePatterns,
  soil: Site['soil'],
  nowYear: number,
  horizon: Horizon,
): GrownTrees {
  const columns = new FieldColumns(patterns.first.length, nowYear, horizon.yearsAhead, soilFactor(soil));
  patterns.first.forEach((tree, i) => {
    columns.grow(i, tree, treeSize(tree, nowYear));
  });
  const { reachM, weight, vigour, structuralM, spreadMPerYear, searchM, extraLogSd } = columns;
  return {
    lon: Float64Array.from(trees, ({ position }) => position[0]),
    lat: Float64Array.from(trees, ({ position }) => position[1]),
    pattern: patterns.of,
    reachM,
    weight,
    vigour,
    structuralM,
    spreadMPerYear,
    searchM,
    extraLogSd,
  };
}

/** Index over the squares in which trees are looked for. */
export const packSearch = ({ lon, lat, pattern, searchM }: GrownTrees, room?: IndexRoom): PackedIndex =>
  packSquares(lon, lat, (tree) => searchM[pattern[tree] as number] as number, room);

/** A field from trees that were grown before. */
export function fieldFrom(
  trees: readonly Tree[],
  grown: GrownTrees,
  index: BoxIndex,
  nowYear: number,
  horizon: Horizon,
): TreeField {
  return {
    ...grown,
    trees,
    sizeOf: (tree) => treeSize(trees[tree] as Tree, nowYear),
    moments: horizon.yearsAhead.length,
    index,
  };
}

/** Trees grown to every moment of the horizon and put into an index. */
export function treeFieldOf(site: Site, nowYear: number, horizon: Horizon): TreeField {
  const grown = growTrees(site.trees, patternsOf(site.trees), site.soil, nowYear, horizon);
  const index = indexFrom(packSearch(grown));
  return fieldFrom(site.trees, grown, index, nowYear, horizon);
}
