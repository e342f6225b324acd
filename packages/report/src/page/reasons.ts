import type { Drain, SegmentResult } from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import { clipped } from '../say/clipped.js';
import { small } from '../say/lengths.js';
import { shareSaid } from '../say/odds-said.js';
import { speciesOf, treeSaid } from '../say/trees-said.js';
import { whereSaid } from '../say/where.js';
import type { Words } from '../words/words.js';
import { part, sentences } from './frame.js';
import type { OwnerInput } from './owner-input.js';
import { knownTrouble } from './owner-odds.js';

/** A tree or a way in that brings less than this is not worth a sentence (judgement). */
const LEAST_SHARE = 0.15;
const MOST_TREES = 2;
const MOST_CHANGES = 3;

/** Where the stretch lies. */
export function wherePart({ segment, site, units }: OwnerInput, words: Words): Markup {
  const { where } = words.owner;
  const line = clipped(segment.drainName ?? segment.drainId);
  return part(
    where.title,
    '',
    el('p', {}, text(where.on(whereSaid(segment, site, units, words), line))),
    el('p', {}, text(where.ring)),
  );
}

function pipeSaid(drain: Drain | undefined, segment: SegmentResult, input: OwnerInput, words: Words): string {
  const { why, materials } = words.owner;
  const depth = small(segment.depthM, input.units);
  const material = materials[segment.material];
  const year = drain?.installedYear ?? null;
  return year === null ? why.pipe(material, depth) : why.pipeSince(material, String(Math.floor(year)), depth);
}

/** Which tree, which way in, what pipe: a sentence or two each. */
export function whySaid(input: OwnerInput, words: Words): string[] {
  const { segment, site, units } = input;
  const { why } = words.owner;
  const trees = segment.trees.filter(({ share }) => share >= LEAST_SHARE).slice(0, MOST_TREES);
  const { joints, slots, crush } = segment.expectedEntries;
  const all = joints + slots + crush;
  const brings = (way: number): boolean => all > 0 && way / all >= LEAST_SHARE;
  return [
    ...(trees.length === 0 ? [why.noTree] : trees.map((tree) => treeSaid(tree, site, units, words))),
    ...(brings(joints) && segment.joints.count > 0 ? [why.joints(segment.joints.count)] : []),
    ...(brings(slots) ? [why.slots] : []),
    ...(brings(crush) ? [why.crush] : []),
    pipeSaid(
      site.drains.find(({ id }) => id === segment.drainId),
      segment,
      input,
      words,
    ),
  ];
}

export const whyPart = (said: readonly string[], words: Words): Markup =>
  part(words.owner.why.title, '', sentences(said));

/** Changes that lower the odds, the most helpful first; nobody is told to take a tree down. */
export function helpPart({ segment, site }: OwnerInput, words: Words): Markup | null {
  const { help } = words.owner;
  const now = shareSaid(segment.score / 100, words);
  const best = segment.drivers
    .filter(({ code }) => code !== 'tree-absent')
    .map((driver) => ({ driver, to: shareSaid(driver.scoreWithout / 100, words) }))
    .filter(({ to }) => to !== now)
    .sort((a, b) => a.driver.scoreWithout - b.driver.scoreWithout)
    .slice(0, MOST_CHANGES);
  if (best.length === 0) return null;
  const rows = best.map(({ driver, to }) => {
    const name = segment.trees.find(({ id }) => id === driver.tree)?.name ?? '';
    const change = words.changes[driver.code](words.tree(name, speciesOf(site, driver.tree ?? '')));
    return el('li', {}, text(`${change}: ${help.to(to)}.`));
  });
  return part(help.title, '', el('ul', { class: 'said' }, rows), el('p', { class: 'fine' }, text(help.note)));
}

/** What to do next. */
export function nextPart(input: OwnerInput, words: Words): Markup {
  const { nextSteps, seenNext } = words.owner;
  const { band, nextLook } = input.segment;
  const known = knownTrouble(input);
  const said =
    known === null ? nextSteps[band](nextLook) : seenNext[known.seen as keyof typeof seenNext](nextLook);
  return el('p', { class: 'next' }, text(said));
}
