import { speciesTable } from '../tables/species.js';
import type { SpeciesRow } from '../tables/species-row.js';
import { ambiguousNames } from './ambiguous-names.js';
import { falseFriends } from './false-friends.js';
import { squash, wordsOf } from './words.js';

/** A row that a name leads to, and how surely. */
export interface NameHit {
  readonly row: SpeciesRow;
  readonly certainty: 'exact' | 'likely' | 'guess';
  /** How much the name itself says: only the genus where the one species we have stands for its genus. */
  readonly level: SpeciesRow['rank'];
}

interface NameIndex {
  /** Whole names, squashed. */
  readonly names: ReadonlyMap<string, NameHit>;
  /** Genus as a word to its row; the only species where there is no row for the genus. */
  readonly genera: ReadonlyMap<string, NameHit>;
  /** Genus, then the species' epithet without its ending. */
  readonly epithets: ReadonlyMap<string, ReadonlyMap<string, NameHit>>;
  /** All words that occur in plain names. */
  readonly plainWords: ReadonlySet<string>;
}

/** An epithet without the ending that follows the genus' gender: `europaeus`, `europaea` -> `europae`. */
export const epithetStem = (word: string): string =>
  word.length < 5 ? word : word.replace(/(?:ii|us|um|is|a|e|i)$/, '');

function row(key: string): SpeciesRow {
  const found = speciesTable.get(key);
  if (found === undefined) throw new RangeError(`a name leads to '${key}', which is not in the table`);
  return found;
}

const hit = (of: SpeciesRow, certainty: NameHit['certainty']): NameHit => ({
  row: of,
  certainty,
  level: of.rank,
});

function collectNames(): Map<string, NameHit> {
  const names = new Map<string, NameHit>();
  const add = (name: string, leadsTo: NameHit): void => {
    const key = squash(wordsOf(name));
    if (!names.has(key)) names.set(key, leadsTo);
  };
  for (const [name, key] of Object.entries(ambiguousNames)) add(name, hit(row(key), 'guess'));
  for (const [name, key] of Object.entries(falseFriends)) add(name, hit(row(key), 'guess'));
  const rows = [...speciesTable.values()];
  for (const found of rows) {
    add(found.key, hit(found, 'exact'));
    for (const name of found.common) add(name, hit(found, 'exact'));
  }
  for (const found of rows) {
    for (const name of found.synonyms) add(name, hit(found, 'likely'));
  }
  return names;
}

interface Botanical {
  readonly genera: Map<string, NameHit>;
  readonly epithets: Map<string, Map<string, NameHit>>;
}

function addBotanical(into: Botanical, name: string, leadsTo: NameHit): void {
  const [genus, epithet] = wordsOf(name);
  if (genus === undefined) return;
  const asGenus: NameHit = { row: leadsTo.row, certainty: 'likely', level: 'genus' };
  if (leadsTo.row.rank === 'genus') into.genera.set(genus, leadsTo);
  else if (!into.genera.has(genus)) into.genera.set(genus, asGenus);
  if (epithet === undefined) return;
  const species = into.epithets.get(genus) ?? new Map<string, NameHit>();
  into.epithets.set(genus, species);
  const stem = epithetStem(epithet);
  if (!species.has(stem)) species.set(stem, leadsTo);
}

function collectBotanical(): Botanical {
  const found: Botanical = { genera: new Map(), epithets: new Map() };
  // a species before its named forms, so that its epithet leads to the species
  const rows = [...speciesTable.values()]
    .filter((each) => each.botanical !== '')
    .toSorted((a, b) => wordsOf(a.botanical).length - wordsOf(b.botanical).length);
  for (const each of rows) addBotanical(found, each.botanical, hit(each, 'exact'));
  for (const each of rows) {
    for (const name of each.synonyms) addBotanical(found, name, hit(each, 'likely'));
  }
  return found;
}

function build(): NameIndex {
  const plainWords = new Set(
    [...speciesTable.values()]
      .flatMap((each) => each.common.flatMap(wordsOf))
      .filter((word) => word.length > 2),
  );
  for (const name of Object.keys({ ...ambiguousNames, ...falseFriends })) {
    for (const word of wordsOf(name)) plainWords.add(word);
  }
  return { names: collectNames(), ...collectBotanical(), plainWords };
}

let index: NameIndex | undefined;

/** The names of the species table, indexed once. */
export function nameIndex(): NameIndex {
  index ??= build();
  return index;
}
