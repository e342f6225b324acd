import { adviceFor, type Driver, reasonFor, type SegmentResult, type Units } from '@rootreach/core';
import { fall, percent } from './chance.js';
import { length, span } from './lengths.js';

const SEEN = {
  clear: 'seen clear',
  fine: 'fine roots seen',
  mass: 'a root mass seen',
  full: 'seen full of roots',
  crushed: 'seen crushed',
  sag: 'a sag seen',
  offset: 'an offset joint seen',
} as const;

/** What a camera found and nobody has dealt with: `a root mass seen in 2024`. */
export function knownPhrase({ known }: SegmentResult): string | null {
  if (known === null) return null;
  return known.year === null ? SEEN[known.seen] : `${SEEN[known.seen]} in ${Math.floor(known.year)}`;
}

/** Where the reel was when it saw that: `at 31 to 36 ft by the reel, upstream from CO2`. */
export function reelPhrase({ known }: SegmentResult, units: Units): string | null {
  if (known === null) return null;
  const { from, direction, atM, toM } = known.reel;
  const at = toM > atM ? span(atM, toM, units) : length(atM, units);
  const start = from === 'start' || from === 'end' ? `the ${from} of the line as drawn` : from;
  return `at ${at} by the reel, ${direction} from ${start}`;
}

/** The tree that brings most: `American elm (elm) 10 ft away brings 83 %`. */
export function treePhrase({ trees }: SegmentResult, units: Units): string | null {
  const tree = trees[0];
  if (tree === undefined) return null;
  return `${tree.name} (${tree.id}) ${length(tree.distanceM, units)} away brings ${percent(tree.share)} %`;
}

/** The change short of felling a tree that would help most. */
export function bestChange({ drivers }: SegmentResult): Driver | undefined {
  return drivers.find(({ code }) => code !== 'tree-absent');
}

/** What would help most, where something has to be done and the stretch is not past helping. */
export function changePhrase(segment: SegmentResult): string | null {
  const best = bestChange(segment);
  const { band, known } = segment;
  const lost = known?.seen === 'full' || known?.seen === 'crushed';
  if (best === undefined || lost || band === 'leave' || band === 'cannot-say') return null;
  return `${best.change}: ${fall(segment.score, best.scoreWithout)}`;
}

/** Why a segment stands where it does, as short phrases. */
export function whyPhrases(segment: SegmentResult, units: Units): string[] {
  const blind = segment.band === 'cannot-say' && segment.trees.length === 0;
  const reason = blind ? 'no tree was given' : reasonFor(segment);
  const phrases = [knownPhrase(segment), treePhrase(segment, units), reason];
  return phrases.filter((phrase) => phrase !== null && phrase !== '') as string[];
}

/** What to do about it, and what would help most. */
export function doPhrases(segment: SegmentResult): string[] {
  const change = changePhrase(segment);
  return change === null ? [adviceFor(segment)] : [adviceFor(segment), change];
}
