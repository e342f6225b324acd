import type { Band, RankTotals } from '@rootreach/core';
import { count } from './count.js';
import { length, type Units } from './lengths.js';

const BANDS: readonly Band[] = ['act', 'inspect', 'watch', 'leave', 'cannot-say'];

/** How much line there is, and how much of it stands in each band. */
export function totalsLine(totals: RankTotals, units: Units): string {
  const bands = BANDS.filter((band) => totals.byBand[band].segments > 0).map(
    (band) => `${band} ${length(totals.byBand[band].lengthM, units)} (${totals.byBand[band].segments})`,
  );
  const whole = `${length(totals.lengthM, units)} in ${count(totals.drains, 'line')}`;
  return `${whole}, ${count(totals.segments, 'segment')}, ${count(totals.trees, 'tree')}: ${bands.join(', ')}.`;
}
