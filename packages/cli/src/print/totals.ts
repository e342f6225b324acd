import type { Band, RankTotals, Units } from '@rootreach/core';
import { count } from './count.js';
import { length } from './lengths.js';

const BANDS: readonly Band[] = ['act', 'inspect', 'watch', 'leave', 'cannot-say'];

/** How much line, how many trees. */
export const extent = ({ lengthM, drains, segments, trees }: RankTotals, units: Units): string =>
  `${length(lengthM, units)} in ${count(drains, 'line')}, ${count(segments, 'segment')}, ${count(trees, 'tree')}.`;

/** How much of it stands in each band. */
export function bandTotals({ byBand }: RankTotals, units: Units): string {
  const bands = BANDS.filter((band) => byBand[band].segments > 0).map((band, i) => {
    const { lengthM, segments } = byBand[band];
    const many = i === 0 ? count(segments, 'segment') : segments.toLocaleString('en');
    return `${band} ${length(lengthM, units)} in ${many}`;
  });
  return `${bands.join(', ')}.`;
}
