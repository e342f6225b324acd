import type { Issue } from '../model/issue.js';
import type { LearnedModel } from '../model/learned.js';
import type { RankResult, SegmentResult } from '../model/result.js';
import type { SeasonLook, SeasonResult } from '../model/season.js';
import type { Site } from '../model/site.js';
import { cautionsFor } from '../risk/cautions.js';
import type { RankOptions } from '../risk/context.js';
import { seedFrom } from '../risk/draws.js';
import { rank } from '../risk/rank.js';
import { yearOf } from '../units/calendar.js';
import { overdueSegments } from './overdue.js';
import { spreadOver } from './spread-over-days.js';
import { GRAVEST_FIRST } from './stretch.js';

/** One client's site. */
export interface SeasonSite {
  /** What the client is called where the site has no name of its own, and in the events' ids. */
  readonly name: string;
  readonly site: Site;
}

/** From when to when looks are planned, and on which days. */
export interface SeasonOptions {
  readonly asOf: string;
  /** Looks due up to this month, `2027-06`; a year from `asOf` where not given. */
  readonly until?: string;
  /** Working days to spread the looks over, ISO dates. */
  readonly days?: readonly string[];
  /** Looks that a crew gets done in a day; 6 where not given. */
  readonly looksPerDay?: number;
  readonly horizonYears?: number;
  readonly segmentM?: number;
  readonly learned?: LearnedModel;
}

/** Two sites a morning, two an afternoon and some second pushes (judgement). */
const LOOKS_PER_DAY = 6;
const EVERY_LOOK_BY = /^\d{4}-\d{2}$/;

/** Month of a date; the middle of the year where only a year is given. */
export const monthOf = (date: string): string => {
  const [year, month = '07'] = date.split('-');
  return `${year}-${month}`;
};

/** Sixteen hex digits that stand for a text. */
function hashOf(text: string): string {
  const word = (seed: number): string => (seedFrom(text, seed) >>> 0).toString(16).padStart(8, '0');
  return word(1) + word(2);
}

/** The push of the camera by which a segment is reached. */
const pushOf = ({ drainId, reach }: SegmentResult): string => `${drainId}\n${reach.from}\n${reach.direction}`;

/** The gravest that was seen and not dealt with first, then the likelier. */
const gravity = ({ known }: SegmentResult): number =>
  known === null ? GRAVEST_FIRST.length : GRAVEST_FIRST.indexOf(known.seen);
const worstFirst = (a: SegmentResult, b: SegmentResult): number =>
  gravity(a) - gravity(b) || b.score - a.score;

function lookOf(
  site: SeasonSite,
  due: readonly SegmentResult[],
  dueMonth: string,
  overdue: boolean,
): SeasonLook {
  const ordered = [...due].sort((a, b) => a.reach.atM - b.reach.atM);
  const likeliest = [...due].sort(worstFirst)[0] as SegmentResult;
  const { drainId, drainName, reach } = likeliest;
  const title = site.site.name ?? site.name;
  const seen = due.flatMap(({ known }) => known?.seen ?? []);
  return {
    site: title,
    drainId,
    drainName,
    segmentIds: ordered.map(({ id }) => id),
    due: dueMonth,
    overdue,
    day: null,
    from: reach.from,
    fromName: reach.fromName,
    direction: reach.direction,
    toM: Math.max(...due.map((segment) => segment.reach.toM)),
    expectM: [reach.atM, reach.toM],
    chance: likeliest.chance.likely,
    known: seen.length > 0,
    seen: GRAVEST_FIRST.find((kind) => seen.includes(kind)) ?? null,
    // no segment in it: a look that grows by one is the same look, and is moved, not doubled
    uid: `${hashOf([title, pushOf(likeliest)].join('\n'))}@rootreach`,
  };
}

/** Looks of one site that fall due, one for each push of the camera. */
function looksOf(
  site: SeasonSite,
  options: RankOptions,
  { segments }: RankResult,
  until: string,
): SeasonLook[] {
  const now = monthOf(options.asOf);
  const overdue = overdueSegments(site.site, options);
  const dueOf = ({ id, nextLook }: SegmentResult): string =>
    overdue.has(id) ? now : `${nextLook}-${now.slice(5)}`;
  const pushes = new Map<string, SegmentResult[]>();
  for (const segment of segments) {
    if (dueOf(segment) > until) continue;
    pushes.set(pushOf(segment), [...(pushes.get(pushOf(segment)) ?? []), segment]);
  }
  return [...pushes.values()].map((due) => {
    const first = due.map(dueOf).sort()[0] as string;
    return lookOf(
      site,
      due,
      first,
      due.some(({ id }) => overdue.has(id)),
    );
  });
}

function checked({ asOf, until, days = [], looksPerDay = LOOKS_PER_DAY }: SeasonOptions): {
  until: string;
  days: readonly string[];
  looksPerDay: number;
} {
  if (yearOf(asOf) === undefined) throw new RangeError(`asOf must be an ISO date, got '${asOf}'`);
  const last = until ?? `${Number(asOf.slice(0, 4)) + 1}-${monthOf(asOf).slice(5)}`;
  if (!EVERY_LOOK_BY.test(last) || yearOf(last) === undefined) {
    throw new RangeError(`until must be a month such as 2027-06, got '${last}'`);
  }
  const odd = days.find((day) => !/^\d{4}-\d{2}-\d{2}$/.test(day) || yearOf(day) === undefined);
  if (odd !== undefined) throw new RangeError(`days must be ISO dates, got '${odd}'`);
  if (!(Number.isInteger(looksPerDay) && looksPerDay >= 1)) {
    throw new RangeError(`looksPerDay must be a whole number of at least 1, got ${looksPerDay}`);
  }
  return { until: last, days: [...new Set(days)].sort(), looksPerDay };
}

/**
 * The looks that fall due on many sites, each as one push of the camera from one way in, spread over working days.
 * @param sites each with its name, which looks are told apart by.
 * @param options from when to when, and on which days.
 * @throws RangeError for dates and numbers that make no sense.
 */
export function seasonOf(sites: readonly SeasonSite[], options: SeasonOptions): SeasonResult {
  const { until, days, looksPerDay } = checked(options);
  const { asOf, horizonYears, segmentM, learned } = options;
  const scoring: RankOptions = {
    asOf,
    ...(horizonYears === undefined ? {} : { horizonYears }),
    ...(segmentM === undefined ? {} : { segmentM }),
    ...(learned === undefined ? {} : { learned }),
  };
  const issues: Issue[] = [];
  let years = 0;
  const looks = sites.flatMap((site) => {
    const ranked = rank(site.site, scoring);
    issues.push(...ranked.issues);
    years = ranked.horizonYears;
    return looksOf(site, scoring, ranked, until);
  });
  const placed = spreadOver(looks, days, looksPerDay);
  return {
    schema: 1,
    asOf,
    until,
    horizonYears: years,
    looks: placed,
    unplaced: days.length === 0 ? 0 : placed.filter(({ day }) => day === null).length,
    issues,
    cautions: cautionsFor({ entry: true }),
  };
}
