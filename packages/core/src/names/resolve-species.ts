import type { SpeciesMatch } from '../model/species-match.js';
import { readBotanical } from './botanical-name.js';
import { readCommon, readInverted, weaken, wholeName } from './common-name.js';
import { groupKey } from './group-words.js';
import { mendSpelling } from './mend-spelling.js';
import type { NameHit } from './name-index.js';
import { isNotALiveTree } from './not-live.js';
import { ignoranceWords } from './plain-words.js';
import { wordsOf } from './words.js';

/** A cultivar in quotes; an apostrophe inside a word is none. */
const CULTIVAR = /(^|[\s(])['"‘“][^'"‘’“”]+(?:['’]s [^'"‘’“”]+)?['"’”](?=$|[\s,;)])/gu;
/** Marks that set two names of one tree apart. */
const BETWEEN_NAMES = /::|\s[-–—]\s|[()|/;[\]]/u;

const CERTAINTY_ORDER = ['guess', 'likely', 'exact'] as const;

/** A species tells more than a genus, a genus more than a form; then the surer reading. */
function better(a: NameHit | undefined, b: NameHit | undefined): NameHit | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  const rank = (hit: NameHit): number =>
    10 * ['unknown', 'genus', 'species'].indexOf(hit.level) + CERTAINTY_ORDER.indexOf(hit.certainty);
  return rank(b) > rank(a) ? b : a;
}

const genusOf = (hit: NameHit): string => wordsOf(hit.row.botanical)[0] ?? '';

/** The botanical reading leads; a plain name may narrow it within its genus, and throws doubt on it outside. */
function together(botanical: NameHit | undefined, common: NameHit | undefined): NameHit | undefined {
  if (botanical === undefined || common === undefined) return botanical ?? common;
  if (genusOf(common) === genusOf(botanical)) return better(botanical, common);
  const doubtful = botanical.level === 'genus' && common.level === 'species' && common.certainty !== 'guess';
  return doubtful ? { ...botanical, certainty: 'guess' } : botanical;
}

/** A plain name in some of the words, made less sure by the others. */
function aside(words: readonly string[], others: readonly string[]): NameHit | undefined {
  const hit = readCommon(words);
  return hit === undefined ? undefined : weaken(hit, others);
}

/** Plain name in a part that may have its noun first, with or without a comma. */
function readPlainPart(part: string, words: readonly string[]): NameHit | undefined {
  const comma = part.indexOf(',');
  if (comma > 0) {
    const noun = wordsOf(part.slice(0, comma));
    const after = wordsOf(part.slice(comma + 1));
    return better(readInverted(noun, after), better(aside(noun, after), aside(after, noun)));
  }
  const straight = readCommon(words);
  return straight?.row.rank === 'species'
    ? straight
    : better(straight, readInverted(words.slice(0, 1), words.slice(1)));
}

/** All parts read; botanical names first, wherever they stand. */
function readParts(parts: readonly string[], mend: boolean): NameHit | undefined {
  let botanical: NameHit | undefined;
  let common: NameHit | undefined;
  for (const part of parts) {
    const words = wordsOf(part);
    const mended = mend ? mendSpelling(words) : words;
    if (mended === undefined) continue;
    const text = mend ? respell(part, words, mended) : part;
    botanical = better(botanical, readBotanical(mended));
    common = better(common, readPlainPart(text, mended));
  }
  return together(botanical, better(common, readApart(parts)));
}

/** `Maple (red)`, `oak - white`: the noun and what tells it apart in two parts. */
function readApart(parts: readonly string[]): NameHit | undefined {
  const [noun, after, ...more] = parts;
  if (noun === undefined || after === undefined || more.length > 0) return undefined;
  return wholeName([...wordsOf(after), ...wordsOf(noun)]);
}

/** The part with its words mended, its comma kept. */
function respell(part: string, words: readonly string[], mended: readonly string[]): string {
  const nounLength = wordsOf(part.split(',')[0] ?? '').length;
  return part.includes(',') && nounLength < words.length
    ? `${mended.slice(0, nounLength).join(' ')}, ${mended.slice(nounLength).join(' ')}`
    : mended.join(' ');
}

const unknown = (text: string | null): SpeciesMatch => ({
  text,
  key: 'unknown-tree',
  level: 'unknown',
  certainty: 'none',
});

function matchOf(text: string, { row, certainty, level }: NameHit): SpeciesMatch {
  if (row.key === 'unknown-tree') return unknown(text);
  return { text, key: row.key, level: level === 'unknown' ? 'group' : level, certainty };
}

/** What the parts say once their slips are mended; never out of the genus that was read without mending. */
function afterMending(parts: readonly string[], plain: NameHit | undefined): NameHit | undefined {
  const mended = readParts(parts, true);
  if (mended === undefined || mended.row.rank === 'unknown') return plain;
  if (plain !== undefined && plain.row.rank !== 'unknown' && genusOf(plain) !== genusOf(mended)) return plain;
  const likely: NameHit = {
    ...mended,
    certainty: mended.certainty === 'exact' ? 'likely' : mended.certainty,
  };
  return better(plain, likely);
}

/** Whole text as one name, straight or with the noun first. */
function readWhole(text: string): NameHit | undefined {
  const words = wordsOf(text);
  const straight = wholeName(words);
  if (straight !== undefined || !text.includes(',')) return straight;
  const [noun = '', ...after] = text.split(',');
  return wholeName([...wordsOf(after.join(' ')), ...wordsOf(noun)]);
}

/**
 * The row of the species table that a name stands for: botanical or plain, any case and order, with cultivars,
 * hybrids, both names together, small slips. Never a genus that the text does not name.
 */
export function resolveSpecies(text: string | null): SpeciesMatch {
  if (text === null || text.trim() === '') return unknown(text);
  const whole = readWhole(text);
  if (whole !== undefined) return matchOf(text, whole);
  const allWords = wordsOf(text);
  if (isNotALiveTree(text) || allWords.every((word) => ignoranceWords.has(word))) return unknown(text);
  const parts = text
    .replace(CULTIVAR, '$1')
    .split(BETWEEN_NAMES)
    .filter((part) => /\p{L}/u.test(part));
  const plain = readParts(parts, false);
  const hit = plain !== undefined && plain.certainty !== 'guess' ? plain : afterMending(parts, plain);
  if (hit !== undefined) return matchOf(text, hit);
  const group = groupKey(allWords);
  return group === undefined ? unknown(text) : { text, key: group, level: 'group', certainty: 'guess' };
}
