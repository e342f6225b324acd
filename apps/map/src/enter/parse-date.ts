import { yearOf } from '@rootreach/core';
import { takeAbout } from './take-about.js';

/** A date as the site file holds it, and whether it is an estimate. */
export interface TypedDate {
  readonly value: number | string;
  readonly about: boolean;
}

const YEARS_AGO = /^(\d{1,3})\s*(?:years?|yrs?|y)\s*(?:ago|old)$/i;
const YEARS_AGO_FIRST = /^hace\s+(unos\s+|unas\s+)?(\d{1,3})\s+años?$/i;
const DECADE = /^(\d{3})0'?s$/i;
/** Middle of a decade. */
const HALF_DECADE = 5;

/**
 * A year, an ISO date, `20 years ago`, `about 2005`, `1990s`.
 * @param thisYear Calendar year from which is counted back.
 * @returns null where it is not understood or lies in the future.
 */
export function parseDate(typed: string, thisYear: number): TypedDate | null {
  const { text, about } = takeAbout(typed);
  const spanish = YEARS_AGO_FIRST.exec(text);
  const ago = spanish?.[2] ?? YEARS_AGO.exec(text)?.[1];
  // nobody counts tens of years to the year
  if (ago !== undefined)
    return { value: thisYear - Number(ago), about: about || spanish !== null || Number(ago) > 2 };
  const decade = DECADE.exec(text)?.[1];
  if (decade !== undefined) return inPast(Number(decade) * 10 + HALF_DECADE, true, thisYear);
  if (!/^\d{4}(-\d{2}){0,2}$/.test(text) || yearOf(text) === undefined) return null;
  return inPast(text.length === 4 ? Number(text) : text, about, thisYear);
}

function inPast(value: number | string, about: boolean, thisYear: number): TypedDate | null {
  const year = yearOf(value);
  return year === undefined || Math.floor(year) > thisYear ? null : { value, about };
}
