import { type BoxIndex, indexFrom, packSquares } from '../geometry/box-index.js';
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

/** Beyond 1.6 times the reach less than 1 % of the root curve is left: not looked at. */
const SEARCH_REACHES = 1.6;

/** What the load of a line asks of trees, as columns; at each moment of the horizon: `[tree * moments + moment]`. */
export interface GrownTrees {
  /** Log-sd that a tree's missing inputs add. */
  readonly extraLogSd: Float64Array;
  readonly lon: Float64Array;
  readonly lat: Float64Array;
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

/** Trees of one kind and trunk of which nothing else is known: they grow alike, and a town has a hundred of each. */
class Twins {
  private readonly bySpecies = new Map<string, Map<number, number>>();

  /** Number of an earlier tree that is the same but for its place, or null; then this one is remembered. */
  earlier(tree: Tree, number: number): number | null {
    const { stemDiameterM, canopyRadiusM, plantedYear, felledYear } = tree;
    if (stemDiameterM === null || canopyRadiusM !== null || plantedYear !== null || felledYear !== null)
      return null;
    let stems = this.bySpecies.get(tree.species.key);
    if (stems === undefined) {
      stems = new Map();
      this.bySpecies.set(tree.species.key, stems);
    }
    const found = stems.get(stemDiameterM);
    if (found === undefined) stems.set(stemDiameterM, number);
    return found ?? null;
  }
}

/** Fills the columns of a field, tree by tree. */
class FieldColumns {
  readonly lon: Float64Array;
  readonly lat: Float64Array;
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
    this.lon = column();
    this.lat = column();
    this.reachM = new Float64Array(count * yearsAhead.length);
    this.weight = new Float64Array(count * yearsAhead.length);
    this.vigour = new Uint8Array(count);
    this.structuralM = column();
    this.spreadMPerYear = column();
    this.searchM = column();
    this.extraLogSd = column();
  }

  place(i: number, tree: Tree): void {
    this.lon[i] = tree.position[0];
    this.lat[i] = tree.position[1];
  }

  copy(i: number, from: number): void {
    const moments = this.yearsAhead.length;
    this.reachM.copyWithin(i * moments, from * moments, (from + 1) * moments);
    this.weight.copyWithin(i * moments, from * moments, (from + 1) * moments);
    this.vigour[i] = this.vigour[from] as number;
    for (const column of [this.structuralM, this.spreadMPerYear, this.searchM, this.extraLogSd]) {
      column[i] = column[from] as number;
    }
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

/** Trees grown to every moment of the horizon. */
export function growTrees(
  trees: readonly Tree[],
  soil: Site['soil'],
  nowYear: number,
  horizon: Horizon,
): GrownTrees {
  const columns = new FieldColumns(trees.length, nowYear, horizon.yearsAhead, soilFactor(soil));
  const twins = new Twins();
  trees.forEach((tree, i) => {
    columns.place(i, tree);
    const twin = twins.earlier(tree, i);
    if (twin === null) columns.grow(i, tree, treeSize(tree, nowYear));
    else columns.copy(i, twin);
  });
  const { lon, lat, reachM, weight, vigour, structuralM, spreadMPerYear, searchM, extraLogSd } = columns;
  return { lon, lat, reachM, weight, vigour, structuralM, spreadMPerYear, searchM, extraLogSd };
}

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
  const grown = growTrees(site.trees, site.soil, nowYear, horizon);
  const index = indexFrom(packSquares(grown.lon, grown.lat, grown.searchM));
  return fieldFrom(site.trees, grown, index, nowYear, horizon);
}
