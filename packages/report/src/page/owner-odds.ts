import type { Chance, KnownTrouble, OddsPoint } from '@rootreach/core';
import type { OwnerInput } from './owner-input.js';

/** What is known to be wrong with the stretch; null where nothing was seen. */
export const knownTrouble = ({ segment }: OwnerInput): KnownTrouble | null =>
  segment.known?.seen === 'clear' ? null : segment.known;

/** True where no water gets through and no odds are needed: filled or crushed. */
export function isBlocked(input: OwnerInput): boolean {
  const seen = knownTrouble(input)?.seen;
  return seen === 'full' || seen === 'crushed';
}

interface OwnerOdds {
  readonly chance: Chance;
  readonly points: readonly OddsPoint[];
}

/**
 * Odds if nothing is done. Where something was seen already, and the choices were worked out, they are those of leaving
 * it, so that page and table of choices say the same; else those of roots coming in.
 */
export function ownerOdds(input: OwnerInput): OwnerOdds {
  const { segment, odds, decided, result } = input;
  const leave = decided?.choices.find(({ id }) => id === 'leave');
  if (
    knownTrouble(input) === null ||
    leave === undefined ||
    leave.chance === null ||
    result.horizonYears !== 10
  ) {
    return { chance: segment.chance, points: odds };
  }
  const points = leave.curve.map(({ yearsAhead, chance }) => ({
    yearsAhead,
    chance: { low: chance, likely: chance, high: chance },
  }));
  return { chance: leave.chance['10'], points };
}
