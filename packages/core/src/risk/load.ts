import { judgement } from '../tables/judgement.js';
import { crossesPaved, type Ground, wayRound } from './between.js';
import type { LineClock } from './clock.js';
import { expOfMinus } from './exp-table.js';
import type { Horizon } from './horizon.js';
import type { NearTrees } from './near-trees.js';
import type { Openings } from './openings.js';
import { VIGOUR_CLASSES, WAY_CRUSH, WAY_JOINT, WAYS } from './ways.js';

/** Everything the load of a line's segments depends on. */
export interface LoadInputs {
  readonly openings: Openings;
  readonly near: NearTrees;
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
  byTree: Float64Array;
  /** Elasticity of the total on reach and clock, times the total. */
  reachPull = 0;
  clockPull = 0;

  constructor(moments: number, nearTrees: number) {
    this.perYear = new Float64Array(moments);
    this.byTree = new Float64Array(nearTrees);
  }

  /** Empties it, for a line with this many trees near. */
  clear(nearTrees: number): void {
    if (this.byTree.length < nearTrees) this.byTree = new Float64Array(2 * nearTrees);
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

/** Share let back since roots were cut inside at each moment, and how it hangs on the clock; null where never. */
interface CutClock {
  readonly back: readonly number[];
  readonly pull: readonly number[];
}

/** Elasticity of 1 - exp(-x^2) on the time constant, without its sign. */
const pullOf = (x: number, back: number): number => (back > 0 ? (2 * x * x * (1 - back)) / back : 2);

function cutClock(clock: LineClock, clockScale: number): CutClock | null {
  if (clock.sinceCut === null) return null;
  const x = clock.sinceCut.map((t) => t / (judgement.cutClockYears.value * clockScale));
  const back = x.map((v) => -Math.expm1(-v * v));
  return { back, pull: back.map((share, k) => pullOf(x[k] as number, share)) };
}

/** How a tree is seen from an opening where something stands between them. */
interface Sight {
  /** Distance as the root curve sees it, longer where the ground is paved. */
  seen: number;
  /** Way round the end of a barrier, or null where none is between. */
  round: number | null;
}

function sightOf(ground: Ground, ax: number, ay: number, bx: number, by: number, d: number): Sight {
  return {
    seen: crossesPaved(ground, ax, ay, bx, by) ? d * PAVED : d,
    round: wayRound(ground, ax, ay, bx, by),
  };
}

/**
 * Adds to `load` the expected entries of the segment whose openings are `from` up to `to`.
 *
 * For opening j, tree t and moment k: rate_j x v_t q_t x presence x age x clock, where presence is
 * exp(-3 d / R) for entries and exp(-(d / r_s)^2) for crushing, and the clock is 1 - exp(-(years / tau)^2).
 * One loop on purpose: it is where a town's time goes.
 */
export function addLoad(inputs: LoadInputs, from: number, to: number, load: Load): void {
  const { openings, near, clock, horizon, ground, reachScale, clockScale, treeFactor } = inputs;
  const { sinceDug, ageFactor } = clock;
  const { weights } = horizon;
  const { perYear, byTree, byWayAndVigour } = load;
  // columns held in locals: the engine need not look them up again after every write
  const { x: openingX, y: openingY, way: ways, rate: rates } = openings;
  const { x: treeX, y: treeY, search2, structural2, spreadMPerYear, vigour, decay, weight } = near;
  const moments = perYear.length;
  const closer = 1 / reachScale;
  const cut = cutClock(clock, clockScale);
  const n = near.count;
  let total = 0;
  let reachPull = 0;
  let clockPull = 0;
  for (let p = from; p < to; p++) {
    const px = openingX[p] as number;
    const py = openingY[p] as number;
    const way = ways[p] as number;
    const rate = rates[p] as number;
    for (let i = 0; i < n; i++) {
      const ax = treeX[i] as number;
      const ay = treeY[i] as number;
      const d2 = (px - ax) * (px - ax) + (py - ay) * (py - ay);
      if (d2 > (search2[i] as number)) continue;
      let base = rate;
      if (way === WAY_CRUSH) {
        const r2 = d2 / (structural2[i] as number);
        if (r2 > CRUSH_RADII_2) continue;
        base *= expOfMinus(r2);
      }
      if (treeFactor !== null) base *= treeFactor[i] as number;
      const d = Math.sqrt(d2);
      let seen = d;
      let round: number | null = null;
      if (ground !== null) {
        const sight = sightOf(ground, ax, ay, px, py, d);
        seen = sight.seen;
        round = sight.round;
        if (round !== null && way === WAY_CRUSH) base *= BARRIER;
      }
      const tau = Math.min(CLOCK_MAX, Math.max(CLOCK_MIN, d / (spreadMPerYear[i] as number))) * clockScale;
      let sum = 0;
      for (let k = 0; k < moments; k++) {
        const column = i * moments + k;
        let r = base * (weight[column] as number);
        let fall = 0;
        if (way !== WAY_CRUSH) {
          const perM = (decay[column] as number) * closer;
          fall = perM * seen;
          let presence = expOfMinus(fall);
          if (round !== null) presence = Math.max(BARRIER * presence, expOfMinus(perM * round));
          r *= presence;
          if (way === WAY_JOINT) r *= ageFactor[k] as number;
        }
        let back = 1;
        let pull = 0;
        const x = (sinceDug[k] as number) / tau;
        if (x < REGROWN) {
          back = 1 - expOfMinus(x * x);
          pull = pullOf(x, back);
        }
        // cutting inside leaves the roots outside: it holds entries back, not the squeeze on the wall
        if (cut !== null && way !== WAY_CRUSH && (cut.back[k] as number) < back) {
          back = cut.back[k] as number;
          pull = cut.pull[k] as number;
        }
        r *= back;
        perYear[k] = (perYear[k] as number) + r;
        const entries = r * (weights[k] as number);
        sum += entries;
        clockPull -= entries * pull;
        reachPull += entries * fall;
      }
      total += sum;
      byTree[i] = (byTree[i] as number) + sum;
      const slot = way * VIGOUR_CLASSES + (vigour[i] as number);
      byWayAndVigour[slot] = (byWayAndVigour[slot] as number) + sum;
    }
  }
  load.total += total;
  load.reachPull += reachPull;
  load.clockPull += clockPull;
}
