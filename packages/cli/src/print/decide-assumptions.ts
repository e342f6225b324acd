import type { DecideResult, WorkAssumption } from '@rootreach/core';

const number = (value: number): string => String(Number(value.toPrecision(3)));

/** Those that bear on every comparison. */
const ALWAYS: readonly string[] = [
  'horizon-years',
  'discount-rate',
  'entry-stops-share',
  'look-target-chance',
];

/** Those that this answer rests on, and all that were given. */
function mattering({ assumed, choices, target }: DecideResult): WorkAssumption[] {
  const possible = (id: string): boolean => choices.some((choice) => choice.id === id && choice.possible);
  const keys = new Set([
    ...ALWAYS,
    ...(target.known === null ? [] : [`stoppages-${target.known.seen}`]),
    ...(possible('clear-again') ? ['clearing-years', 'stoppages-between-clearings'] : []),
    ...(possible('spot-repair') ? ['spot-length-m'] : []),
    ...(possible('barrier') ? ['barrier-off-pipe-m'] : []),
  ]);
  return assumed.filter(({ key, given }) => given || keys.has(key));
}

/** `clearing-years 1.67 years: half of the roots cut inside are back ...`. */
export const workAssumptionLines = (result: DecideResult): string[] =>
  mattering(result).map(
    ({ key, value, unit, why, given }) => `${key} ${number(value)} ${unit}: ${given ? 'as given' : why}`,
  );
