import type { SeasonLook } from '../model/season.js';
import { GRAVEST_FIRST } from './stretch.js';

const gravity = ({ seen }: SeasonLook): number =>
  seen === null ? GRAVEST_FIRST.length : GRAVEST_FIRST.indexOf(seen);

/** Known trouble first, the gravest before all, then what is due first, then the likelier. */
const pressing = (a: SeasonLook, b: SeasonLook): number =>
  gravity(a) - gravity(b) || a.due.localeCompare(b.due) || b.chance - a.chance || (a.uid < b.uid ? -1 : 1);

/** Looks by site, the most pressing site first, and its looks from one way in to the next. */
function bySite(looks: readonly SeasonLook[]): SeasonLook[][] {
  const sites = new Map<string, SeasonLook[]>();
  for (const look of [...looks].sort(pressing)) sites.set(look.site, [...(sites.get(look.site) ?? []), look]);
  return [...sites.values()].map((own) =>
    own.sort((a, b) => a.from.localeCompare(b.from) || a.drainId.localeCompare(b.drainId) || a.toM - b.toM),
  );
}

/** A visit is begun on a day with room for all of it, where a day can hold it at all. */
function inWholeVisits(sites: readonly SeasonLook[][], perDay: number, most: number): number[] {
  let [at, room] = [0, perDay];
  return sites.flatMap((own) => {
    const fitsADay = own.length <= most;
    if (fitsADay && room < perDay && own.length > room) [at, room] = [at + 1, perDay];
    return own.map((_, i) => {
      if (room <= 0 && !(fitsADay && i > 0)) [at, room] = [at + 1, perDay];
      room--;
      return at;
    });
  });
}

/**
 * Gives looks their days: evenly over all of them, a site in one visit, the most pressing site first; where the days
 * are too few for that, one look after the other.
 * @param days ISO dates, sorted; with none, no look gets a day.
 */
export function spreadOver(
  looks: readonly SeasonLook[],
  days: readonly string[],
  looksPerDay: number,
): SeasonLook[] {
  const sites = bySite(looks);
  const ordered = sites.flat();
  if (days.length === 0) return ordered;
  const perDay = Math.min(looksPerDay, Math.ceil(looks.length / days.length));
  const whole = inWholeVisits(sites, perDay, looksPerDay);
  const fits = whole.every((at) => at < days.length);
  return ordered.map((look, i) => {
    const at = fits ? (whole[i] as number) : Math.floor(i / looksPerDay);
    return { ...look, day: days[at] ?? null };
  });
}
