import type { SeasonLook } from '../model/season.js';
import type { Units } from '../model/site.js';
import { toFeet } from '../units/length.js';

const along = (lengthM: number, units: Units): string =>
  units === 'us' ? String(Math.round(toFeet(lengthM))) : lengthM.toFixed(1);
const unitOf = (units: Units): string => (units === 'us' ? 'ft' : 'm');

/**
 * `push from basin B1, downstream, to 62 ft; expect it at 55 to 62 ft`.
 * @param look of a season.
 * @param units feet or metres.
 */
export function wordLook({ fromName, direction, toM, expectM }: SeasonLook, units: Units): string {
  const [from, to] = expectM;
  const push = `push from ${fromName}, ${direction}, to ${along(toM, units)} ${unitOf(units)}`;
  return `${push}; expect it at ${along(from, units)} to ${along(to, units)} ${unitOf(units)}`;
}
