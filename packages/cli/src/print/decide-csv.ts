import type { DecideResult } from '@rootreach/core';
import { csv } from './csv.js';

const percent = (share: number | undefined): number | null =>
  share === undefined ? null : Number((100 * share).toFixed(1));

/** One row a choice. */
export const decideCsv = ({ choices, currency, recommended, target }: DecideResult): string =>
  csv([
    [
      'line',
      'choice',
      'name',
      'possible',
      'recommended',
      'outside_limits',
      'currency',
      'now',
      'over_the_years',
      'again',
      'chance_10_low_pct',
      'chance_10_pct',
      'chance_10_high_pct',
      'chance_25_low_pct',
      'chance_25_pct',
      'chance_25_high_pct',
      'why',
      'effect',
    ],
    ...choices.map(({ id, name, possible, breaks, now, presentValue, recurring, chance, why, effect }) => [
      target.drainId,
      id,
      name,
      possible ? 'yes' : 'no',
      id === recommended ? 'yes' : 'no',
      breaks.join(' '),
      currency,
      now,
      presentValue === null ? null : Math.round(presentValue),
      recurring.map(({ what, everyYears }) => `${what} every ${everyYears} years`).join('; '),
      percent(chance?.['10'].low),
      percent(chance?.['10'].likely),
      percent(chance?.['10'].high),
      percent(chance?.['25'].low),
      percent(chance?.['25'].likely),
      percent(chance?.['25'].high),
      why,
      effect,
    ]),
  ]);
