import {
  adviceFor,
  type Caution,
  type Factor,
  type LineResult,
  reasonFor,
  type SegmentResult,
  type TreeZones,
  type Units,
  wordChance,
} from '@rootreach/core';
import { assumptionLines } from './assumptions.js';
import { chanceRange, fall, percent } from './chance.js';
import { count } from './count.js';
import { factorLines } from './factor-lines.js';
import { depth, length, span, trunk } from './lengths.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { knownPhrase, reelPhrase } from './segment-phrases.js';
import { siteTitle } from './site-title.js';
import { type SourceUse, wordSource } from './source-list.js';
import { lineName, whereOf } from './where.js';
import { wrap } from './wrap.js';

/** All that is said about one segment. */
export interface Explained {
  readonly site: { readonly name: string | null; readonly invented: boolean };
  readonly asOf: string;
  readonly horizonYears: number;
  /** Segments of the whole site. */
  readonly segments: number;
  readonly segment: SegmentResult;
  readonly line: LineResult;
  readonly trees: readonly TreeZones[];
  readonly factors: readonly Factor[];
  readonly sources: readonly SourceUse[];
  readonly cautions: readonly Caution[];
}

const LABEL_WIDTH = 14;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A heading at the left, its sentences beside it. */
function section(label: string, sentences: readonly string[], { width, style }: Page): string[] {
  const pad = ' '.repeat(LABEL_WIDTH);
  const lines = sentences.map(
    (sentence) => pad + wrap(sentence, width - LABEL_WIDTH, 2).replaceAll('\n', `\n${pad}`),
  );
  const [first = pad, ...rest] = lines;
  return [`${style.strong(label.padEnd(LABEL_WIDTH))}${first.slice(LABEL_WIDTH)}`, ...rest];
}

function whereLines({ segment, line }: Explained, units: Units): string[] {
  return [
    `${whereOf(segment, units)}, on ${lineName(segment)}.`,
    `${span(segment.startM, segment.endM, units)} from the outlet end of ${length(line.lengthM, units)} of ${line.materialName}, about ${depth(segment.depthM, units)} deep.`,
  ];
}

/** Roots were seen where no tree of the file reaches: the file is short of a tree, not the ground of roots. */
const UNEXPLAINED = 'No tree in the file explains it: look for one that is missing, perhaps next door.';

function chanceLines({ segment, horizonYears, segments }: Explained, units: Units): string[] {
  const { chance, inWorstTenth, known } = segment;
  const what = known === null ? 'that roots get in' : 'that it is stopped up';
  const seen = knownPhrase(segment);
  const rank = `Rank ${segment.rank} of ${count(segments, 'segment')}`;
  const odds = `${capital(wordChance(chance))}, ${what} within ${count(horizonYears, 'year')}: ${chanceRange(chance)}. The true chance should lie in that range 8 times in 10.`;
  if (seen === null) {
    return [odds, `${rank}. That it is really among the worst tenth is ${percent(inWorstTenth)} % sure.`];
  }
  return [
    `On record and not dealt with since: ${seen}, ${reelPhrase(segment, units)}.`,
    segment.trees.length === 0 ? UNEXPLAINED : odds,
    `${rank}, by what was seen.`,
  ];
}

function treeLines({ segment, trees }: Explained, units: Units): string[] {
  const lines = segment.trees.map(({ id, name, share, distanceM }) => {
    const tree = trees.find((zones) => zones.id === id);
    const size =
      tree === undefined
        ? ''
        : `; trunk ${trunk(tree.stemDiameterM, units)}, canopy to ${length(tree.driplineM, units)}, roots to about ${length(tree.reachM, units)}`;
    return `${name} (${id}), ${length(distanceM, units)} away: ${percent(share)} % of the chance${size}.`;
  });
  return lines.length === 0 ? ['No tree reaches it.'] : lines;
}

/** Fewer entries than this in all the years are none to speak of. */
const LEAST_ENTRIES = 0.005;

function wayLines({ segment, horizonYears }: Explained): string[] {
  const { joints, slots, crush } = segment.expectedEntries;
  const why = reasonFor(segment);
  const expected = Object.entries({ joints, slots, crushing: crush })
    .filter(([, entries]) => entries >= LEAST_ENTRIES)
    .map(([way, entries]) => `${entries.toFixed(2)} by ${way}`);
  return [
    ...(why === '' ? [] : [`Mostly: ${why}.`]),
    `Expected entries in ${count(horizonYears, 'year')}: ${expected.length === 0 ? 'next to none' : expected.join(', ')}.`,
    `${count(segment.joints.count, 'joint')} here (by ${segment.joints.basis}).`,
  ];
}

function insideLines({ segment }: Explained, units: Units): string[] {
  const { dripline, trunkMultiple, structural, reach } = segment.overlapM;
  const part = (lengthM: number, where: string): string => `${length(lengthM, units)} ${where}`;
  return [
    `Of ${length(segment.lengthM, units)}: ${[
      part(dripline, 'under a canopy'),
      part(trunkMultiple, 'within 12 trunk diameters'),
      part(structural, 'among structural roots'),
      part(reach, 'within root reach'),
    ].join(', ')}.`,
  ];
}

function changeLines({ segment }: Explained): string[] {
  const lines = segment.drivers.map(
    ({ change, scoreWithout }) => `${change}: ${fall(segment.score, scoreWithout)}`,
  );
  return lines.length === 0 ? ['Nothing that we can work out would move it much.'] : lines;
}

/** Why one segment stands where it does, what would change it, and where that is known from. */
export function explanation(given: Explained, page: Page): string {
  const explained = printable(given);
  const { segment, site, asOf, factors, sources, cautions } = explained;
  const { units, width, style } = page;
  const assumed = assumptionLines(segment.assumed, units);
  const lines = [
    style.strong(wrap(`${segment.id}: ${segment.band}. ${capital(adviceFor(segment))}.`, width)),
    wrap(`${siteTitle(site)}, as of ${asOf}.`, width),
    '',
    ...section('Where', whereLines(explained, units), page),
    ...section('Chance', chanceLines(explained, units), page),
    ...section('Trees', treeLines(explained, units), page),
    ...section('Ways in', wayLines(explained), page),
    ...section('Inside', insideLines(explained, units), page),
    ...section('Would change', changeLines(explained), page),
    ...section('Next look', [`By ${segment.nextLook}.`], page),
    ...section(
      'Cautions',
      cautions.map(({ text }) => text),
      page,
    ),
    ...section('Assumed', assumed.length === 0 ? ['Nothing.'] : assumed, page),
    ...section('Numbers', factorLines(factors, units), page),
    ...section(
      'Sources',
      [...sources.map(wordSource), 'Whole titles, and the numbers of the other trees: --json.'],
      page,
    ),
  ];
  return `${lines.join('\n')}\n`;
}
