import { type PipeForArea, rainLookUp, toSquareFeet, type Units } from '@rootreach/core';
import type { Sizing } from '../sized-by-rain.js';
import { pipeSize } from './lengths.js';
import { flow, rain } from './water-numbers.js';

/** A catchment: `1,200 ft2`, `111 m2`. */
export function area(areaM2: number, units: Units): string {
  const value = Math.round(units === 'us' ? toSquareFeet(areaM2) : areaM2);
  return `${value.toLocaleString('en')} ${units === 'us' ? 'ft2' : 'm2'}`;
}

/** What pipe was sized by, or that it was not and what is wanting. */
export function sizingLine(sizing: Sizing, units: Units): string {
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
      return `Sized for ${rain(rainMmPerHour, units)} of rain${by} on ${area(servesM2, units)}, all of it running off, the pipe full at its least fall.`;
    }
  }
}

/** A line with the water that it was sized by. */
export interface SizedLine {
  readonly id: string;
  readonly sized: PipeForArea | null;
}

/** What would carry the water of a line for which the largest pipe known is too small; null where one is enough. */
export function tooMuchLine({ id, sized }: SizedLine, units: Units): string | null {
  if (sized === null || sized.sideBySide === 1) return null;
  const { sizeM, sideBySide, flowM3s, carriesM3s, boreM } = sized;
  return (
    `${id} has ${flow(flowM3s, units)} to carry, and the largest pipe of its kind known here, ${pipeSize(sizeM, units)}, ` +
    `takes ${flow(carriesM3s, units)}: lay ${sideBySide} of them side by side, or one with an inside diameter of ` +
    `${pipeSize(boreM, units)} or more, or split the water. Trench and price are those of one pipe.`
  );
}
