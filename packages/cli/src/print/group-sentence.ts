import type { LearnedGroup } from '@rootreach/core';
import { count } from './count.js';

export const isCrush = ({ group }: LearnedGroup): boolean => group.startsWith('crush/');

/** Places where roots or breaks were seen, counted or not. */
export const seenIn = ({ entries, someStretches }: LearnedGroup): number => entries + someStretches;

/** Multipliers that have words of their own, each for what lies within a tenth of it. */
const WORDS: readonly (readonly [value: number, words: string])[] = [
  [1, 'about the rate we assumed'],
  [0.5, 'about half the rate we assumed'],
  [0.67, 'about two thirds of the rate we assumed'],
  [1.5, 'about half as many again as we assumed'],
  [2, 'about twice the rate we assumed'],
  [3, 'about three times the rate we assumed'],
];

function timesWords(mean: number): string {
  const near = WORDS.find(([value]) => Math.abs(mean - value) <= 0.1 * value);
  return near?.[1] ?? `about ${mean.toFixed(1)} times the rate we assumed`;
}

/** Fewer than this is little to go by (judgement). */
const LITTLE = 3;

/** `about twice the rate we assumed`, and whether that may be chance. */
export function wordRate(group: LearnedGroup): string {
  const { low, mean, high } = group.multiplier;
  const words = timesWords(mean);
  if (seenIn(group) < LITTLE) return `${words}, but little was seen`;
  const mayBeOne = low < 1 && high > 1 && Math.abs(mean - 1) > 0.1;
  return mayBeOne ? `${words}, but that may be chance` : words;
}

/** `12 entries where 6.5 were expected: about twice the rate we assumed (1.4 to 2.6)`. */
export function groupSentence(group: LearnedGroup): string {
  const { entries, someStretches, expected, multiplier } = group;
  const [one, many] = isCrush(group) ? ['break', 'breaks'] : ['entry', 'entries'];
  const uncounted =
    someStretches === 0 ? '' : ` and ${count(someStretches, 'stretch', 'stretches')} with roots not counted`;
  const seen = seenIn(group) === 0 ? `no ${one}` : `${count(entries, one as string, many)}${uncounted}`;
  const range = `${multiplier.low.toFixed(1)} to ${multiplier.high.toFixed(1)}`;
  return `${seen} where ${expected.toFixed(1)} were expected: ${timesWords(multiplier.mean)} (${range})`;
}
