import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { SeasonLook, SeasonResult } from '../../packages/core/src/model/season.js';
import { seasonIcs } from '../../packages/core/src/works/season-ics.js';

const look = (change: Partial<SeasonLook> = {}): SeasonLook => ({
  site: 'Invented: Quince Court, no. 3; back\\side',
  drainId: 'main',
  drainName: 'Fallrohr Süd — 排水 "old"',
  segmentIds: ['main/4', 'main/5'],
  due: '2027-04',
  overdue: false,
  day: '2027-04-06',
  from: 'B1',
  fromName: 'basin B1',
  direction: 'upstream',
  toM: 18.9,
  expectM: [16.76, 18.9],
  chance: 0.46,
  known: false,
  seen: null,
  uid: '0123456789abcdef@rootreach',
  ...change,
});

const season = (looks: readonly SeasonLook[], asOf = '2026-11-25'): SeasonResult => ({
  schema: 1,
  asOf,
  until: '2027-11',
  horizonYears: 10,
  looks,
  unplaced: 0,
  issues: [],
  cautions: [],
});

/** Events as an independent reader of RFC 5545 finds them. */
function eventsOf(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar
    .getAllSubcomponents('vevent')
    .map((event) => new ICAL.Event(event, { strictExceptions: true }));
}

describe('the calendar file, read by ical.js', () => {
  const text = seasonIcs(
    season([look(), look({ uid: 'b@rootreach', day: null, known: true, seen: 'fine' })]),
    'us',
  );

  it('is one calendar of version 2.0 with all events', () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//rootreach//season//EN');
    expect(eventsOf(text)).toHaveLength(2);
  });

  it('gives back every character of names with commas, semicolons, backslashes and letters of other scripts', () => {
    const [event] = eventsOf(text);
    expect(event?.location).toBe(look().site);
    expect(event?.summary).toBe(`Camera: ${look().site}, ${look().drainName}`);
  });

  it('says where to push and where to expect it, in feet', () => {
    expect(eventsOf(text)[0]?.description).toContain(
      'push from basin B1, upstream, to 62 ft; expect it at 55 to 62 ft',
    );
  });

  it('lasts one whole day: the day given, else the first of the month it is due', () => {
    const days = eventsOf(text).map(({ startDate, endDate }) => [
      startDate.isDate,
      String(startDate),
      String(endDate),
    ]);
    expect(days).toEqual([
      [true, '2027-04-06', '2027-04-07'],
      [true, '2027-04-01', '2027-04-02'],
    ]);
  });

  it('is stamped with the date of the season, not with a clock', () => {
    const event = new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent('vevent');
    expect(String(event?.getFirstPropertyValue('dtstamp'))).toBe('2026-11-25T00:00:00Z');
  });

  it('keeps the id and raises the sequence in a later season, so that taking it in moves the event', () => {
    const [before] = eventsOf(text);
    const [after] = eventsOf(seasonIcs(season([look({ day: '2027-04-09' })], '2027-02-01'), 'us'));
    expect(after?.uid).toBe(before?.uid);
    expect(after?.sequence as number).toBeGreaterThan(before?.sequence as number);
  });
});

describe('the calendar file, by the letter of RFC 5545', () => {
  const text = seasonIcs(season([look({ site: 'x'.repeat(80), drainName: '排'.repeat(60) })]), 'metric');

  it('ends every line with CR LF and has no other line ends (3.1)', () => {
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('has no line of more than 75 octets, and cuts no character in two (3.1)', () => {
    const lines = text.split('\r\n');
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeGreaterThan(72);
    expect(lines.filter((line) => /^[ -~]{75}$/.test(line)).length).toBeGreaterThan(0);
    // a space and 24 characters of three octets are 73: one more would not go in
    expect(lines).toContain(` ${'排'.repeat(24)}`);
    expect(text).not.toContain('\uFFFD');
    expect(text.replaceAll('\r\n ', '')).toContain('排'.repeat(60));
  });

  it('takes control characters out of texts (3.3.11)', () => {
    const odd = seasonIcs(season([look({ site: 'a\u0007b\rc\nEND:VEVENT' })]), 'us');
    expect(odd).not.toContain('\u0007');
    expect(eventsOf(odd)).toHaveLength(1);
    expect(eventsOf(odd)[0]?.location).toBe('a b c\nEND:VEVENT');
  });

  it('is refused for a date that is none', () => {
    expect(() => seasonIcs(season([look()], 'soon'), 'us')).toThrow(RangeError);
  });
});
