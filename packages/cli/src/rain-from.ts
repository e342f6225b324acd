import { fromInchesPerHour } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';

/** Options that say what rain is to be carried. */
export const rainOptions: OptionSpecs = {
  'rain-mm-h': { value: 'N', text: 'rain to carry in mm an hour; as the site file says if not given' },
  'rain-in-h': {
    value: 'N',
    text: 'the same in inches an hour; it is never made up: look it up for your place',
  },
};

/** No rain that was ever measured for a minute is above this, mm/h. */
const MOST_RAIN_MM_H = 2500;

/** Rain asked for, mm an hour; undefined where none was. */
export function rainFrom(args: Args): number | undefined {
  const mm = args.number('rain-mm-h', { least: 0.1, most: MOST_RAIN_MM_H });
  const inches = args.number('rain-in-h', { least: 0.01, most: 100 });
  if (mm !== undefined && inches !== undefined)
    throw new CannotDo('choose one of --rain-mm-h and --rain-in-h');
  return inches === undefined ? mm : fromInchesPerHour(inches);
}
