import type { MaterialMatch } from '../model/species-match.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import { pipeTable } from '../tables/pipes.js';
import { editDistance, slipsAllowed } from './edit-distance.js';
import { materialNames, materialWords } from './material-names.js';

const PERFORATED =
  /\b(?:perf|perfs|perforated|perforations|slotted|slots|french drain|weep(?:ing)? (?:tile|pipe)s?|holes)\b/;
const NOT_PERFORATED = /\b(?:solid|unperforated|non ?perf\w*|unslotted|no holes|not perf\w*)\b/;

function perforation(text: string): boolean | null {
  if (NOT_PERFORATED.test(text)) return false;
  return PERFORATED.test(text) ? true : null;
}

const keys: ReadonlyMap<string, MaterialKey> = new Map(
  pipeTable.flatMap((row) => [
    [row.key, row.key],
    [row.name.toLowerCase(), row.key],
  ]),
);

/** Lower case, words apart by one space, `sdr-35` and `sch.40` as `sdr 35` and `sch 40`. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[_\-.,;:/()'"”]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

function mendWord(word: string): string {
  if (materialWords.includes(word)) return word;
  const near = materialWords.filter(
    (candidate) => editDistance(word, candidate, slipsAllowed(word)) <= slipsAllowed(word),
  );
  return near.length === 1 ? (near[0] ?? word) : word;
}

function named(text: string): Pick<MaterialMatch, 'key' | 'certainty'> | undefined {
  for (const [pattern, key, certainty] of materialNames) {
    if (pattern.test(text)) return { key, certainty };
  }
  return undefined;
}

/** The pipe material that a free text speaks of, and whether it says that the pipe is perforated. */
export function resolveMaterial(text: string | null): MaterialMatch {
  if (text === null) return { text, key: 'unknown', certainty: 'none', perforated: null };
  const key = keys.get(text.trim().toLowerCase());
  if (key !== undefined) {
    return { text, key, certainty: key === 'unknown' ? 'none' : 'exact', perforated: null };
  }
  const words = plain(text);
  const asWritten = named(words);
  if (asWritten !== undefined) return { text, ...asWritten, perforated: perforation(words) };
  const mended = words.split(' ').map(mendWord).join(' ');
  const found = named(mended);
  if (found === undefined)
    return { text, key: 'unknown', certainty: 'none', perforated: perforation(mended) };
  const certainty = found.certainty === 'exact' ? 'likely' : found.certainty;
  return { text, key: found.key, certainty, perforated: perforation(mended) };
}
