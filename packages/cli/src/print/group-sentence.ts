import type { LearnedGroup } from '@rootreach/core';
import { count } from './count.js';

export const isCrush = ({ group }: LearnedGroup): boolean => group.startsWith('crush/');

/** Places where roots or breaks were seen, counted or not. */
export const seenIn = ({ entries, someStretches }: LearnedGroup): number => entries + someStretches;

function timesWords(mean: number): string {
  const near = (value: number): boolean => Math.abs(mean - value) <= 0.1 * value;
  if (near(1)) return 'about the rate we assumed';
  if (near(0.5)) return 'about half the rate we assumed';
  if (near(2)) return 'about twice the rate we assumed';
  if (near(3)) return 'about three times the rate we assumed';
  return `about ${mean.toFixed(1)} times the rate we assumed`;
}

/** `about twice the rate we assumed`, and whether that may be chance. */
export function wordRate({ multiplier: { low, mean, high } }: LearnedGroup): string {
  const words = timesWords(mean);
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
