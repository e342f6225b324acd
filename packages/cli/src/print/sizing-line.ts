import { rainLookUp, toSquareFeet } from '@rootreach/core';
import type { Sizing } from '../sized-by-rain.js';
import type { Units } from './lengths.js';
import { rain } from './water-numbers.js';

/** A catchment: `1,200 ft2`, `111 m2`. */
export function area(areaM2: number, units: Units): string {
  const value = Math.round(units === 'us' ? toSquareFeet(areaM2) : areaM2);
  return `${value.toLocaleString('en')} ${units === 'us' ? 'ft2' : 'm2'}`;
}

/** What pipe was sized by, or that it was not and what is wanting. */
export function sizingLine(sizing: Sizing, largest: boolean, units: Units): string {
  switch (sizing.kind) {
    case 'no-rain':
      return `The pipe was not sized by the water it has to carry. ${rainLookUp} Then: --rain-${units === 'us' ? 'in' : 'mm'}-h N.`;
    case 'no-area':
      return (
        `The pipe was not sized by the water it has to carry: what drains to ${sizing.sources.join(', ')} is not ` +
        'known. Give --serves for each --from, in the same order.'
      );
    case 'sized': {
      const { rainMmPerHour, from, servesM2 } = sizing;
      const by = from === 'site' ? ', as the site file says,' : '';
      const most = largest
        ? ' The largest pipe of its kind known here was taken: check that it is enough, or split the water.'
        : '';
      return `Sized for ${rain(rainMmPerHour, units)} of rain${by} on ${area(servesM2, units)}, all of it running off, the pipe full at its least fall.${most}`;
    }
  }
}
