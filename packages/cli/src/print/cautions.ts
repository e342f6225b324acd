import type { Caution } from '@rootreach/core';

/** The same cautions in as few words as they bear. */
const short: Readonly<Record<Caution['code'], string>> = {
  'locate-utilities': 'have buried utilities located and wait for the marks',
  'trench-walls': 'slope, shore or box trench walls',
  'trench-ladder': 'a ladder in deep ones',
  'spoil-back': 'spoil back from the edge',
  'cutting-near-trunk': 'cutting roots near a trunk can bring the tree down: ask a certified arborist',
  'arborist-first': 'an arborist looks first within six trunk diameters',
  'dig-with-care-near-trees': 'dig by hand within twelve',
  'protected-trees': 'trees may be protected',
  'saws-in-soil': 'saws kick back in soil',
  'chemicals-in-drains': 'no root killer in a drain that runs to open water',
  'no-entry': 'nobody climbs into a pit or pipe',
  'screening-only': 'These are screening estimates, not a survey and not engineering.',
  'water-to-others':
    "Water sent onto a neighbour's land, a public street or into a foul sewer may be against local rules.",
  'local-code': 'Local code and licensed people decide.',
};

const BEFORE_DIGGING: readonly Caution['code'][] = [
  'locate-utilities',
  'trench-walls',
  'trench-ladder',
  'spoil-back',
  'cutting-near-trunk',
  'arborist-first',
  'dig-with-care-near-trees',
  'protected-trees',
  'saws-in-soil',
  'chemicals-in-drains',
  'no-entry',
];

/** One paragraph of the cautions that were given. */
export function shortCautions(cautions: readonly Caution[]): string {
  const given = new Set(cautions.map(({ code }) => code));
  const digging = BEFORE_DIGGING.filter((code) => given.has(code)).map((code) => short[code]);
  const rest = (['water-to-others', 'screening-only', 'local-code'] as const)
    .filter((code) => given.has(code))
    .map((code) => short[code]);
  const before = digging.length === 0 ? [] : [`Before anybody digs or cuts: ${digging.join('; ')}.`];
  return [...before, ...rest].join(' ');
}
