import { type Site, yearOf } from '@rootreach/core';

/** What the ranking is asked for beside the site itself. */
export interface Question {
  /** ISO date. */
  readonly today: string;
  /** Years on from today: trees grow, the clock runs. */
  readonly yearsAhead: number;
  /** What if every line were dug up and cleared of roots this year? */
  readonly clearedNow: boolean;
}

/** The date that the scores are for. A leap day falls on the last of February. */
export function asOfFor({ today, yearsAhead }: Question): string {
  if (yearsAhead === 0) return today;
  const year = String(Number(today.slice(0, 4)) + yearsAhead).padStart(4, '0');
  const day = today.slice(4);
  return `${year}${day === '-02-29' ? '-02-28' : day}`;
}

/** A camera of this morning comes before a spade of this afternoon. */
const A_DAY = 1 / 365.25;

/** The site as the question supposes it to be: what was seen up to now is dealt with. */
export function supposed(site: Site, { today, clearedNow }: Question): Site {
  const now = yearOf(today);
  if (!clearedNow || now === undefined) return site;
  return {
    ...site,
    drains: site.drains.map((drain) => ({ ...drain, dugYear: Math.max(now, drain.dugYear ?? now) })),
    findings: site.findings.flatMap((finding) =>
      finding.year === null ? [] : [{ ...finding, year: Math.min(finding.year, now - A_DAY) }],
    ),
  };
}
