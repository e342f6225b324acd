import type { RankResult, SegmentResult, Site } from '@rootreach/core';
import { isEmptyPatch, type ListPatch, listPatch, patchedList } from './list-patch.js';
import type { Opened } from './tasks.js';

type Lists<T> = { [K in keyof T as T[K] extends readonly object[] ? K : never]: T[K] };
type SiteList = keyof Lists<Site>;

const SITE_LISTS: readonly SiteList[] = [
  'trees',
  'drains',
  'fittings',
  'findings',
  'obstacles',
  'barriers',
  'levels',
];

/** A ranking without the lists that are sent as patches. */
type ResultHead = Omit<RankResult, 'segments' | 'lines' | 'trees'>;

/** What changed from one answer to the next. Lists that did not change are left out. */
export interface OpenedPatch {
  readonly site: Readonly<Record<string, unknown>>;
  readonly siteLists: Readonly<Partial<Record<SiteList, ListPatch<object>>>>;
  readonly issues: Opened['issues'];
  readonly head: ResultHead;
  readonly segments: ListPatch<SegmentResult>;
  readonly lines: ListPatch<object>;
  readonly trees: ListPatch<object>;
}

const isSameChance = (a: SegmentResult['chance'], b: SegmentResult['chance']): boolean =>
  a.low === b.low && a.likely === b.likely && a.high === b.high;

/** True where two rows differ in their rank at most: that is the place in the list. */
function isSameButRank(a: SegmentResult, b: SegmentResult): boolean {
  for (const name of Object.keys(b) as (keyof SegmentResult)[]) {
    if (name === 'rank' || a[name] === b[name]) continue;
    if (name !== 'chance' || !isSameChance(a.chance, b.chance)) return false;
  }
  return true;
}

/** The rows, each the one last sent where it is the same but for its rank. */
export function asSent(
  sent: ReadonlyMap<string, SegmentResult>,
  now: readonly SegmentResult[],
): SegmentResult[] {
  return now.map((row) => {
    const last = sent.get(row.id);
    return last && (last === row || isSameButRank(last, row)) ? last : row;
  });
}

/** Every row with the rank of its place. */
const ranked = (rows: readonly SegmentResult[]): SegmentResult[] =>
  rows.map((row, i) => (row.rank === i + 1 ? row : { ...row, rank: i + 1 }));

/**
 * What to send of `now` to a side that holds `before`.
 * @param before its segments as `asSent` gave them, not as ranked.
 */
export function openedPatch(before: Opened, now: Opened): OpenedPatch {
  const site: Record<string, unknown> = {};
  const siteLists: Partial<Record<SiteList, ListPatch<object>>> = {};
  for (const name of Object.keys(now.site) as (keyof Site)[]) {
    if (!(SITE_LISTS as readonly string[]).includes(name)) site[name] = now.site[name];
  }
  for (const name of SITE_LISTS) {
    const patch = listPatch<object>(before.site[name], now.site[name]);
    if (!isEmptyPatch(patch, before.site[name])) siteLists[name] = patch;
  }
  const { segments, lines, trees, ...head } = now.result;
  return {
    site,
    siteLists,
    issues: now.issues,
    head,
    segments: listPatch(before.result.segments, segments),
    lines: listPatch<object>(before.result.lines, lines),
    trees: listPatch<object>(before.result.trees, trees),
  };
}

/** The answer that a patch makes of the one before. Rows and lists that did not change are the very ones of before. */
export function patchedOpened(before: Opened, patch: OpenedPatch): Opened {
  const lists = Object.fromEntries(
    SITE_LISTS.map((name) => {
      const change = patch.siteLists[name];
      return [name, change ? patchedList<object>(before.site[name], change) : before.site[name]];
    }),
  );
  const list = <T extends object>(rows: readonly T[], change: ListPatch<object>): readonly T[] =>
    isEmptyPatch(change, rows) ? rows : patchedList(rows, change as ListPatch<T>);
  return {
    site: { ...patch.site, ...lists } as unknown as Site,
    issues: patch.issues,
    result: {
      ...patch.head,
      segments: ranked(list(before.result.segments, patch.segments)),
      lines: list(before.result.lines, patch.lines),
      trees: list(before.result.trees, patch.trees),
    },
    large: null,
    edits: before.edits + 1,
  };
}

/** What both sides hold before anything was sent. */
export const NOTHING_SENT = {
  site: {
    trees: [],
    drains: [],
    fittings: [],
    findings: [],
    obstacles: [],
    barriers: [],
    levels: [],
  },
  issues: [],
  result: { segments: [], lines: [], trees: [] },
  large: null,
  edits: 0,
} as unknown as Opened;
