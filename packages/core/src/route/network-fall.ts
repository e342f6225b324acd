import type { FallLimits, FallRemedy, GroundUnknown, InvertBounds } from '../model/fall.js';
import type { NetworkFall, NetworkFallLimits, NetworkProfile } from '../model/network-fall.js';
import { laidPipe, unknownStretches } from './fall.js';
import { checkLimits, fallBounds, shortfallOf } from './fall-bounds.js';
import { type Height, highestLine } from './fall-envelope.js';
import { gradeLine } from './fall-grades.js';

/** Less than this is rounding, metres. */
const ROUNDING_M = 1e-9;

/** Highest inverts: at sources and junctions one for all that meets there, at outlets one for each line. */
type Inverts = Map<string, number>;

/** Where a line's lower end is counted: with the others at a junction, by itself at an outlet. */
const endOf = ({ id, to }: NetworkProfile, starts: ReadonlySet<string>): string =>
  starts.has(to) ? to : `${id} at ${to}`;

const startsOf = (lines: readonly NetworkProfile[]): ReadonlySet<string> =>
  new Set(lines.map(({ from }) => from));

const groundOf = ({ stationM, groundM }: NetworkProfile): Height[] =>
  stationM.map((s, i) => ({ s, z: groundM[i] as number }));

/** Lines so that all that runs into one comes before it. */
function downstream(lines: readonly NetworkProfile[]): NetworkProfile[] {
  const left = [...lines];
  const order: NetworkProfile[] = [];
  while (left.length > 0) {
    const next = left.findIndex(({ from }) => !left.some(({ to }) => to === from));
    if (next === -1) throw new RangeError(`lines must not run in a ring, got one through '${left[0]?.from}'`);
    order.push(...left.splice(next, 1));
  }
  return order;
}

/** The tighter of two bounds. */
function both(
  a: InvertBounds | undefined,
  mostM: number | undefined,
  leastM: number | undefined,
): InvertBounds {
  const most = Math.min(a?.mostM ?? Number.POSITIVE_INFINITY, mostM ?? Number.POSITIVE_INFINITY);
  const least = Math.max(a?.leastM ?? Number.NEGATIVE_INFINITY, leastM ?? Number.NEGATIVE_INFINITY);
  return {
    ...(most < Number.POSITIVE_INFINITY ? { mostM: most } : {}),
    ...(least > Number.NEGATIVE_INFINITY ? { leastM: least } : {}),
  };
}

/** Limits of one line between inverts at its ends. */
function limitsOf(
  line: NetworkProfile,
  limits: NetworkFallLimits,
  isLast: boolean,
  from: number | undefined,
  to: number | undefined,
): FallLimits {
  const { ends, bareBeforeOutletM, ...rest } = limits;
  return {
    ...rest,
    pipeHeightM: line.pipeHeightM,
    source: both(ends?.[line.from], from, undefined),
    outlet: both(ends?.[line.to], to, undefined),
    ...(isLast && bareBeforeOutletM !== undefined ? { bareBeforeOutletM } : {}),
  };
}

/** Highest inverts at the ends of all lines: down from the sources, then back up from the outlets. */
function highestInverts(order: readonly NetworkProfile[], limitsFor: LimitsFor): Inverts {
  const inverts: Inverts = new Map();
  const starts = startsOf(order);
  const lineOf = (line: NetworkProfile, to: number | undefined): Height[] => {
    const { over, minFall, maxFall } = fallBounds(
      groundOf(line),
      limitsFor(line, inverts.get(line.from), to),
    );
    return highestLine(over, minFall, maxFall);
  };
  for (const line of order) {
    const high = lineOf(line, undefined);
    const end = (high[high.length - 1] as Height).z;
    inverts.set(
      line.from,
      Math.min(inverts.get(line.from) ?? Number.POSITIVE_INFINITY, (high[0] as Height).z),
    );
    const to = endOf(line, starts);
    inverts.set(to, Math.min(inverts.get(to) ?? Number.POSITIVE_INFINITY, end));
  }
  for (const line of [...order].reverse()) {
    const high = lineOf(line, inverts.get(endOf(line, starts)));
    inverts.set(line.from, (high[0] as Height).z);
  }
  return inverts;
}

type LimitsFor = (line: NetworkProfile, from: number | undefined, to: number | undefined) => FallLimits;

interface Worst {
  readonly byM: number;
  readonly line: string;
  readonly atM: number;
}

/** Highest inverts, and the line that falls short most. */
function solve(
  order: readonly NetworkProfile[],
  limits: NetworkFallLimits,
): { readonly inverts: Inverts; readonly worst: Worst; readonly limitsFor: LimitsFor } {
  const starts = startsOf(order);
  const limitsFor: LimitsFor = (line, from, to) => limitsOf(line, limits, !starts.has(line.to), from, to);
  const inverts = highestInverts(order, limitsFor);
  let worst: Worst = { byM: Number.NEGATIVE_INFINITY, line: '', atM: 0 };
  for (const line of order) {
    const bounds = fallBounds(
      groundOf(line),
      limitsFor(line, inverts.get(line.from), inverts.get(endOf(line, starts))),
    );
    const { byM, atM } = shortfallOf(bounds);
    if (byM > worst.byM) worst = { byM, line: line.id, atM };
  }
  return { inverts, worst, limitsFor };
}

function remediesFor(
  order: readonly NetworkProfile[],
  limits: NetworkFallLimits,
  shortM: number,
): FallRemedy[] {
  const would = (other: NetworkFallLimits): boolean => solve(order, other).worst.byM <= ROUNDING_M;
  const remedies: FallRemedy[] = [];
  const maxDepthM = limits.maxDepthM + shortM;
  if (would({ ...limits, maxDepthM })) remedies.push({ kind: 'dig-deeper', maxDepthM });
  const minCoverM = limits.minCoverM - shortM;
  if (minCoverM >= 0 && would({ ...limits, minCoverM })) remedies.push({ kind: 'less-cover', minCoverM });
  return [...remedies, { kind: 'pump', liftM: shortM }];
}

/**
 * The shallowest pipes of a whole network: every line falls as `layInvert` has it, and lines meet at one invert, without
 * a drop; at an outlet each comes in by itself. Lines that come in high go down to the junction before it, as steeply as allowed.
 * @throws RangeError where lines run in a ring or a limit makes no sense.
 */
export function layNetwork(lines: readonly NetworkProfile[], limits: NetworkFallLimits): NetworkFall {
  for (const { pipeHeightM } of lines) checkLimits({ ...limits, pipeHeightM });
  const order = downstream(lines);
  const unknown = order.flatMap((line): (GroundUnknown & { id: string })[] => {
    const gap = unknownStretches(line);
    return gap ? [{ id: line.id, ...gap }] : [];
  });
  if (unknown.length > 0) return { kind: 'unknown', lines: unknown };
  const { inverts, worst, limitsFor } = solve(order, limits);
  if (worst.byM > ROUNDING_M) {
    const remedies = remediesFor(order, limits, worst.byM);
    return { kind: 'impossible', shortfallM: worst.byM, line: worst.line, atM: worst.atM, remedies };
  }
  return {
    kind: 'laid',
    lines: order.map((line) => {
      const to = inverts.get(endOf(line, startsOf(order))) as number;
      const fixed = limitsFor(line, inverts.get(line.from), to);
      const bounds = fallBounds(groundOf(line), { ...fixed, outlet: { leastM: to, mostM: to } });
      const grades = gradeLine(bounds);
      const end = grades[grades.length - 1] as Height;
      // both ends are set: what is left is rounding
      const exact = grades.map((each) => (each === end ? { s: end.s, z: to } : each));
      return { id: line.id, pipe: laidPipe(groundOf(line), exact, line.pipeHeightM) };
    }),
  };
}
