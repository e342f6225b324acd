import { type Years, years } from './quantity.js';

const ISO_DATE = /^(\d{4})(?:-(\d{2})(?:-(\d{2})(?:T.*)?)?)?$/;

function daysInYear(year: number): number {
  return (Date.UTC(year + 1, 0, 1) - Date.UTC(year, 0, 1)) / 86_400_000;
}

/**
 * A date as a fractional year. A bare year counts as its middle, a bare month as its 15th.
 * Accepts `2019`, `"2019"`, `"2019-05"`, `"2019-05-03"`, and a date with a time.
 * @returns undefined when the text is no calendar date between the years 1000 and 2999.
 */
export function yearOf(date: string | number): Years | undefined {
  const match = ISO_DATE.exec(String(date).trim());
  if (!match) return undefined;
  const year = Number(match[1]);
  if (year < 1000 || year > 2999) return undefined;
  if (match[2] === undefined) return years(year + 0.5);
  const month = Number(match[2]);
  const day = match[3] === undefined ? 15 : Number(match[3]);
  const at = new Date(Date.UTC(year, month - 1, day));
  if (at.getUTCMonth() !== month - 1 || at.getUTCDate() !== day) return undefined;
  return years(year + (at.getTime() - Date.UTC(year, 0, 1)) / 86_400_000 / daysInYear(year));
}
