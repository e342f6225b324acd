import type { Point } from '../geometry/disc-less-strip.js';
import type { RouteBend, RoutePipe } from '../model/route.js';
import { pipeRow } from '../tables/pipes.js';
import { routeNumbers } from '../tables/route-numbers.js';
import { fromFeet } from '../units/length.js';

/** How a pipe goes round a bend: in steps made of fittings, or swept in no less than a radius. */
export type BendRule =
  | { readonly kind: 'fittings'; readonly stepRadians: number; readonly freeRadians: number }
  | { readonly kind: 'swept'; readonly radiusM: number };

const DEGREE = Math.PI / 180;
/** Longer pieces come in a coil. */
const LONGEST_STICK_M = fromFeet(20) + 0.01;

/** Single-wall pipe from a coil and fused pipe are bent; all else turns by fittings. */
export function bendRuleOf(pipe: RoutePipe): BendRule {
  const { fittingTurn, jointTurn, coilRadiusDiameters, fusedRadiusDiameters } = routeNumbers;
  const pieceM = pipe.pieceM ?? pipeRow(pipe.material).pieceM.value;
  if (pipe.material === 'hdpe-welded') {
    return { kind: 'swept', radiusM: fusedRadiusDiameters.value * pipe.sizeM };
  }
  const coil = pipe.material === 'hdpe-corrugated' || pipe.material === 'hdpe-corrugated-heavy';
  if (coil && (pipe.joint === 'none' || pieceM > LONGEST_STICK_M)) {
    return { kind: 'swept', radiusM: coilRadiusDiameters.value * pipe.sizeM };
  }
  return {
    kind: 'fittings',
    stepRadians: fittingTurn.value * DEGREE,
    freeRadians: jointTurn.value * DEGREE,
  };
}

/** Angle by which a path turns at b, 0 to pi. */
export function turnAt(a: Point, b: Point, c: Point): number {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const [vx, vy] = [c[0] - b[0], c[1] - b[1]];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

/** Number of fitting steps that a turn takes. */
export function stepsOf(rule: Extract<BendRule, { kind: 'fittings' }>, turn: number): number {
  return turn <= rule.freeRadians ? 0 : Math.max(1, Math.round(turn / rule.stepRadians));
}

/** Fittings that make so many steps of 22.5 degrees: quarter bends first. */
export function fittingsFor(steps: number): number[] {
  const turn = routeNumbers.fittingTurn.value;
  return [
    ...Array<number>(Math.floor(steps / 4)).fill(4 * turn),
    ...Array<number>(Math.floor((steps % 4) / 2)).fill(2 * turn),
    ...Array<number>(steps % 2).fill(turn),
  ];
}

/** Straight taken up on either side of a swept bend. */
export const tangentM = (radiusM: number, turn: number): number =>
  turn >= Math.PI - 1e-9 ? Infinity : radiusM * Math.tan(turn / 2);

/** Metres by which a swept bend lacks room; 0 where it fits. Straights between two bends are shared. */
export function roomLacking(
  radiusM: number,
  a: Point,
  b: Point,
  c: Point,
  first: boolean,
  last: boolean,
): number {
  const before = Math.hypot(b[0] - a[0], b[1] - a[1]) * (first ? 1 : 0.5);
  const after = Math.hypot(c[0] - b[0], c[1] - b[1]) * (last ? 1 : 0.5);
  const lack = tangentM(radiusM, turnAt(a, b, c)) - Math.min(before, after);
  return lack > 1e-6 ? Math.min(lack, 1e6) : 0;
}

/** Turns of a swept pipe one way, no further apart than this, are one bend, metres (judgement). */
const ONE_SWEEP_M = 3;
/** A sweep by less is no bend that anybody would see, radians (judgement). */
const SEEN_RADIANS = 5 * DEGREE;

interface Turn {
  readonly atM: number;
  /** Positive to the left. */
  readonly by: number;
}

function turnsOf(points: readonly Point[]): Turn[] {
  const turns: Turn[] = [];
  let atM = 0;
  for (let i = 1; i + 1 < points.length; i++) {
    const [a, b, c] = [points[i - 1], points[i], points[i + 1]] as [Point, Point, Point];
    atM += Math.hypot(b[0] - a[0], b[1] - a[1]);
    const side = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    turns.push({ atM, by: Math.sign(side) * turnAt(a, b, c) });
  }
  return turns;
}

function sweptBends(turns: readonly Turn[], radiusM: number): RouteBend[] {
  const sweeps: Turn[][] = [];
  for (const turn of turns) {
    const last = sweeps.at(-1);
    const before = last?.at(-1);
    const goesOn =
      before && Math.sign(before.by) === Math.sign(turn.by) && turn.atM - before.atM < ONE_SWEEP_M;
    if (goesOn) last?.push(turn);
    else sweeps.push([turn]);
  }
  return sweeps
    .map((sweep) => ({
      atM: ((sweep[0] as Turn).atM + (sweep.at(-1) as Turn).atM) / 2,
      turnDegrees: Math.abs(sweep.reduce((sum, { by }) => sum + by, 0)) / DEGREE,
      fittings: [],
      radiusM,
    }))
    .filter(({ turnDegrees }) => turnDegrees * DEGREE >= SEEN_RADIANS);
}

/** Every bend of a path: made of fittings, or swept. */
export function bendsOf(points: readonly Point[], rule: BendRule): RouteBend[] {
  const turns = turnsOf(points);
  if (rule.kind === 'swept') return sweptBends(turns, rule.radiusM);
  return turns.flatMap(({ atM, by }) => {
    const fittings = fittingsFor(stepsOf(rule, Math.abs(by)));
    const turnDegrees = Math.abs(by) / DEGREE;
    return fittings.length === 0 ? [] : [{ atM, turnDegrees, fittings, radiusM: null }];
  });
}
