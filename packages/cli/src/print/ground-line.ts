import { type GroundBasis, type Units, wordGroundBasis } from '@rootreach/core';
import type { GivenGround } from '../ground-from.js';
import { length } from './lengths.js';

const UNIT = { m: 'metres', ft: 'feet', 'us-ft': 'US survey feet' } as const;

/** What the ground heights rest on. */
export function groundLine(basis: GroundBasis, given: GivenGround | null, units: Units): string {
  const words = wordGroundBasis(basis, (lengthM) => length(lengthM, units));
  if (given === null) return `Ground heights: ${words}.`;
  const taken = given.unitAssumed
    ? `heights taken as ${UNIT[given.heightUnit]}, which the file does not say (else --ground-unit)`
    : `heights in ${UNIT[given.heightUnit]}`;
  return `Ground heights: ${words} (${given.file}), ${taken}; spot levels were left out.`;
}
