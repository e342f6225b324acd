import { nthSmallest } from './nth-smallest.js';
import type { ScoreColumns } from './score-all.js';

/** Share of segments that count as the worst: what can be looked at in a season (judgement). */
export const WORST_SHARE = 0.1;

/** Expected entries from which a segment is among the worst tenth by its likely value. */
export function worstTenthFrom(columns: ScoreColumns): number {
  const worst = Math.max(1, Math.ceil(WORST_SHARE * columns.count));
  return columns.count === 0 ? 0 : nthSmallest(columns.expected, columns.count - worst);
}

/** Standard normal distribution function: Abramowitz & Stegun 1964, 26.2.17, error below 7.5e-8. */
function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}

/**
 * Chance that a segment is really among the worst tenth, in closed form: how far its likely value lies from the
 * limit, against the spread that moves it alone. For nets too large to sample; held against sampling in a test.
 */
export function inWorstTenth(expected: number, limit: number, ownLogSd: number): number {
  if (expected <= 0) return 0;
  if (limit <= 0) return 1;
  const ahead = Math.log(expected / limit);
  if (ownLogSd === 0) return ahead >= 0 ? 1 : 0;
  return normalBelow(ahead / ownLogSd);
}
