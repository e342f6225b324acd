import type { Issue, Misplaced } from '../model/issue.js';
import type { Finding } from '../model/site.js';
import type { Network, Spot } from './network.js';
import { type Direction, type Leg, LONGEST_REEL_M, type Run, runAlong, runTo } from './run.js';

/** What was seen on one line: stations from its outlet end. */
export interface PlacedFinding {
  readonly finding: Finding;
  readonly line: number;
  readonly fromM: number;
  readonly toM: number;
  /** Which way the reel went in this line. */
  readonly direction: Direction;
  /** Entries counted here; null: not counted, or counted on a stretch of which this line has only a part. */
  readonly entries: number | null;
}

/** A counter may be off by this much before we doubt it, metres (judgement). */
const SLACK_M = 0.5;

/** Readings of the counter, the lesser one first. */
type Counter = readonly [nearM: number, farM: number];

function issueFor(finding: Finding, path: string, reason: Misplaced): Issue {
  return {
    code: 'finding-misplaced',
    severity: 'error',
    reason,
    place: { ...finding.origin, feature: finding.id, path },
  };
}

const endOf = (leg: Leg): number => leg.counterM + Math.abs(leg.toM - leg.fromM);
const clamped = (m: number, least: number, most: number): number => Math.min(most, Math.max(least, m));

/** Station to which the counter points in a leg; at its ends exactly theirs, whatever the rounding. */
function stationAt(leg: Leg, counterM: number): number {
  if (counterM >= endOf(leg)) return leg.toM;
  const t = (counterM - leg.counterM) / (endOf(leg) - leg.counterM);
  return leg.fromM + t * (leg.toM - leg.fromM);
}

/** Why the counter cannot be right on this run, or null. */
function whyNot(
  network: Network,
  { legs, named, lengthM, parts }: Run,
  [nearM, farM]: Counter,
): Misplaced | null {
  const line = network.nameOf(named.line);
  const pointsAt = (counterM: number): string => {
    const leg = legs.find((l) => endOf(l) >= counterM) ?? (legs[legs.length - 1] as Leg);
    return network.nameOf(leg.line);
  };
  if (farM > lengthM + SLACK_M) {
    const last = network.nameOf((legs[legs.length - 1] as Leg).line);
    return { kind: 'past-end', line: last, byM: farM - lengthM, parts };
  }
  if (farM < named.counterM - SLACK_M) {
    return { kind: 'before-line', pointsAt: pointsAt(farM), line, byM: named.counterM - farM };
  }
  if (nearM > endOf(named) + SLACK_M) {
    return { kind: 'past-line', pointsAt: pointsAt(nearM), line, byM: nearM - endOf(named) };
  }
  return null;
}

/** Lays the readings on the lines of a run; on the named one at least a point. */
function laidOn({ legs, named }: Run, finding: Finding, [nearM, farM]: Counter): PlacedFinding[] {
  const last = endOf(legs[legs.length - 1] as Leg);
  const isPoint = nearM === farM;
  // a counter that is off by no more than the slack still tells of the named line
  const near = Math.min(nearM, endOf(named));
  const far = clamped(farM, named.counterM, isPoint ? endOf(named) : last);
  const placed: Omit<PlacedFinding, 'entries'>[] = [];
  for (const leg of legs) {
    const from = clamped(isPoint ? far : near, leg.counterM, endOf(leg));
    const to = clamped(far, leg.counterM, endOf(leg));
    if (from === to && leg !== named) continue;
    const [a, b] = [stationAt(leg, from), stationAt(leg, to)];
    const { line, direction } = leg;
    placed.push({ finding, line, fromM: Math.min(a, b), toM: Math.max(a, b), direction });
  }
  const entries = placed.length === 1 ? finding.entries : null;
  return placed.map((piece) => ({ ...piece, entries }));
}

/**
 * The way of a reel that goes in on the named line itself: as said, else the way in which the line has room
 * for what the counter says, upstream where both have.
 */
function runFrom(network: Network, finding: Finding, from: Spot, counter: Counter): Run {
  const [, farM] = counter;
  const wantedM = farM + SLACK_M;
  if (finding.direction !== null) return runAlong(network, from, finding.direction, wantedM);
  // at the upper end the way into the line is down
  const down = from.stationM === network.lengthOf(from.line);
  const order: readonly Direction[] = down ? ['downstream', 'upstream'] : ['upstream', 'downstream'];
  const runs = order.map((direction) => runAlong(network, from, direction, wantedM));
  return (
    runs.find((run) => farM <= endOf(run.named)) ??
    runs.find((run) => farM <= endOf(run.named) + SLACK_M) ??
    runs.find((run) => whyNot(network, run, counter) === null) ??
    (runs.sort((a, b) => b.lengthM - a.lengthM)[0] as Run)
  );
}

/** The way of the reel, or what is wrong with where it is said to have gone in. */
function runOf(network: Network, finding: Finding, line: number, counter: Counter): Run | Issue {
  const { from } = finding;
  if (from === null || from === 'start' || from === 'end') {
    return runFrom(network, finding, network.endOf(line, from ?? 'start'), counter);
  }
  const spots = network.spotsOf(from);
  if (spots === null) return issueFor(finding, 'properties.from', { kind: 'no-fitting', fitting: from });
  if (spots.length === 0) {
    return issueFor(finding, 'properties.from', { kind: 'fitting-on-no-line', fitting: from });
  }
  const own = spots.find((spot) => spot.line === line);
  if (own) return runFrom(network, finding, own, counter);
  return (
    runTo(network, spots, line, counter[1] + SLACK_M) ??
    issueFor(finding, 'properties.from', {
      kind: 'no-way',
      fitting: from,
      line: finding.drain,
      withinM: LONGEST_REEL_M,
    })
  );
}

/** Lays what a camera saw on the lines its reel went along, by the reel's counter. */
export function placeFinding(network: Network, finding: Finding): PlacedFinding[] | Issue {
  const line = network.numberOf(finding.drain);
  if (line === undefined) {
    return issueFor(finding, 'properties.drain', { kind: 'no-line', line: finding.drain });
  }
  const other = finding.toM ?? finding.atM;
  const counter: Counter = [Math.min(finding.atM, other), Math.max(finding.atM, other)];
  const run = runOf(network, finding, line, counter);
  if ('code' in run) return run;
  const reason = whyNot(network, run, counter);
  return reason === null ? laidOn(run, finding, counter) : issueFor(finding, 'properties', reason);
}
