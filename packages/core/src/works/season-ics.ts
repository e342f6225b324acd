import type { SeasonLook, SeasonResult } from '../model/season.js';
import type { Units } from '../model/site.js';
import { yearOf } from '../units/calendar.js';
import { wordLook } from './season-words.js';

/** RFC 5545, 3.1: no line longer than this in octets, its end not counted. */
const MOST_OCTETS = 75;
const DAY_MS = 86_400_000;
/** Revisions are counted from this day, so that a later season replaces an earlier one. */
const FIRST_DAY = Date.UTC(2020, 0, 1);

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) as number;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/** Cuts a line after at most 75 octets, between characters; what follows begins with a space. */
function folded(line: string): string {
  let text = '';
  let octets = 0;
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > MOST_OCTETS) {
      text += '\r\n ';
      octets = 1;
    }
    text += character;
    octets += more;
  }
  return text;
}

// control characters other than the line feed have no place in a text (RFC 5545, 3.3.11)
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
const CONTROL = /[\u0000-\u0009\u000b-\u001f\u007f]/g;

/** RFC 5545, 3.3.11: backslash, semicolon, comma and line feed are escaped in a text. */
const escaped = (text: string): string =>
  text
    .replaceAll('\r\n', '\n')
    .replace(CONTROL, ' ')
    .replaceAll('\\', '\\\\')
    .replaceAll(';', '\\;')
    .replaceAll(',', '\\,')
    .replaceAll('\n', '\\n');

const stamp = (ms: number): string => new Date(ms).toISOString().slice(0, 10).replaceAll('-', '');

/** Day of an ISO date; the 15th of a bare month, the middle of a bare year. */
function dayMs(date: string): number {
  const [year, month = '07', day = '15'] = date.slice(0, 10).split('-');
  return Date.UTC(Number(year), Number(month) - 1, Number(day));
}

function eventOf(look: SeasonLook, asOfMs: number, units: Units): string[] {
  const start = dayMs(look.day ?? `${look.due}-01`);
  const line = look.drainName ?? `line ${look.drainId}`;
  const chance = `${Math.round(100 * look.chance)} %`;
  const what = look.known
    ? 'Trouble was seen here before and not dealt with.'
    : `Chance of roots at the likeliest place: ${chance}.`;
  const due = look.overdue ? 'Due already.' : `Due by ${look.due}.`;
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(look.uid)}`,
    `DTSTAMP:${stamp(asOfMs)}T000000Z`,
    `SEQUENCE:${Math.max(0, Math.round((asOfMs - FIRST_DAY) / DAY_MS))}`,
    `DTSTART;VALUE=DATE:${stamp(start)}`,
    `DTEND;VALUE=DATE:${stamp(start + DAY_MS)}`,
    `SUMMARY:${escaped(`Camera: ${look.site}, ${line}`)}`,
    `LOCATION:${escaped(look.site)}`,
    `DESCRIPTION:${escaped(`${line}: ${wordLook(look, units)}.\n${what} ${due}\nSegments: ${look.segmentIds.join(', ')}.\nA screening estimate, not a survey.`)}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/**
 * The season as a calendar file (RFC 5545): one all-day event a look, on its day or on the first of the month it is
 * due. Ids stay the same and the sequence rises with the date of the season, so that a later file moves the events
 * of an earlier one.
 * @param season as `seasonOf` gives it.
 * @param units feet or metres in the texts.
 * @throws RangeError where the season's date is none.
 */
export function seasonIcs({ asOf, looks }: SeasonResult, units: Units): string {
  if (yearOf(asOf) === undefined) throw new RangeError(`asOf must be an ISO date, got '${asOf}'`);
  const asOfMs = dayMs(asOf);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//rootreach//season//EN',
    'CALSCALE:GREGORIAN',
    ...looks.flatMap((look) => eventOf(look, asOfMs, units)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}
