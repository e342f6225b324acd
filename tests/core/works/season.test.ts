import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SeasonLook } from '../../../packages/core/src/model/season.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { overdueSegments } from '../../../packages/core/src/works/overdue.js';
import { seasonCsv } from '../../../packages/core/src/works/season-csv.js';
import { type SeasonOptions, type SeasonSite, seasonOf } from '../../../packages/core/src/works/season-of.js';
import { wordLook } from '../../../packages/core/src/works/season-words.js';
import { spreadOver } from '../../../packages/core/src/works/spread-over-days.js';
import { here } from '../../cli/call.js';
import { AS_OF, seen } from './corner-lot.js';

const client = (name: string): SeasonSite => {
  const text = readFileSync(here(`data/findings/${name}.geojson`), 'utf8');
  return { name, site: readSite([{ name, text }]).site };
};
const clients: readonly SeasonSite[] = [
  { name: 'corner-lot', site: seen() },
  ...['kettle-lane', 'mill-steps', 'thimble-row'].map(client),
];
const plan = (options: Partial<SeasonOptions> = {}) => seasonOf(clients, { asOf: AS_OF, ...options });

describe('a season', () => {
  const season = plan();

  it('has every segment that falls due, once, and none that does not', () => {
    const due = clients.flatMap(({ site }) =>
      rank(site, { asOf: AS_OF })
        .segments.filter(({ nextLook }) => nextLook <= '2027')
        .map(({ id }) => `${site.name} ${id}`),
    );
    const looked = season.looks.flatMap(({ site, segmentIds }) => segmentIds.map((id) => `${site} ${id}`));
    expect(looked.sort()).toEqual(due.sort());
    expect(season.until).toBe('2027-11');
  });

  it('expects trouble at the likeliest of what a push reaches, where none was seen', () => {
    for (const { site } of clients) {
      const { segments } = rank(site, { asOf: AS_OF });
      for (const look of season.looks.filter((one) => one.site === site.name && !one.known)) {
        const reached = segments.filter(({ id }) => look.segmentIds.includes(id));
        const likeliest = reached.reduce((a, b) => (b.score > a.score ? b : a));
        expect(look.expectM).toEqual([likeliest.reach.atM, likeliest.reach.toM]);
        expect(look.chance).toBe(likeliest.chance.likely);
      }
    }
  });

  it('looks as far ahead as it is asked to, on days that are dates', () => {
    const longer = plan({ horizonYears: 20, days: ['2026-12-01'], looksPerDay: 50 });
    expect(longer.horizonYears).toBe(20);
    for (const look of season.looks) {
      const again = longer.looks.find(({ uid }) => uid === look.uid);
      expect(again?.chance).toBeGreaterThan(look.chance);
      expect(again?.day).toBe('2026-12-01');
    }
    expect(() => plan({ days: ['2026-12-1'] })).toThrow(RangeError);
    expect(() => plan({ until: '2027-05-01' })).toThrow(RangeError);
  });

  it('groups them by the push that reaches them, as far as the last of them', () => {
    const pushes = season.looks.map(
      ({ site, drainId, from, direction }) => `${site} ${drainId} ${from} ${direction}`,
    );
    expect(new Set(pushes).size).toBe(pushes.length);
    for (const { toM, expectM } of season.looks) {
      expect(expectM[0]).toBeLessThan(expectM[1]);
      expect(expectM[1]).toBeLessThanOrEqual(toM + 1e-9);
    }
  });

  it('expects trouble where it was seen, rather than where it is likeliest', () => {
    const tail = season.looks.find(({ drainId }) => drainId === 'tail') as SeasonLook;
    expect(tail).toMatchObject({ known: true, from: 'outlet end', direction: 'upstream' });
    expect(wordLook(tail, 'us')).toBe('push from the outlet, upstream, to 35 ft; expect it at 17 to 26 ft');
    const basin = season.looks.find(({ from, drainId }) => from === 'B1' && drainId === 'collector');
    expect(wordLook(basin as SeasonLook, 'us')).toContain('expect it at 16 to 24 ft');
  });

  it('is due already where nobody has looked for long or trouble is known, and in its time where somebody has', () => {
    const tail = season.looks.find(({ drainId }) => drainId === 'tail') as SeasonLook;
    expect(tail).toMatchObject({ overdue: true, due: '2026-11' });
    const site = clients[0] as SeasonSite;
    // the lowest of the tail was seen clear a week before
    const shortly = {
      ...site,
      site: { ...site.site, findings: site.site.findings.filter(({ seen: s }) => s === 'clear') },
    };
    const looks = seasonOf([shortly], { asOf: AS_OF, segmentM: 4.2 }).looks;
    expect(overdueSegments(shortly.site, { asOf: AS_OF, segmentM: 4.2 }).has('tail/1')).toBe(false);
    expect(
      overdueSegments({ ...site.site, findings: [] }, { asOf: AS_OF, segmentM: 4.2 }).has('tail/1'),
    ).toBe(true);
    expect(looks.length).toBeGreaterThan(0);
  });

  it('stays due when the season is planned again some months later', () => {
    const later = plan({ asOf: '2027-02-10' });
    expect(later.looks.filter(({ overdue }) => overdue).length).toBeGreaterThanOrEqual(
      season.looks.filter(({ overdue }) => overdue).length,
    );
  });

  it('goes further when asked to look further ahead', () => {
    expect(plan({ until: '2032-06' }).looks.length).toBeGreaterThan(season.looks.length);
  });

  it('keeps the ids of its looks when it is worked out again a year on', () => {
    const later = new Set(plan({ asOf: '2027-11-25' }).looks.map(({ uid }) => uid));
    const kept = season.looks.filter(({ uid }) => later.has(uid));
    expect(kept.length).toBeGreaterThan(0.8 * season.looks.length);
    expect(new Set(season.looks.map(({ uid }) => uid)).size).toBe(season.looks.length);
    for (const { uid } of season.looks) expect(uid).toMatch(/^[0-9a-f]{16}@rootreach$/);
  });

  it('is one row a look in the spreadsheet', () => {
    const rows = seasonCsv(season, 'us').trimEnd().split('\r\n');
    expect(rows).toHaveLength(1 + season.looks.length);
    expect(rows[0]).toContain('push_to_ft');
  });

  it.each([{ asOf: 'soon' }, { until: '2027' }, { days: ['2027-02-30'] }, { looksPerDay: 0 }])(
    'refuses %o',
    (options) => {
      expect(() => plan(options)).toThrow(RangeError);
    },
  );
});

describe('days of a season', () => {
  const look = (site: string, n: number): SeasonLook => ({
    site,
    drainId: `line ${n}`,
    drainName: null,
    segmentIds: [],
    due: '2027-06',
    overdue: false,
    day: null,
    from: 'B1',
    fromName: 'basin B1',
    direction: 'upstream',
    toM: 10,
    expectM: [1, 2],
    chance: 0.2,
    known: false,
    seen: null,
    uid: `${site}-${n}@rootreach`,
  });
  const looks = (counts: readonly number[]): SeasonLook[] =>
    counts.flatMap((count, s) => Array.from({ length: count }, (_, n) => look(`site ${s}`, n)));
  const days = (count: number): string[] =>
    Array.from({ length: count }, (_, i) => `2027-04-${String(i + 1).padStart(2, '0')}`);

  it('see a site in one visit where the days suffice', () => {
    const placed = spreadOver(looks([3, 2, 4, 1]), days(6), 6);
    for (const site of ['site 0', 'site 1', 'site 2', 'site 3']) {
      expect(new Set(placed.filter((one) => one.site === site).map(({ day }) => day)).size).toBe(1);
    }
  });

  it('leave no look over while there is room, and put none on a full day', () => {
    const counts = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(
        counts,
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 7 }),
        (sites, many, most) => {
          const placed = spreadOver(looks(sites), days(many), most);
          const perDay = new Map<string, number>();
          for (const { day } of placed) if (day !== null) perDay.set(day, (perDay.get(day) ?? 0) + 1);
          for (const count of perDay.values()) expect(count).toBeLessThanOrEqual(most);
          const wanted = sites.reduce((a, b) => a + b, 0);
          const put = [...perDay.values()].reduce((a, b) => a + b, 0);
          expect(put).toBe(Math.min(wanted, many * most));
        },
      ),
    );
  });

  it('give no day where none was given', () => {
    expect(spreadOver(looks([2]), [], 6).every(({ day }) => day === null)).toBe(true);
  });

  it('see first what is due first, then what is likelier, then by name, where the same is known', () => {
    const order = (...given: SeasonLook[]) => spreadOver(given, [], 1).map(({ site }) => site);
    const [later, sooner] = [{ ...look('later', 1), due: '2027-07' }, look('sooner', 2)];
    expect(order(later, sooner)).toEqual(['sooner', 'later']);
    const likelier = { ...look('likelier', 3), chance: 0.4 };
    expect(order(sooner, likelier)).toEqual(['likelier', 'sooner']);
    const names = ['b', 'c', 'a'].map((name) => look(name, 1));
    expect(order(...names)).toEqual(['a', 'b', 'c']);
  });

  it('see a site from one way in to the next, line by line, the short pushes first', () => {
    const push = (from: string, drainId: string, toM: number) => ({
      ...look('one', toM),
      from,
      drainId,
      toM,
    });
    const mixed = [push('B2', 'x', 3), push('B1', 'y', 4), push('B1', 'x', 9), push('B1', 'x', 5)];
    expect(spreadOver(mixed, [], 9).map(({ from, drainId, toM }) => [from, drainId, toM])).toEqual([
      ['B1', 'x', 5],
      ['B1', 'x', 9],
      ['B1', 'y', 4],
      ['B2', 'x', 3],
    ]);
  });

  it('see what is pressing first', () => {
    const calm = look('calm', 1);
    const fine = { ...look('fine', 2), known: true, seen: 'fine' as const };
    const full = { ...look('full', 3), known: true, seen: 'full' as const };
    expect(spreadOver([calm, fine, full], days(3), 1).map(({ site, day }) => [site, day])).toEqual([
      ['full', '2027-04-01'],
      ['fine', '2027-04-02'],
      ['calm', '2027-04-03'],
    ]);
  });
});
