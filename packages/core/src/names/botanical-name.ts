import { epithetStem, type NameHit, nameIndex } from './name-index.js';
import { squash, wordsOf } from './words.js';

const NO_EPITHET = /^(?:sp|spp|species|hybrid|hybrids|cv|var|cultivar)$/;

/** What stands at this place in the words when read as `Genus epithet`. */
function nameAt(words: readonly string[], at: number): NameHit | undefined {
  const { names, genera, epithets } = nameIndex();
  const genus = words[at] ?? '';
  const asGenus = genera.get(genus);
  if (asGenus === undefined) return undefined;
  for (const length of [4, 3]) {
    const whole = names.get(squash(words.slice(at, at + length)));
    if (whole !== undefined && words.length >= at + length && whole.row.botanical !== '') return whole;
  }
  const epithet = words[at + 1];
  if (epithet === undefined || NO_EPITHET.test(epithet)) return asGenus;
  const species = epithets.get(genus)?.get(epithetStem(epithet));
  if (species === undefined) return { ...asGenus, certainty: 'guess' };
  const asWritten = wordsOf(species.row.botanical)[1] === epithet;
  return { ...species, certainty: asWritten ? species.certainty : 'likely' };
}

/**
 * The words read as a botanical name: the first genus with its epithet, wherever it stands; what follows
 * (a cultivar, `subsp.` and the like) does not change the species.
 */
export function readBotanical(words: readonly string[]): NameHit | undefined {
  let genusOnly: NameHit | undefined;
  for (let at = 0; at < words.length; at++) {
    const hit = nameAt(words, at);
    if (hit?.level === 'species') return hit;
    if (at === 0) genusOnly = hit;
  }
  return genusOnly;
}
