import type { Words } from '../words/words.js';

const WHOLE = /^(\d{4})-(\d{2})-(\d{2})/;

/** A date as people write it; a year alone stays a year. */
export function dateSaid(asOf: string, words: Words): string {
  const match = WHOLE.exec(asOf);
  return match === null ? asOf : words.date(Number(match[1]), Number(match[2]), Number(match[3]));
}
