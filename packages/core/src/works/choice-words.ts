import type { ChoiceId, ChoiceReason, GardenEffect, TreeEffect } from '../model/works.js';

const NAMES: Readonly<Record<ChoiceId, string>> = {
  leave: 'leave it',
  'clear-again': 'clear it, again and again',
  'spot-repair': 'dig out the one bad spot',
  'replace-like': 'replace with the same pipe',
  'replace-heavier': 'replace with tight, stout pipe',
  'basin-for-wye': 'access basin in place of the branch',
  'line-inside': 'line it inside',
  move: 'move the line',
  barrier: 'root barrier beside it',
  'fell-tree': 'fell the tree',
  'inlet-at-low-spot': 'inlet basin at the low spot',
};

const REASONS: Readonly<Record<ChoiceReason, string>> = {
  'full-cannot-be-cleared': 'a line full of roots cannot be cleared, only replaced or moved',
  'crushed-cannot-be-cleared': 'a crushed line cannot be cleared, only replaced or moved',
  'cutting-does-not-mend-shape': 'no roots were seen, and cutting mends no sag or offset',
  'full-cannot-be-lined': 'no liner goes through a line full of roots',
  'lost-shape-cannot-be-lined': 'a liner takes the shape of the pipe, and that one has lost it',
  'corrugated-cannot-be-lined': 'a liner does not bond to this wall',
  'perforated-cannot-be-lined': 'a liner would close the slots that take the water in',
  'too-small-to-line': 'too small for a liner',
  'trouble-too-long-for-a-spot': 'the trouble is longer than one hole',
  'nothing-known-to-mend': 'no camera has shown the one spot to mend',
  'not-sold-any-more': 'nobody sells that pipe any more',
  'pipe-not-known': 'nobody knows what pipe it is',
  'already-the-better-pipe': 'it is that pipe already',
  'no-branch-here': 'no wye or tee in this stretch',
  'no-route-given': 'no new route was given: plan one first',
  'no-tree-near': 'no tree reaches it',
  'barrier-too-near-stem': 'its trench would lie within three trunk diameters of the stem',
  'pipe-stays-blocked': 'the pipe would stay as blocked as it is',
  'no-low-spot': 'no sag seen and no water said to stand here',
  'size-not-known': 'the size of the pipe is not known',
  'nothing-is-done': 'nothing is done and nobody looks',
  'leaves-it-blocked': 'it stays blocked',
  'opens-come-back': 'cutting leaves the ways in open and roots come back within a year or two',
  'cutters-tear-corrugated': 'jet only: a cutter tears this wall',
  'look-first': 'look with a camera first: no roots have been seen',
  'old-joints-stay': 'the other joints stay as they are',
  'same-joints-as-before': 'with the same joints as before',
  'fewer-tighter-joints': 'fewer joints past the tree, and tight ones',
  'whole-stretch-new': 'all of it new',
  'access-where-lines-meet': 'with a basin where the lines meet',
  'way-in-to-all-lines': 'a way in to all of its lines, entries sealed',
  'joints-inside-gone-ends-stay': 'no joints within the liner; its ends stay open to roots',
  'connections-cut-open-again': 'connections are cut open again, and stay open to roots',
  'away-from-the-trees': 'a new line elsewhere, the old one left in the ground',
  'roots-pass-under-and-round': 'roots pass under and round it in time',
  'old-roots-fade': 'its roots die back over about five years',
  'other-trees-stay': 'the other trees stay',
  'takes-water-at-the-low-spot': 'takes the water in where it stands',
};

const TREES: Readonly<Record<TreeEffect, string>> = {
  none: 'no roots cut',
  'few-roots-cut': 'some roots cut; dig with care',
  'arborist-says': 'within the arborist zone of a tree: hand or air digging, thick roots kept',
  'must-not': 'too near a stem to dig',
  'tree-goes': 'the tree goes',
};

const GARDEN: Readonly<Record<GardenEffect, string>> = {
  none: 'garden untouched',
  'one-hole': 'one hole, turf laid back',
  trench: 'a trench through the garden, turf laid back',
  'paving-opened': 'a trench, and paving opened and made good',
};

/** English name of a choice. */
export const choiceName = (id: ChoiceId): string => NAMES[id];

/** English: why it is possible or not, and what to know about it. */
export const wordReasons = (reasons: readonly ChoiceReason[]): string =>
  reasons.map((reason) => REASONS[reason]).join('; ');

/** English: what it does to tree and garden. */
export const wordEffect = (tree: TreeEffect, garden: GardenEffect): string =>
  `${TREES[tree]}; ${GARDEN[garden]}`;
