import type { Assumption, SegmentResult, Site, Units } from '@rootreach/core';
import type { Words } from '../words/words.js';
import { length, small } from './lengths.js';
import { speciesOf } from './trees-said.js';

type Field = keyof Words['owner']['unknowns']['fields'];

const isField = (name: string, words: Words): name is Field =>
  Object.hasOwn(words.owner.unknowns.fields, name);

/** What was taken instead, where a number says it. */
function takenSaid(field: Field, value: Assumption['value'], units: Units, words: Words): string {
  const { taken, usual, years } = words.owner.unknowns;
  if (typeof value !== 'number') return usual;
  if (field === 'installed') return taken(years(String(Math.round(value))));
  if (field === 'canopyRadiusM') return taken(length(2 * value, units));
  return field === 'stemDiameterM' || field === 'depthM' ? taken(small(value, units)) : usual;
}

function sentence(assumption: Assumption, segment: SegmentResult, site: Site, units: Units, words: Words) {
  const parts = assumption.path.split('/');
  const field = parts.at(-1) ?? '';
  if (!isField(field, words)) return null;
  const id = parts.slice(1, -1).join('/');
  const name = segment.trees.find((tree) => tree.id === id)?.name ?? '';
  const said = words.owner.unknowns.fields[field](words.theTree(name, speciesOf(site, id)));
  return `${said} ${takenSaid(field, assumption.value, units, words)}`;
}

/** What had to be taken as given, a sentence or two each; those that matter most to an owner first. */
export function assumedSaid(segment: SegmentResult, site: Site, units: Units, words: Words): string[] {
  const said = segment.assumed.flatMap(
    (assumption) => sentence(assumption, segment, site, units, words) ?? [],
  );
  return [...new Set(said)];
}
