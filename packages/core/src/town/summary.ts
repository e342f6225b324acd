import { planeAt } from '../geometry/plane.js';
import type { Band } from '../model/result.js';
import type { ScoredSite } from '../risk/scored-site.js';
import { pipeRow } from '../tables/pipes.js';
import { speciesRow } from '../tables/species.js';
import { pathIn, type TownDrains } from './packed-drains.js';
import { type Town, type TownBlock, treeKinds } from './town.js';

/** Lines, metres and expected entries of one part of a town. */
export interface TownPart {
  readonly key: string;
  readonly name: string;
  readonly lines: number;
  readonly lengthM: number;
  /** Likely entries within the horizon, and those in a kilometre. */
  readonly expected: number;
  readonly perKm: number;
  readonly byBandM: Readonly<Record<Band, number>>;
}

export interface TownCell extends TownPart {
  /** Corners of the square, degrees. */
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

class Sum {
  readonly lines = new Set<number>();
  lengthM = 0;
  expected = 0;
  readonly byBandM: Record<Band, number> = { leave: 0, watch: 0, inspect: 0, act: 0, 'cannot-say': 0 };

  add(line: number, lengthM: number, expected: number, band: Band): void {
    this.lines.add(line);
    this.lengthM += lengthM;
    this.expected += expected;
    this.byBandM[band] += lengthM;
  }

  part(key: string, name: string): TownPart {
    const { lines, lengthM, expected, byBandM } = this;
    return {
      key,
      name,
      lines: lines.size,
      lengthM,
      expected,
      perKm: lengthM > 0 ? (1000 * expected) / lengthM : 0,
      byBandM,
    };
  }
}

const byExpected = (a: TownPart, b: TownPart): number => b.expected - a.expected || (a.key < b.key ? -1 : 1);

/** Sums the segments by a key of their line. */
function sumBy(scored: ScoredSite, keyOf: (line: number) => string): Map<string, Sum> {
  const { columns } = scored;
  const sums = new Map<string, Sum>();
  for (let row = 0; row < columns.count; row++) {
    const line = columns.line[row] as number;
    const key = keyOf(line);
    let sum = sums.get(key);
    if (sum === undefined) {
      sum = new Sum();
      sums.set(key, sum);
    }
    sum.add(line, columns.lengthM[row] as number, columns.expected[row] as number, scored.bandOf(row));
  }
  return sums;
}

/** What each pipe material has to expect, most first. */
export function townByMaterial(scored: ScoredSite, { kind, kinds }: TownDrains): TownPart[] {
  const material = (line: number) => kinds[kind[line] as number]?.material ?? 'unknown';
  return [...sumBy(scored, material)]
    .map(([key, sum]) => sum.part(key, pipeRow(key as ReturnType<typeof material>).name))
    .sort(byExpected);
}

/** Squares of a town with the lines whose middle point lies in them, most expected entries first. */
export function townByCell(scored: ScoredSite, drains: TownDrains, cellM: number): TownCell[] {
  if (drains.count === 0) return [];
  const [lon, lat] = pathIn(drains, 0)[0] ?? [0, 0];
  const { metresPerDegreeLat, metresPerDegreeLon } = planeAt(lon, lat);
  const high = cellM / metresPerDegreeLat;
  const wide = cellM / metresPerDegreeLon;
  const keyOf = (line: number): string => {
    const path = pathIn(drains, line);
    const [x = 0, y = 0] = path[Math.floor(path.length / 2)] ?? [];
    return `${Math.floor(x / wide)} ${Math.floor(y / high)}`;
  };
  const known = new Map<number, string>();
  const remembered = (line: number): string => {
    let key = known.get(line);
    if (key === undefined) {
      known.clear();
      key = keyOf(line);
      known.set(line, key);
    }
    return key;
  };
  return [...sumBy(scored, remembered)]
    .map(([key, sum]) => {
      const [i = 0, j = 0] = key.split(' ').map(Number);
      const corners = { west: i * wide, south: j * high, east: (i + 1) * wide, north: (j + 1) * high };
      const middle = `${((i + 0.5) * wide).toFixed(5)}, ${((j + 0.5) * high).toFixed(5)}`;
      return { ...sum.part(key, middle), ...corners };
    })
    .sort(byExpected);
}

/** Entries that the trees of each kind bring, most first. */
export function townBySpecies(
  town: Town,
  blocks: readonly TownBlock[],
): { readonly key: string; readonly name: string; readonly trees: number; readonly expected: number }[] {
  const kinds = treeKinds(town);
  const { species, names, pattern } = town.trees;
  const trees = new Map<string, number>();
  for (const p of pattern) {
    const key = names[species[p] as number]?.key ?? '';
    trees.set(key, (trees.get(key) ?? 0) + 1);
  }
  return kinds
    .map((key, i) => ({
      key,
      name: speciesRow(key).common[0],
      trees: trees.get(key) ?? 0,
      expected: blocks.reduce((sum, block) => sum + (block.byKind[i] as number), 0),
    }))
    .sort((a, b) => b.expected - a.expected || (a.key < b.key ? -1 : 1));
}

/** How the trouble of a town is spread over its metres, worst first. */
export interface TownLift {
  /** Points from (0, 0) to (1, 1): share of metres, share of expected entries. */
  readonly metres: readonly number[];
  readonly expected: readonly number[];
  /** Metres, and their share, that hold half of what is expected. */
  readonly halfM: number;
  readonly halfShare: number;
}

const POINTS = 200;
/** Stretches are put into so many steps of entries a metre: a step is then 0.05 % wide, far below any use. */
const STEPS = 65_536;

/** Metres and entries by steps of entries a metre, worst first; stretches without any come last. */
function stepsOf({
  count,
  lengthM,
  expected,
}: ScoredSite['columns']): [metres: Float64Array, entries: Float64Array] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < count; row++) {
    const perM = (expected[row] as number) / (lengthM[row] as number);
    if (perM > 0) least = Math.min(least, perM);
    most = Math.max(most, perM);
  }
  const metres = new Float64Array(STEPS + 1);
  const entries = new Float64Array(STEPS + 1);
  const width = Math.log(most / least) / (STEPS - 1) || 1;
  for (let row = 0; row < count; row++) {
    const perM = (expected[row] as number) / (lengthM[row] as number);
    const step = perM > 0 ? Math.round(Math.log(most / perM) / width) : STEPS;
    metres[step] = (metres[step] as number) + (lengthM[row] as number);
    entries[step] = (entries[step] as number) + (expected[row] as number);
  }
  return [metres, entries];
}

/** Metres by entries a metre, worst first. */
export function townLift({ columns }: ScoredSite): TownLift {
  const [stepM, stepEntries] = stepsOf(columns);
  const allM = stepM.reduce((sum, m) => sum + m, 0);
  const all = stepEntries.reduce((sum, e) => sum + e, 0);
  const metres = [0];
  const share = [0];
  let m = 0;
  let e = 0;
  let halfM: number | null = null;
  stepM.forEach((length, step) => {
    if (length === 0) return;
    const more = stepEntries[step] as number;
    if (halfM === null && e + more >= all / 2) halfM = m + (more > 0 ? (length * (all / 2 - e)) / more : 0);
    m += length;
    e += more;
    if (m >= (metres.length * allM) / POINTS || step === STEPS) {
      metres.push(m / allM);
      share.push(all > 0 ? e / all : 0);
    }
  });
  if ((metres.at(-1) as number) < 1) {
    metres.push(1);
    share.push(1);
  }
  const half = all > 0 ? (halfM ?? allM) : allM;
  return { metres, expected: share, halfM: half, halfShare: allM > 0 ? half / allM : 0 };
}
