import type { Band, KnownTrouble } from '../model/result.js';
import { judgement } from '../tables/judgement.js';

/** Findings after which nothing but digging or moving helps, or that will stop the line soon. */
const SEVERE: readonly KnownTrouble['seen'][] = ['mass', 'full', 'crushed'];
/** Findings to look into, whatever the score. */
const SUSPECT: readonly KnownTrouble['seen'][] = ['fine', 'sag', 'offset'];

/**
 * What to do about a segment: by score, unless trouble is known, or too little is known to say.
 * @param score 0..100.
 * @param tooLittleKnown never `leave` on no evidence.
 */
export function bandOf(score: number, known: KnownTrouble | null, tooLittleKnown: boolean): Band {
  if (known !== null && SEVERE.includes(known.seen)) return 'act';
  const limits = judgement.bandLimits.value;
  // judged by the whole per cent that people are shown: `50 %` is never called `inspect`
  const shown = Math.round(score);
  if (shown >= limits.act) return 'act';
  if (known !== null && SUSPECT.includes(known.seen)) return 'inspect';
  if (tooLittleKnown) return 'cannot-say';
  if (shown >= limits.inspect) return 'inspect';
  return shown >= limits.watch ? 'watch' : 'leave';
}
