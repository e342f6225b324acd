import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { CORNER_LOT, call, here } from './call.js';

const CAMERA = here('data/camera/corner-lot-2026.geojson');
const CLIENTS = ['kettle-lane', 'mill-steps'].map((name) => here(`data/findings/${name}.geojson`));
const ALL = [CORNER_LOT, CAMERA, ...CLIENTS];

interface Look {
  readonly site: string;
  readonly drainId: string;
  readonly segmentIds: readonly string[];
  readonly due: string;
  readonly known: boolean;
  readonly overdue: boolean;
  readonly day: string | null;
  readonly uid: string;
}
async function looks(...argv: string[]): Promise<readonly Look[]> {
  return (JSON.parse((await call(['season', ...argv, '--json'])).out) as { looks: readonly Look[] }).looks;
}

/** Events of a calendar file by id, as an independent reader finds them. */
function events(text: string): Map<string, ICAL.Event> {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return new Map(
    calendar
      .getAllSubcomponents('vevent')
      .map((one) => [String(one.getFirstPropertyValue('uid')), new ICAL.Event(one)]),
  );
}

describe('season', () => {
  it('has the fields of the contract', async () => {
    for (const look of await looks(...ALL)) {
      expect(look).toMatchObject({
        site: expect.any(String),
        segmentIds: expect.arrayContaining([expect.any(String)]),
        due: expect.stringMatching(/^\d{4}-\d\d$/),
        from: expect.any(String),
        direction: expect.stringMatching(/^(up|down)stream$/),
        toM: expect.any(Number),
        expectM: [expect.any(Number), expect.any(Number)],
        uid: expect.any(String),
      });
    }
  });

  it('reads files of one client together and those of others apart', async () => {
    const sites = new Set((await looks(...ALL)).map(({ site }) => site));
    expect([...sites].sort()).toEqual([
      'Invented: corner lot with an old elm',
      'Invented: house at Kettle Lane',
      'Invented: terrace at Mill Steps',
    ]);
  });

  it('tells a crew where to push from, which way and how far', async () => {
    const { out, code } = await call(['season', CORNER_LOT, CAMERA]);
    expect(code).toBe(0);
    expect(out).toContain(
      'old clay tail: push from the outlet, upstream, to 35 ft; expect it at 17 to 26 ft',
    );
    expect(out).toContain('SEEN full of roots, not dealt with');
    expect(out).toContain('Due already');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('spreads the looks over working days without weekends', async () => {
    const placed = await looks(...ALL, '--days', '2027-04-09..2027-04-14', '--looks-a-day', '9');
    const days = new Set(placed.map(({ day }) => day));
    expect([...days].sort()).toEqual(
      ['2027-04-09', '2027-04-12', '2027-04-13', '2027-04-14'].slice(0, days.size),
    );
    expect(days.size).toBeGreaterThan(2);
  });

  it('says what found no room', async () => {
    const { out } = await call(['season', ...ALL, '--days', '2027-04-09', '--looks-a-day', '4']);
    expect(out).toMatch(/\d+ pushes found no room: give more --days/);
    expect(out).toContain('No day left');
  });

  it('writes a calendar that an independent reader takes, and whose events a later one moves', async () => {
    const first = events((await call(['season', ...ALL, '--days', '2027-04-05..2027-04-16', '--ics'])).out);
    const later = events(
      (await call(['season', ...ALL, '--days', '2027-05-03..2027-05-14', '--as-of', '2027-02-01', '--ics']))
        .out,
    );
    expect(first.size).toBe((await looks(...ALL)).length);
    const both = [...first].filter(([uid]) => later.has(uid));
    expect(both.length).toBeGreaterThan(0.8 * first.size);
    for (const [uid, event] of both) {
      const moved = later.get(uid) as ICAL.Event;
      expect(moved.sequence).toBeGreaterThan(event.sequence as number);
      expect(moved.startDate.compare(event.startDate)).toBe(1);
    }
  });

  it('is one row a push in the spreadsheet', async () => {
    const { out } = await call(['season', ...ALL, '--csv']);
    expect(out.trimEnd().split('\r\n')).toHaveLength(1 + (await looks(...ALL)).length);
  });

  it.each([
    [['--days', '2027-04-31'], '--days takes dates'],
    [['--days', '2027-05-01..2027-04-01'], '--days takes dates'],
    [['--until', 'spring'], 'until must be a month'],
    [['--looks-a-day', '0'], '--looks-a-day takes a whole number'],
    [['--ics', '--csv'], 'choose one of --csv and --ics'],
  ])('cannot do %j and says why', async (argv, words) => {
    const { code, err } = await call(['season', ...ALL, ...argv]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});

describe('the story of the corner lot', () => {
  it('runs from the ranking by way of the camera to the repair, its price and the next look', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'story-'));
    const file = (name: string): string => join(folder, name);
    // nobody has looked: the tail past the elm ranks worst
    const ranked = JSON.parse((await call(['rank', CORNER_LOT, '--json', '--top', '1'])).out);
    expect(ranked.segments[0]).toMatchObject({ drainId: 'tail', band: 'act', known: null });
    // the camera finds it full, and fine roots at the tee of the collector
    const seen = JSON.parse((await call(['rank', CORNER_LOT, CAMERA, '--json'])).out);
    const known = (id: string) => seen.segments.find((one: { id: string }) => one.id === id)?.known;
    expect(known('tail/3')).toMatchObject({ seen: 'full' });
    expect(known('collector/11')).toMatchObject({ seen: 'fine' });
    // what to do: not to clear it, but to lay it new with a basin where the lines meet
    const decided = JSON.parse((await call(['decide', CORNER_LOT, CAMERA, '--json'])).out);
    expect(decided).toMatchObject({ recommended: 'replace-heavier', target: { drainId: 'tail' } });
    const heavier = decided.choices.find((one: { id: string }) => one.id === 'replace-heavier');
    expect(heavier.work.fittings).toContainEqual(expect.objectContaining({ type: 'basin', replaces: 'C1' }));
    // what it costs, in a file
    const quoted = await call(['quote', CORNER_LOT, CAMERA, '--json', '--out', file('quote.json')]);
    expect(quoted.code).toBe(0);
    const quote = JSON.parse(readFileSync(file('quote.json'), 'utf8'));
    expect(quote.options[0]).toMatchObject({ id: 'replace-heavier', total: heavier.priced.total });
    // the work is done: new pipe and a basin are drawn in, and the calendar changes
    const site = JSON.parse(readFileSync(CORNER_LOT, 'utf8'));
    for (const { properties } of site.features) {
      if (properties.id === 'tail') {
        Object.assign(properties, {
          material: 'pvc-sch40',
          installed: '2026-12-10',
          dug: '2026-12-10',
          piece_ft: 20,
        });
        delete properties.joint;
      }
      if (properties.id === 'C1') Object.assign(properties, { type: 'basin', sealed: true });
    }
    writeFileSync(file('after.geojson'), JSON.stringify(site));
    const later = ['--as-of', '2026-12-15'];
    const before = await looks(CORNER_LOT, CAMERA, ...later);
    const after = await looks(file('after.geojson'), CAMERA, ...later);
    expect(before.find(({ drainId }) => drainId === 'tail')).toMatchObject({ overdue: true, known: true });
    expect(after.find(({ drainId }) => drainId === 'tail')).toBeUndefined();
    expect(after.find(({ drainId }) => drainId === 'collector')).toMatchObject({ overdue: true });
    const farAhead = await looks(file('after.geojson'), CAMERA, ...later, '--until', '2037-12');
    const next = farAhead.find(({ drainId }) => drainId === 'tail') as Look;
    expect(next.known).toBe(false);
    expect(Number(next.due.slice(0, 4))).toBeGreaterThan(2030);
    const calendar = await call([
      'season',
      file('after.geojson'),
      CAMERA,
      ...later,
      '--until',
      '2037-12',
      '--ics',
    ]);
    expect(events(calendar.out).get(next.uid)?.summary).toContain('old clay tail');
  });
});
