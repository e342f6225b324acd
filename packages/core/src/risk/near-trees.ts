import { boxOf } from '../geometry/box-index.js';
import { xOf, yOf } from '../geometry/plane.js';
import type { LineModel } from '../line/line-model.js';
import type { Tree } from '../model/site.js';
import type { TreeField } from './tree-field.js';

/** Trees that may reach a line, in the line's plane. */
export interface NearTrees {
  /** Numbers into the field. */
  readonly number: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export function treesNear(field: TreeField, line: LineModel): NearTrees {
  const [west, south, east, north] = boxOf(line.drain.path);
  const number = Int32Array.from(field.index.search(west, south, east, north));
  const x = new Float64Array(number.length);
  const y = new Float64Array(number.length);
  for (let i = 0; i < number.length; i++) {
    const { position } = field.trees[number[i] as number] as Tree;
    x[i] = xOf(line.plane, position[0]);
    y[i] = yOf(line.plane, position[1]);
  }
  return { number, x, y };
}
