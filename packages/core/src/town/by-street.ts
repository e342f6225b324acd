import { planeAt } from '../geometry/plane.js';
import type { ScoredSite } from '../risk/scored-site.js';
import { middleIn } from './packed-drains.js';
import { streetAt } from './streets.js';
import { byExpected, sumBy, type TownPart } from './sums.js';
import type { Town } from './town.js';

/** What the streets of a town have to expect. */
export interface TownStreets {
  /** Most expected entries first; the part whose key is empty holds the lines of no street. */
  readonly parts: readonly TownPart[];
  /** Lines that name no street and were given that of the nearest tree. */
  readonly linesNamedByTree: number;
}

/** A line that names no street takes that of the nearest tree within this many metres (judgement: across a street). */
const STREET_M = 15;

/** Street of the tree nearest to the middle point of a line. */
function streetOfTree({ context: { field } }: ScoredSite, { trees, drains }: Town, line: number) {
  const [lon, lat] = middleIn(drains, line);
  const { metresPerDegreeLat, metresPerDegreeLon } = planeAt(lon, lat);
  const high = STREET_M / metresPerDegreeLat;
  const wide = STREET_M / metresPerDegreeLon;
  let street: string | undefined;
  let nearest = STREET_M;
  for (const tree of field.index.search(lon - wide, lat - high, lon + wide, lat + high)) {
    const dx = ((field.lon[tree] as number) - lon) * metresPerDegreeLon;
    const dy = ((field.lat[tree] as number) - lat) * metresPerDegreeLat;
    const distance = Math.hypot(dx, dy);
    const its = distance < nearest ? streetAt(trees.streets, tree) : undefined;
    if (its === undefined) continue;
    nearest = distance;
    street = its;
  }
  return street;
}

/** The same street however it is written: `ELM ST.`, `Elm St`. */
const keyOfStreet = (street: string): string =>
  street
    .toLowerCase()
    .replace(/[.\s]+/g, ' ')
    .trim();

/**
 * Sums by street.
 * @param scored the town as scored.
 * @param town its lines and trees, with the streets they name.
 * @returns null where neither lines nor trees name any.
 */
export function townByStreet(scored: ScoredSite, town: Town): TownStreets | null {
  const treesHave = town.trees.streets.names.some((name) => name !== '');
  if (!treesHave && town.drains.streets.names.every((name) => name === '')) return null;
  const names = new Map<string, string>();
  let linesNamedByTree = 0;
  const sums = sumBy(scored, (line) => {
    const own = streetAt(town.drains.streets, line);
    const street = own ?? (treesHave ? streetOfTree(scored, town, line) : undefined);
    if (own === undefined && street !== undefined) linesNamedByTree += 1;
    const key = keyOfStreet(street ?? '');
    if (!names.has(key)) names.set(key, street ?? '');
    return key;
  });
  const parts = [...sums].map(([key, sum]) => sum.part(key, names.get(key) ?? '')).sort(byExpected);
  return { parts, linesNamedByTree };
}
