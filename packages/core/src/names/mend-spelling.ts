import { editDistance, slipsAllowed } from './edit-distance.js';
import { epithetStem, nameIndex } from './name-index.js';
import { fillerWords, ignoranceWords, neverMended, otherGenera } from './plain-words.js';
import { singular } from './words.js';

/** All words of the list at the least distance from this one, if that is a slip we mend. */
function nearest(word: string, among: Iterable<string>): string[] {
  let least = slipsAllowed(word);
  let found: string[] = [];
  for (const candidate of among) {
    // a slip in a short candidate is no less suspicious than in a short word
    if (slipsAllowed(candidate) < 1) continue;
    const distance = editDistance(word, candidate, least);
    if (distance > least) continue;
    if (distance < least) found = [];
    least = distance;
    found.push(candidate);
  }
  return least === 0 ? [] : found;
}

const left = (word: string): boolean =>
  fillerWords.has(word) || ignoranceWords.has(word) || neverMended.has(word) || otherGenera.has(word);

/** Of several genera equally near, the one that has the species named next; none if that does not settle it. */
function genusByEpithet(candidates: readonly string[], next: string | undefined): string | undefined {
  const { epithets } = nameIndex();
  const stem = epithetStem(next ?? '');
  const fitting = candidates.filter((genus) => epithets.get(genus)?.has(stem) === true);
  return fitting.length === 1 ? fitting[0] : undefined;
}

function mendEpithet(word: string, genus: string): string | undefined {
  const { epithets, plainWords } = nameIndex();
  const known = epithets.get(genus);
  if (known === undefined || known.has(epithetStem(word)) || plainWords.has(word)) return undefined;
  const found = nearest(
    word,
    [...known.values()].flatMap((hit) => hit.row.botanical.toLowerCase().split(/[ ×]+/)[1] ?? []),
  );
  return new Set(found).size === 1 ? found[0] : undefined;
}

function mendWord(word: string, next: string | undefined): string | undefined {
  const { genera, plainWords } = nameIndex();
  if (left(word) || genera.has(word) || plainWords.has(word) || plainWords.has(singular(word)))
    return undefined;
  const found = nearest(word, new Set([...genera.keys(), ...plainWords]));
  if (found.length === 1) return found[0];
  return genusByEpithet(found, next);
}

/**
 * The words with small slips mended: one letter from five letters, two from nine, and only where a single word
 * of the table is nearest. Undefined when nothing could be mended.
 */
export function mendSpelling(words: readonly string[]): string[] | undefined {
  const { genera } = nameIndex();
  const mended: string[] = [];
  words.forEach((word, at) => {
    const before = mended[at - 1];
    const asEpithet = before !== undefined && genera.has(before) ? mendEpithet(word, before) : undefined;
    mended.push(asEpithet ?? mendWord(word, words[at + 1]) ?? word);
  });
  return mended.some((word, at) => word !== words[at]) ? mended : undefined;
}
