import { planeAt } from '../geometry/plane.js';
import type { ScoredSite } from '../risk/scored-site.js';
import { pipeRow } from '../tables/pipes.js';
import { speciesRow } from '../tables/species.js';
import { middleIn, pathIn, type TownDrains } from './packed-drains.js';
import { byExpected, sumBy, type TownPart } from './sums.js';
import { type Town, type TownBlock, treeKinds } from './town.js';

/** What one square of a town has to expect. */
export interface TownCell extends TownPart {
  /** Corners of the square, degrees. */
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

/**
 * What each pipe material has to expect, most first.
 * @param scored the town as scored.
 * @param drains its lines.
 */
export function townByMaterial(scored: ScoredSite, { kind, kinds }: TownDrains): TownPart[] {
  const material = (line: number) => kinds[kind[line] as number]?.material ?? 'unknown';
  return [...sumBy(scored, material)]
    .map(([key, sum]) => sum.part(key, pipeRow(key as ReturnType<typeof material>).name))
    .sort(byExpected);
}

/**
 * Squares of a town with the lines whose middle point lies in them, most expected entries first.
 * @param scored the town as scored.
 * @param drains its lines.
 * @param cellM side of a square, metres.
 */
export function townByCell(scored: ScoredSite, drains: TownDrains, cellM: number): TownCell[] {
  if (drains.count === 0) return [];
  const [lon, lat] = pathIn(drains, 0)[0] ?? [0, 0];
  const { metresPerDegreeLat, metresPerDegreeLon } = planeAt(lon, lat);
  const high = cellM / metresPerDegreeLat;
  const wide = cellM / metresPerDegreeLon;
  const keyOf = (line: number): string => {
    const [x, y] = middleIn(drains, line);
    return `${Math.floor(x / wide)} ${Math.floor(y / high)}`;
  };
  return [...sumBy(scored, keyOf)]
    .map(([key, sum]) => {
      const [i = 0, j = 0] = key.split(' ').map(Number);
      const corners = { west: i * wide, south: j * high, east: (i + 1) * wide, north: (j + 1) * high };
      const middle = `${((i + 0.5) * wide).toFixed(5)}, ${((j + 0.5) * high).toFixed(5)}`;
      return { ...sum.part(key, middle), ...corners };
    })
    .sort(byExpected);
}

/**
 * Entries that the trees of each kind bring, most first.
 * @param town as joined.
 * @param block the scores of all its lines.
 */
export function townBySpecies(
  town: Town,
  { byKind }: TownBlock,
): { readonly key: string; readonly name: string; readonly trees: number; readonly expected: number }[] {
  const kinds = treeKinds(town);
  const { species, names, pattern } = town.trees;
  const ofPattern = new Uint32Array(species.length);
  for (const p of pattern) ofPattern[p] = (ofPattern[p] as number) + 1;
  const trees = new Map<string, number>();
  ofPattern.forEach((count, p) => {
    const key = names[species[p] as number]?.key ?? '';
    trees.set(key, (trees.get(key) ?? 0) + count);
  });
  return kinds
    .map((key, i) => ({
      key,
      name: speciesRow(key).common[0],
      trees: trees.get(key) ?? 0,
      expected: byKind[i] as number,
    }))
    .sort((a, b) => b.expected - a.expected || (a.key < b.key ? -1 : 1));
}
