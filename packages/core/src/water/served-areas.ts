import type { LineLayout } from '../line/line-model.js';
import { Network } from '../line/network.js';
import type { Drain, Site } from '../model/site.js';

/** Lines whose area nobody gave: how many, and some of them. */
export interface NotCounted {
  readonly lines: number;
  readonly examples: readonly number[];
}

/** Examples kept: the mouth of a town's net has all of the town above it. */
const MOST_EXAMPLES = 5;

const together = (a: NotCounted, b: NotCounted): NotCounted => ({
  lines: a.lines + b.lines,
  examples: [...a.examples, ...b.examples].slice(0, MOST_EXAMPLES),
});

/** What runs together at the outlet end of a line. */
export interface ServedArea {
  /** Line number that this one drains into. */
  readonly into: number | null;
  /** Other lines that begin or pass where this one ends: the water was taken to go into `into` alone. */
  readonly alsoMeets: readonly number[];
  /** True where other lines drain into this one. */
  readonly fed: boolean;
  /** Area of this line and all above it; null where nobody gave any. */
  readonly areaM2: number | null;
  /** Heads of the net above, or this line, whose area nobody gave, and numbers of the first few. */
  readonly notCounted: NotCounted;
  /** True where the water would run in a ring. */
  readonly inRing: boolean;
}

const rains = (drain: Drain): boolean => drain.carries !== 'foul';

/** Lines that go on from where a line ends: it comes into them anywhere above their own end. */
function linesBelow(network: Network, line: number, drains: readonly Drain[]): number[] {
  const below = network
    .joinsOf(line)
    .filter(({ stationM, into }) => stationM === 0 && into.stationM > 0)
    .map(({ into }) => into.line);
  const idOf = (number: number): string => drains[number]?.id ?? '';
  return [...new Set(below)].sort((a, b) => (idOf(a) < idOf(b) ? -1 : 1));
}

/** Lines in an order in which each comes after all that drain into it; those in a ring are left out. */
function fromTheHeads(into: readonly (number | null)[]): number[] {
  const waiting = into.map(() => 0);
  for (const line of into) if (line !== null) waiting[line] = (waiting[line] as number) + 1;
  const order = into.map((_, line) => line).filter((line) => waiting[line] === 0);
  for (const line of order) {
    const next = into[line];
    if (next === null || next === undefined) continue;
    waiting[next] = (waiting[next] as number) - 1;
    if (waiting[next] === 0) order.push(next);
  }
  return order;
}

/** Area that rains into each line, added down the branching network, by line number. */
export function servedAreas(site: Site, lines: LineLayout): ServedArea[] {
  const { drains } = site;
  const network = new Network(site, lines);
  const below = drains.map((_, line) => linesBelow(network, line, drains));
  const into = below.map((found) => found[0] ?? null);
  const fed = new Set(into.filter((line, from) => line !== null && rains(drains[from] as Drain)));
  const area: (number | null)[] = drains.map((drain) => (rains(drain) ? drain.servesM2 : null));
  const missing = drains.map((drain, line): NotCounted => {
    const unknown = rains(drain) && drain.servesM2 === null && !fed.has(line);
    return unknown ? { lines: 1, examples: [line] } : { lines: 0, examples: [] };
  });
  const order = fromTheHeads(into);
  for (const line of order) {
    const next = into[line];
    if (next === null || next === undefined) continue;
    const own = area[line] as number | null;
    if (own !== null) area[next] = (area[next] ?? 0) + own;
    missing[next] = together(missing[next] as NotCounted, missing[line] as NotCounted);
  }
  const settled = new Set(order);
  return drains.map((_, line) => ({
    into: into[line] as number | null,
    alsoMeets: (below[line] as number[]).slice(1),
    fed: fed.has(line),
    areaM2: settled.has(line) ? (area[line] as number | null) : null,
    notCounted: missing[line] as NotCounted,
    inRing: !settled.has(line),
  }));
}
