import { boxOf } from '../geometry/box-index.js';
import { xOf, yOf } from '../geometry/plane.js';
import type { LineModel } from '../line/line-model.js';
import { DECAY } from '../roots/density.js';
import type { TreeField } from './tree-field.js';

/** What trees may be near to: points and the plane that they are laid out in. */
interface NearWhat {
  readonly drain: Pick<LineModel['drain'], 'path'>;
  readonly plane: LineModel['plane'];
}

/** Trees that may reach a line, in the line's plane, with their columns side by side for the inner loop. */
export class NearTrees {
  count = 0;
  /** Numbers into the field. */
  number = new Int32Array(0);
  x = new Float64Array(0);
  y = new Float64Array(0);
  search2 = new Float64Array(0);
  structural2 = new Float64Array(0);
  spreadMPerYear = new Float64Array(0);
  vigour = new Uint8Array(0);
  /** `[near tree * moments + moment]`: 3 / reach, and the field's weight. */
  decay = new Float64Array(0);
  weight = new Float64Array(0);

  /** Numbers into the field of the trees it holds. */
  numbers(): Int32Array {
    return this.number.subarray(0, this.count);
  }

  private makeRoom(count: number, moments: number): void {
    if (this.number.length >= count && this.decay.length >= count * moments) return;
    const room = 2 * count;
    this.number = new Int32Array(room);
    this.x = new Float64Array(room);
    this.y = new Float64Array(room);
    this.search2 = new Float64Array(room);
    this.structural2 = new Float64Array(room);
    this.spreadMPerYear = new Float64Array(room);
    this.vigour = new Uint8Array(room);
    this.decay = new Float64Array(room * moments);
    this.weight = new Float64Array(room * moments);
  }

  /** Takes the trees near a line, in place of those before. */
  fill(field: TreeField, line: NearWhat): void {
    const [west, south, east, north] = boxOf(line.drain.path);
    const found = field.index.search(west, south, east, north);
    const { moments } = field;
    this.makeRoom(found.length, moments);
    this.count = found.length;
    for (let i = 0; i < found.length; i++) {
      const t = found[i] as number;
      this.number[i] = t;
      this.x[i] = xOf(line.plane, field.lon[t] as number);
      this.y[i] = yOf(line.plane, field.lat[t] as number);
      const p = field.pattern[t] as number;
      this.search2[i] = (field.searchM[p] as number) ** 2;
      this.structural2[i] = (field.structuralM[p] as number) ** 2;
      this.spreadMPerYear[i] = field.spreadMPerYear[p] as number;
      this.vigour[i] = field.vigour[p] as number;
      for (let k = 0; k < moments; k++) {
        this.decay[i * moments + k] = DECAY / (field.reachM[p * moments + k] as number);
        this.weight[i * moments + k] = field.weight[p * moments + k] as number;
      }
    }
  }
}

export function treesNear(field: TreeField, line: LineModel): NearTrees {
  const near = new NearTrees();
  near.fill(field, line);
  return near;
}
