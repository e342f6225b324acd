import type { Dig } from '../model/dig.js';
import { trenchNumbers } from '../tables/work-judgement.js';

export type DepthClass = 'shallow' | 'mid' | 'deep' | 'walled';

/** Lower borders of the classes, metres of depth. */
const BORDERS: readonly (readonly [DepthClass, number])[] = [
  ['shallow', 0],
  ['mid', trenchNumbers.shallowToM.value],
  ['deep', trenchNumbers.midToM.value],
  ['walled', trenchNumbers.protectedFromM.value],
];

/** `walled` begins at its border itself: a protective system is asked for from exactly 5 ft on. */
export function depthClassOf(depthM: number): DepthClass {
  const found = BORDERS.filter(([, from]) => depthM >= from - 1e-9);
  return (found[found.length - 1] ?? (BORDERS[0] as (typeof BORDERS)[number]))[0];
}

/** A part of a dig that lies in one depth class. */
export interface DepthPart {
  readonly depthClass: DepthClass;
  readonly lengthM: number;
  readonly fromM: number;
  readonly toM: number;
}

/** Cuts a dig where its bottom passes from one depth class to the next. */
export function depthParts({ lengthM, depthStartM, depthEndM }: Dig): DepthPart[] {
  const change = depthEndM - depthStartM;
  const cuts = BORDERS.map(([, from]) => (change === 0 ? -1 : (from - depthStartM) / change))
    .filter((t) => t > 0 && t < 1)
    .sort((a, b) => a - b);
  const at = [0, ...cuts, 1];
  const parts: DepthPart[] = [];
  for (let i = 0; i + 1 < at.length; i++) {
    const [a, b] = [at[i] as number, at[i + 1] as number];
    const fromM = depthStartM + a * change;
    const toM = depthStartM + b * change;
    // a level trench at a border itself belongs to the deeper class, a slanting part to where its middle is
    parts.push({ depthClass: depthClassOf((fromM + toM) / 2), lengthM: (b - a) * lengthM, fromM, toM });
  }
  return parts;
}
