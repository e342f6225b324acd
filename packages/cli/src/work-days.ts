import { CannotDo } from './cannot-do.js';

const DAY_MS = 86_400_000;
/** More than a year's days are a slip of the keyboard. */
const MOST_DAYS = 400;

/** Milliseconds of an ISO date, or undefined. */
function dayMs(text: string): number | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!match) return undefined;
  const ms = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]));
  return new Date(ms).toISOString().startsWith(text.trim()) ? ms : undefined;
}

const isWeekday = (ms: number): boolean => ![0, 6].includes(new Date(ms).getUTCDay());

function daysOf(part: string): string[] {
  const [first = '', last] = part.split('..');
  const from = dayMs(first);
  const to = last === undefined ? from : dayMs(last);
  if (from === undefined || to === undefined || to < from || to - from > MOST_DAYS * DAY_MS) {
    throw new CannotDo(
      `--days takes dates and spans of dates such as 2027-04-05,2027-04-12..2027-04-16, got '${part.trim()}'`,
    );
  }
  const days: string[] = [];
  for (let ms = from; ms <= to; ms += DAY_MS) {
    // a date named alone is worked on whatever day it is
    if (last === undefined || isWeekday(ms)) days.push(new Date(ms).toISOString().slice(0, 10));
  }
  return days;
}

/** Working days: dates, and spans of which Saturdays and Sundays are left out. */
export const workDays = (text: string): string[] => text.split(',').flatMap(daysOf);
