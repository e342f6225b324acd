import { textOf } from '@rootreach/core';
import { readLength } from '../../enter/quantity.js';
import { length } from '../../measure.js';
import type { SketchFeature } from '../../sketch/document.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

/** One entry of the camera in a line of words: `Root mass, counter 31 ft, 2024`. */
export function findingName({ properties }: SketchFeature): string {
  const w = words.value.forms;
  const seen = properties['seen'];
  const atM = readLength(properties, 'at');
  const what =
    typeof seen === 'string' && Object.hasOwn(w.finding.seens, seen)
      ? w.finding.seens[seen as keyof typeof w.finding.seens]
      : w.kind.finding;
  const where = atM === null ? null : w.finding.counter(length(atM, state.units.value));
  const date = properties['date'] === undefined ? null : textOf(properties['date']);
  return [what, where, date].filter((part) => part !== null).join(', ');
}
