import type { FittingType } from '@rootreach/core';
import { refOf } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';

const WAYS_IN: readonly unknown[] = ['basin', 'cleanout', 'downspout', 'outlet'];

/** A fitting through which a camera goes in. */
export const isWayIn = (type: unknown): boolean => WAYS_IN.includes(type);

/** Every way in on the sketch, named as the crew says it, then the two ends of the line. */
export function waysIn(): readonly (readonly [id: string, name: string])[] {
  const w = words.value.forms.finding;
  const fittings = (sketch.site.value?.features ?? []).flatMap((feature) => {
    const type = feature.properties['type'];
    const { kind, id } = refOf(feature);
    if (kind !== 'fitting' || !isWayIn(type)) return [];
    return [[id, w.way(words.value.fitting[type as FittingType], id)] as const];
  });
  return [...fittings, ['start', w.ends.start], ['end', w.ends.end]];
}
