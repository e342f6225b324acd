/** Years that a tree was planted or a pipe laid in, as inventories have them. */
const FIRST_YEAR = 1700;
const LAST_YEAR = 2100;
/** Milliseconds of a day; numbers above this are a time since 1970 in milliseconds. */
const DAY_MS = 86_400_000;
/** Day 0 of spreadsheet dates. */
const SHEET_ZERO_MS = Date.UTC(1899, 11, 30);

function isoOf(ms: number): string | null {
  const date = new Date(ms);
  if (!Number.isFinite(date.getTime())) return null;
  const year = date.getUTCFullYear();
  return year >= FIRST_YEAR && year <= LAST_YEAR ? date.toISOString().slice(0, 10) : null;
}

function fromNumber(value: number): string | number | null {
  if (Number.isInteger(value) && value >= FIRST_YEAR && value <= LAST_YEAR) return value;
  if (Math.abs(value) >= 1e10) return isoOf(value);
  if (value > 1e8) return isoOf(value * 1000);
  return value > 20_000 && value < 80_000 ? isoOf(SHEET_ZERO_MS + value * DAY_MS) : null;
}

const two = (text: string): string => text.padStart(2, '0');

/** A day that is on the calendar, else its month or year alone. */
function fromParts(year: string, month: string, day: string): string | number {
  if (Number(month) < 1 || Number(month) > 12) return Number(year);
  const last = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  const base = `${year}-${two(month)}`;
  return Number(day) >= 1 && Number(day) <= last ? `${base}-${two(day)}` : base;
}

/**
 * An ISO date or a year from what inventories write: a year, ISO text, `06/04/2015` (month first unless it cannot
 * be), `04.06.2015` (day first), milliseconds or seconds since 1970, days of a spreadsheet; null where it is none.
 */
export function whenOf(value: unknown): string | number | null {
  if (typeof value === 'number') return fromNumber(value);
  if (typeof value !== 'string') return null;
  const text = value.trim();
  if (/^-?\d+(?:\.\d+)?$/.test(text)) return fromNumber(Number(text));
  const iso =
    /^(\d{4})-(\d{1,2})(?:-(\d{1,2}))?(?:[T ].*)?$/.exec(text) ?? /^(\d{4})\/(\d{1,2})\/(\d{1,2})/.exec(text);
  const inRange = (year: string) => Number(year) >= FIRST_YEAR && Number(year) <= LAST_YEAR;
  if (iso)
    return inRange(iso[1] as string) ? fromParts(iso[1] as string, iso[2] as string, iso[3] ?? '0') : null;
  const other = /^(\d{1,2})([/.])(\d{1,2})\2(\d{4})\b/.exec(text);
  if (!other || !inRange(other[4] as string)) return null;
  const [, a = '', mark, b = '', year = ''] = other;
  return mark === '.' || Number(a) > 12 ? fromParts(year, b, a) : fromParts(year, a, b);
}
