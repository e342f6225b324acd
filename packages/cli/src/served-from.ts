import { fromSquareFeet, type RoutePlace, type Site } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';

/** No yard drains more. */
const MOST_M2 = 1e6;

/** An area with or without its unit: `110`, `110m2`, `1200ft2`. */
function areaFrom(text: string): number {
  const [, number = '', unit = 'm2'] = /^\s*(\d+(?:\.\d+)?|\.\d+)\s*(m2|ft2)?\s*$/i.exec(text) ?? [];
  const value = number === '' ? Number.NaN : Number(number);
  const areaM2 = unit.toLowerCase() === 'ft2' ? fromSquareFeet(value) : value;
  if (!(areaM2 > 0 && areaM2 <= MOST_M2)) {
    throw new CannotDo(`--serves takes an area such as 110 (m2), 110m2 or 1200ft2, got '${text}'`);
  }
  return areaM2;
}

/** Line whose water comes out at a place; null where the site does not tell. */
function lineAt(site: Site, place: RoutePlace): string | null {
  if (!('id' in place)) return null;
  if (site.drains.some(({ id }) => id === place.id)) return place.id;
  return site.fittings.find(({ id }) => id === place.id)?.drain ?? null;
}

/** What the lines of the site serve; an area that two sources would both count is nobody's. */
function fromSite(site: Site, sources: readonly RoutePlace[]): (number | null)[] {
  const lines = sources.map((place) => lineAt(site, place));
  return lines.map((line) => {
    if (line === null || lines.filter((other) => other === line).length > 1) return null;
    return site.drains.find(({ id }) => id === line)?.servesM2 ?? null;
  });
}

/** Square metres that drain to each source: as given, else what its line in the site serves; null where not known. */
export function servedFrom(
  args: Args,
  site: Site,
  sources: readonly RoutePlace[],
): readonly (number | null)[] {
  const given = args.texts('serves').map(areaFrom);
  if (given.length === 0) return fromSite(site, sources);
  if (given.length !== sources.length) {
    throw new CannotDo(
      `--serves goes with each --from, in the same order: ${sources.length} wanted, got ${given.length}`,
    );
  }
  return given;
}
