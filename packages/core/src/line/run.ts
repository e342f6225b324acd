import type { Join, Network, Spot } from './network.js';

export type Direction = 'upstream' | 'downstream';

/** The part of a reel's way that lies in one line; stations from that line's outlet end. */
export interface Leg {
  readonly line: number;
  readonly direction: Direction;
  readonly fromM: number;
  readonly toM: number;
  /** What the counter reads where the reel comes into this line. */
  readonly counterM: number;
}

/** The way of a reel from where it goes in to the end of the pipes, or as far as it was asked for. */
export interface Run {
  readonly legs: readonly Leg[];
  /** The leg in the line that was looked at. */
  readonly named: Leg;
  readonly lengthM: number;
  /** True where it stops because several pipes go on and nothing tells which. */
  readonly parts: boolean;
}

/** A reel that has come to a place, and how. */
interface Step extends Spot {
  readonly direction: Direction;
  readonly counterM: number;
  readonly before: { readonly step: Step; readonly leftM: number } | null;
}

const OTHER = { upstream: 'downstream', downstream: 'upstream' } as const;

const endAhead = (network: Network, line: number, direction: Direction): number =>
  direction === 'upstream' ? network.lengthOf(line) : 0;

const aheadBy = (fromM: number, toM: number, direction: Direction): number =>
  direction === 'upstream' ? toM - fromM : fromM - toM;

const counterAt = (leg: Leg, stationM: number): number => leg.counterM + Math.abs(stationM - leg.fromM);

/**
 * Which way a reel goes on in the line it comes into: with the flow or against it as before, since it cannot
 * turn back at a branch. Only where two lines lie end to end is it the pipe that tells, not the flow.
 */
function directionInto(network: Network, line: number, join: Join, direction: Direction): Direction {
  const sameKindOfEnd = (join.stationM === 0) === (join.into.stationM === 0);
  return sameKindOfEnd && network.isEndToEnd(line, join) ? OTHER[direction] : direction;
}

function legOf(network: Network, { line, direction, stationM, counterM }: Omit<Step, 'before'>): Leg {
  return { line, direction, fromM: stationM, toM: endAhead(network, line, direction), counterM };
}

/** Lines that a reel at the end of a leg can go on into. */
function onward(network: Network, leg: Leg, taken: ReadonlySet<number>): Leg[] {
  const ahead = new Map<number, Leg>();
  for (const join of network.joinsOf(leg.line)) {
    const { line, stationM } = join.into;
    if (join.stationM !== leg.toM || taken.has(line)) continue;
    const direction = directionInto(network, leg.line, join, leg.direction);
    const next = legOf(network, { line, stationM, direction, counterM: counterAt(leg, leg.toM) });
    if (next.fromM !== next.toM) ahead.set(line, next);
  }
  return [...ahead.values()];
}

/** Carries a run on past its last leg until the counter reads `wantedM` or there is no one way on. */
function carriedOn(network: Network, legs: readonly Leg[], wantedM: number): Run {
  const all = [...legs];
  const named = legs[legs.length - 1] as Leg;
  const taken = new Set(legs.map((leg) => leg.line));
  let last = named;
  let parts = false;
  while (counterAt(last, last.toM) < wantedM) {
    const next = onward(network, last, taken);
    parts = next.length > 1;
    if (next.length !== 1) break;
    last = next[0] as Leg;
    taken.add(last.line);
    all.push(last);
  }
  return { legs: all, named, lengthM: counterAt(last, last.toM), parts };
}

/** The run that goes in on the line itself, one way or the other. */
export function runAlong(network: Network, from: Spot, direction: Direction, wantedM: number): Run {
  return carriedOn(network, [legOf(network, { ...from, direction, counterM: 0 })], wantedM);
}

/** Steps from one line into those that meet it at or ahead of where the reel came in, up to a counter reading. */
function stepsFrom(network: Network, step: Step, mostM: number): Step[] {
  const steps: Step[] = [];
  for (const join of network.joinsOf(step.line)) {
    const goneM = aheadBy(step.stationM, join.stationM, step.direction);
    if (goneM < 0 || step.counterM + goneM > mostM) continue;
    const direction = directionInto(network, step.line, join, step.direction);
    const before = { step, leftM: join.stationM };
    steps.push({ ...join.into, direction, counterM: step.counterM + goneM, before });
  }
  return steps;
}

function legsTo(network: Network, last: Step): Leg[] {
  const legs = [legOf(network, last)];
  for (let { before } = last; before; before = before.step.before) {
    const { step, leftM } = before;
    legs.unshift({ ...legOf(network, step), toM: leftM });
  }
  return legs;
}

/** Puts a step where its counter belongs among the others, after its equals. */
function insert(queue: Step[], step: Step): void {
  let low = 0;
  let high = queue.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((queue[middle] as Step).counterM > step.counterM) high = middle;
    else low = middle + 1;
  }
  queue.splice(low, 0, step);
}

/** No cable of a camera is longer, metres (judgement). */
export const LONGEST_REEL_M = 500;

/** The shortest run from one of several places to a line and on along it (Dijkstra 1959), or null. */
export function runTo(network: Network, from: readonly Spot[], line: number, wantedM: number): Run | null {
  const queue: Step[] = from.flatMap((spot) =>
    (['upstream', 'downstream'] as const).map((direction) => ({
      ...spot,
      direction,
      counterM: 0,
      before: null,
    })),
  );
  const mostM = Math.max(LONGEST_REEL_M, wantedM);
  const done = new Set<string>();
  for (let step = queue.shift(); step; step = queue.shift()) {
    const key = `${step.line} ${step.stationM} ${step.direction}`;
    if (done.has(key)) continue;
    done.add(key);
    // come to the line at an end with no room ahead, it has not come into it
    if (step.line === line && step.stationM !== endAhead(network, line, step.direction)) {
      return carriedOn(network, legsTo(network, step), wantedM);
    }
    for (const next of stepsFrom(network, step, mostM)) insert(queue, next);
  }
  return null;
}
