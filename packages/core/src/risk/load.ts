import { DECAY } from '../roots/density.js';
import { judgement } from '../tables/judgement.js';
import { crossesPaved, type Ground, wayRound } from './between.js';
import type { LineClock } from './clock.js';
import type { Horizon } from './horizon.js';
import type { NearTrees } from './near-trees.js';
import type { Openings } from './openings.js';
import type { TreeField } from './tree-field.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_JOINT, WAYS } from './ways.js';

/** Everything the load of a line's segments depends on. */
export interface LoadInputs {
  readonly openings: Openings;
  readonly near: NearTrees;
  readonly field: TreeField;
  readonly clock: LineClock;
  readonly horizon: Horizon;
  readonly ground: Ground | null;
  /** Factor on every tree's reach and on every clock: 1 but where the spread is explored. */
  readonly reachScale: number;
  readonly clockScale: number;
  /** Factor on each near tree, or null for all 1: for "what if this tree were gone". */
  readonly treeFactor: Float64Array | null;
}

/** Expected entries of one segment over the horizon, split every way that is asked about. */
export class Load {
  total = 0;
  /** Rate a year at each moment of the horizon. */
  readonly perYear: Float64Array;
  /** `[way * 5 + vigour class]`. */
  readonly byWayAndVigour = new Float64Array(WAYS * VIGOUR_CLASSES);
  /** By near tree. */
  readonly byTree: Float64Array;
  /** Elasticity of the total on reach and clock, times the total. */
  reachPull = 0;
  clockPull = 0;

  constructor(moments: number, nearTrees: number) {
    this.perYear = new Float64Array(moments);
    this.byTree = new Float64Array(nearTrees);
  }

  clear(): void {
    this.total = 0;
    this.reachPull = 0;
    this.clockPull = 0;
    this.perYear.fill(0);
    this.byWayAndVigour.fill(0);
    this.byTree.fill(0);
  }

  byWay(way: number): number {
    let sum = 0;
    for (let c = 0; c < VIGOUR_CLASSES; c++) sum += this.byWayAndVigour[way * VIGOUR_CLASSES + c] as number;
    return sum;
  }
}

/** Past 3.2 structural radii the crush term is below 4e-5 of its height: not looked at. */
const CRUSH_RADII_2 = 3.2 ** 2;
/** Past 3.3 time constants more than 0.9999 has grown back: taken as all. */
const REGROWN = 3.3;

const PAVED = 1 / judgement.pavedReachFactor.value;
const BARRIER = judgement.barrierFactor.value;
const CLOCK_MIN = judgement.clockMinYears.value;
const CLOCK_MAX = judgement.clockMaxYears.value;

/** Share let back by the clock of in-pipe cutting at each moment, or null. */
function cutShares(clock: LineClock, clockScale: number): number[] | null {
  if (clock.sinceCut === null) return null;
  const tau = judgement.cutClockYears.value * clockScale;
  return clock.sinceCut.map((t) => 1 - Math.exp(-((t / tau) ** 2)));
}

/**
 * Adds to `load` the expected entries of the segment whose openings are `from` up to `to`.
 *
 * For opening j, tree t and moment k: rate_j x v_t q_t x presence x age x clock, where presence is
 * exp(-3 d / R) for entries and exp(-(d / r_s)^2) for crushing, and the clock is 1 - exp(-(years / tau)^2).
 */
export function addLoad(inputs: LoadInputs, from: number, to: number, load: Load): void {
  const { openings, near, field, clock, horizon, ground, reachScale, clockScale, treeFactor } = inputs;
  const { moments } = field;
  const cut = cutShares(clock, clockScale);
  const decay = DECAY / reachScale;
  const n = near.number.length;
  for (let p = from; p < to; p++) {
    const px = openings.x[p] as number;
    const py = openings.y[p] as number;
    const way = openings.way[p] as number;
    const rate = openings.rate[p] as number;
    for (let i = 0; i < n; i++) {
      const t = near.number[i] as number;
      const dx = px - (near.x[i] as number);
      const dy = py - (near.y[i] as number);
      const d2 = dx * dx + dy * dy;
      let base = rate;
      if (way === WAY_CRUSH) {
        const rs = field.structuralM[t] as number;
        const r2 = d2 / (rs * rs);
        if (r2 > CRUSH_RADII_2) continue;
        base *= Math.exp(-r2);
      }
      const d = Math.sqrt(d2);
      if (d > (field.searchM[t] as number)) continue;
      if (treeFactor !== null) base *= treeFactor[i] as number;
      let seen = d;
      let round: number | null = null;
      if (ground !== null) {
        if (crossesPaved(ground, near.x[i] as number, near.y[i] as number, px, py)) seen = d * PAVED;
        round = wayRound(ground, near.x[i] as number, near.y[i] as number, px, py);
        if (round !== null && way === WAY_CRUSH) base *= BARRIER;
      }
      const tau =
        Math.min(CLOCK_MAX, Math.max(CLOCK_MIN, d / (field.spreadMPerYear[t] as number))) * clockScale;
      const vigour = field.vigour[t] as number;
      let sum = 0;
      for (let k = 0; k < moments; k++) {
        const column = t * moments + k;
        let r = base * (field.weight[column] as number);
        if (way !== WAY_CRUSH) {
          const reach = field.reachM[column] as number;
          let presence = Math.exp((-decay * seen) / reach);
          if (round !== null) presence = Math.max(BARRIER * presence, Math.exp((-decay * round) / reach));
          r *= presence;
          if (way === WAY_JOINT) r *= clock.ageFactor[k] as number;
        }
        let pull = 0;
        const years = (clock.sinceDug[k] as number) / tau;
        if (years < REGROWN) {
          const still = Math.exp(-years * years);
          const back = 1 - still;
          r *= back;
          pull = back > 0 ? (2 * years * years * still) / back : 2;
        }
        if (cut !== null) r *= cut[k] as number;
        load.perYear[k] = (load.perYear[k] as number) + r;
        const entries = r * (horizon.weights[k] as number);
        sum += entries;
        load.clockPull -= entries * pull;
        if (way !== WAY_CRUSH) load.reachPull += (entries * decay * seen) / (field.reachM[column] as number);
      }
      load.total += sum;
      load.byTree[i] = (load.byTree[i] as number) + sum;
      const slot = way * VIGOUR_CLASSES + vigour;
      load.byWayAndVigour[slot] = (load.byWayAndVigour[slot] as number) + sum;
    }
  }
}
