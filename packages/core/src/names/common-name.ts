import { type NameHit, nameIndex } from './name-index.js';
import { fillerWords } from './plain-words.js';
import { singular, squash } from './words.js';

/** Words that deny the name after them. */
const DENIAL = /^(?:false|mock|bastard)$/;
/** Words that make the name before them a mere likeness: `oak leaf hydrangea`. */
const LIKENESS = /^(?:leaf|leaved|leafed|bark|scented|flowered)$/;

/** A whole plain name as written, in the singular, or without a closing `tree`. */
export function wholeName(words: readonly string[]): NameHit | undefined {
  const { names } = nameIndex();
  const last = words.at(-1);
  if (last === undefined) return undefined;
  const head = words.slice(0, -1);
  return (
    names.get(squash(words)) ??
    names.get(squash([...head, singular(last)])) ??
    (/^trees?$/.test(last) && head.length > 0 ? wholeName(head) : undefined)
  );
}

/** Weakens what was found by the words that were left over. */
export function weaken(hit: NameHit, left: readonly string[]): NameHit {
  if (hit.certainty === 'guess' || left.every((word) => fillerWords.has(word))) return hit;
  return { ...hit, certainty: hit.level === 'species' ? 'likely' : 'guess' };
}

function allowed(words: readonly string[], from: number, to: number, hit: NameHit): boolean {
  if (DENIAL.test(words[from - 1] ?? '') || LIKENESS.test(words[to] ?? '')) return false;
  if (to - from > 1 || hit.level === 'species') return true;
  // a single word names the genus only where it is the noun: first or last
  return from === 0 || words.slice(to).every((word) => fillerWords.has(word));
}

/** The longest plain name among the words; of equally long ones the rightmost, where English has its noun. */
export function readCommon(words: readonly string[]): NameHit | undefined {
  for (let length = words.length; length > 0; length--) {
    for (let from = words.length - length; from >= 0; from--) {
      const to = from + length;
      const hit = wholeName(words.slice(from, to));
      if (hit !== undefined && allowed(words, from, to, hit)) {
        return weaken(hit, [...words.slice(0, from), ...words.slice(to)]);
      }
    }
  }
  return undefined;
}

/**
 * A name with its noun first, `maple, Norway Crimson King`: the words after the noun are moved before it,
 * all of them or as many as make a name; else they may be a name by themselves (`poplar, eastern cottonwood`).
 */
export function readInverted(noun: readonly string[], after: readonly string[]): NameHit | undefined {
  if (noun.some((word) => DENIAL.test(word))) return undefined;
  for (let length = after.length; length > 0; length--) {
    const hit = wholeName([...after.slice(0, length), ...noun]);
    if (hit !== undefined) return weaken(hit, after.slice(length));
  }
  const alone = readCommon(after);
  return alone?.level === 'species' ? weaken(alone, noun) : undefined;
}
