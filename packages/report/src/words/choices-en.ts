import type { ChoiceId, ChoiceReason, GardenEffect, TreeEffect } from '@rootreach/core';

const names: Readonly<Record<ChoiceId, string>> = {
  leave: 'Leave it',
  'clear-again': 'Clear it, again and again',
  'spot-repair': 'Mend the bad spot',
  'replace-like': 'New pipe of the same kind',
  'replace-heavier': 'New, stronger pipe',
  'basin-for-wye': 'A basin where the lines meet',
  'line-inside': 'A lining inside the old pipe',
  move: 'A new line, away from the trees',
  barrier: 'A root barrier',
  'fell-tree': 'Take the tree down',
  'inlet-at-low-spot': 'An inlet at the low spot',
};

/** What is done, in a few words. */
const done: Readonly<Record<ChoiceId, string>> = {
  leave: 'Do nothing. Nobody looks.',
  'clear-again': 'Cut or flush the roots out. They grow back.',
  'spot-repair': 'Dig one hole and mend one joint.',
  'replace-like': 'Dig up the stretch and lay the same pipe.',
  'replace-heavier': 'Dig up the stretch. Lay pipe with fewer, tighter joints.',
  'basin-for-wye': 'Dig one hole. The basin gives a way in to all lines.',
  'line-inside': 'Line the pipe from the inside. No trench.',
  move: 'Leave the old line and lay a new one.',
  barrier: 'Set a wall in the ground against roots.',
  'fell-tree': 'Old roots fade over some years.',
  'inlet-at-low-spot': 'Let the water in where it stands.',
};

/** Why something cannot be done here; other reasons need no word to the owner. */
const reasons: Readonly<Partial<Record<ChoiceReason, string>>> = {
  'full-cannot-be-cleared': 'roots fill the pipe',
  'crushed-cannot-be-cleared': 'the pipe is crushed',
  'cutting-does-not-mend-shape': 'cutting does not mend the shape',
  'full-cannot-be-lined': 'roots fill the pipe',
  'lost-shape-cannot-be-lined': 'the pipe has lost its shape',
  'corrugated-cannot-be-lined': 'the pipe is ribbed',
  'perforated-cannot-be-lined': 'the pipe has open slots',
  'too-small-to-line': 'the pipe is too small',
  'trouble-too-long-for-a-spot': 'the bad part is too long',
  'nothing-known-to-mend': 'nothing broken is known',
  'not-sold-any-more': 'such pipe is no longer sold',
  'pipe-not-known': 'the kind of pipe is not known',
  'already-the-better-pipe': 'it is strong pipe now',
  'no-branch-here': 'no lines meet here',
  'no-route-given': 'no new way was drawn',
  'no-tree-near': 'no tree is near',
  'barrier-too-near-stem': 'it would stand too near the trunk',
  'pipe-stays-blocked': 'the pipe would stay blocked',
  'no-low-spot': 'there is no low spot',
  'size-not-known': 'the size of the pipe is not known',
};

const trees: Readonly<Record<TreeEffect, string>> = {
  none: 'no harm',
  'few-roots-cut': 'a few roots cut',
  'arborist-says': 'ask an arborist',
  'must-not': 'too near the trunk',
  'tree-goes': 'the tree goes',
};

const gardens: Readonly<Record<GardenEffect, string>> = {
  none: 'nothing dug',
  'one-hole': 'one hole',
  trench: 'a trench',
  'paving-opened': 'paving opened',
};

export const choicesEn = {
  title: 'What can be done',
  names,
  done,
  reasons,
  trees,
  gardens,
  choice: 'Choice',
  now: 'Cost now',
  over: (years: number): string => `Over ${years} years`,
  odds: (years: number): string => `Trouble in ${years} years`,
  tree: 'Tree and garden',
  advised: 'our advice',
  second: 'next best',
  not: (list: string): string => `Not possible here: ${list}.`,
  because: (name: string, reason: string): string => `${name} (${reason})`,
  unpriced: 'not priced',
  free: 'nothing',
  overMeans: (years: number, percent: string): string =>
    `"Over ${years} years" adds up the work now, visits, and likely repairs, in today's money (${percent} % a year).`,
  invented: 'These prices are invented, to show how the page works.',
  dated: (dated: string): string => `Prices as of ${dated}. The offer itself counts.`,
  undated: 'The offer itself counts.',
};
