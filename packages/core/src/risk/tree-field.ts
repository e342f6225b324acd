import { type BoxIndex, indexAround } from '../geometry/box-index.js';
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

/** Trees as columns, at each moment of the horizon: `[tree * moments + moment]`. */
export interface TreeField {
  readonly trees: readonly Tree[];
  /** Size of one tree now: worked out when asked for, since a million of them would fill the memory. */
  readonly sizeOf: (tree: number) => TreeSize;
  /** Log-sd that a tree's missing inputs add. */
  readonly extraLogSd: Float64Array;
  readonly moments: number;
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

/** Trees grown to every moment of the horizon and put into an index. */
export function treeFieldOf(site: Site, nowYear: number, horizon: Horizon): TreeField {
  const { trees } = site;
  const n = trees.length;
  const moments = horizon.yearsAhead.length;
  const ground = soilFactor(site.soil);
  const lon = new Float64Array(n);
  const lat = new Float64Array(n);
  const reachM = new Float64Array(n * moments);
  const weight = new Float64Array(n * moments);
  const vigour = new Uint8Array(n);
  const structuralM = new Float64Array(n);
  const spreadMPerYear = new Float64Array(n);
  const searchM = new Float64Array(n);
  const extraLogSd = new Float64Array(n);
  const sizeOf = (tree: number): TreeSize => treeSize(trees[tree] as Tree, nowYear);
  for (let i = 0; i < n; i++) {
    const tree = trees[i] as Tree;
    lon[i] = tree.position[0];
    lat[i] = tree.position[1];
    const { row, stemDiameter, crownRadius, stemBasis, extraLogSd: extra } = sizeOf(i);
    // years back to the planting that the stem of now was taken from
    const back = stemBasis === 'planting' ? nowYear - (tree.plantedYear as number) : null;
    extraLogSd[i] = extra;
    const vigourClass = row.vigour.value;
    vigour[i] = vigourClass - 1;
    structuralM[i] = structuralRadius(stemDiameter);
    spreadMPerYear[i] = rootSpreadRate(vigourClass);
    const usualNow = crownOfStem(row, stemDiameter);
    for (let k = 0; k < moments; k++) {
      const ahead = horizon.yearsAhead[k] as number;
      const stem =
        back !== null && ahead < 0 ? stemSince(row, back + ahead) : stemAfter(row, stemDiameter, ahead);
      const crown = stem === stemDiameter ? crownRadius : crownAfter(row, crownRadius, usualNow, stem);
      reachM[i * moments + k] = reachOf(row, stem, crown, ground);
      weight[i * moments + k] =
        (judgement.vigourWeights.value[vigourClass - 1] as number) *
        sizeWeight(stem) *
        aliveShare(tree, nowYear + ahead);
    }
    searchM[i] = SEARCH_REACHES * (reachM[i * moments + moments - 1] as number);
  }
  return {
    trees,
    sizeOf,
    extraLogSd,
    moments,
    lon,
    lat,
    reachM,
    weight,
    vigour,
    structuralM,
    spreadMPerYear,
    searchM,
    index: indexAround(
      trees.map((t) => t.position),
      searchM,
    ),
  };
}
