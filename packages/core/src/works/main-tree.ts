import { xOf, yOf } from '../geometry/plane.js';
import { nearestOn } from '../geometry/polyline.js';
import type { TreeZones } from '../model/result.js';
import { prepareLine } from '../risk/context.js';
import { addLoad, Load } from '../risk/load.js';
import type { SeenContext } from '../risk/seen-context.js';
import { zonesOfTree } from '../risk/tree-zones.js';
import type { Stretch } from './stretch.js';

/** The tree that brings most of the trouble of a stretch. */
export interface MainTree {
  readonly zones: TreeZones;
  /** Share of the expected entries. */
  readonly share: number;
  /** Place in the plane of the line, and its nearest point on the stretch. */
  readonly x: number;
  readonly y: number;
  readonly atM: number;
  readonly distanceM: number;
}

/** @returns null where no tree reaches the stretch. */
export function mainTreeOf({ context }: SeenContext, { line, fromM, toM }: Stretch): MainTree | null {
  const prepared = prepareLine(context, line);
  const { first } = prepared.inputs.openings;
  const load = new Load(context.field.moments, prepared.near.count);
  line.segments.forEach((segment, i) => {
    if (Math.min(segment.toM, toM) - Math.max(segment.fromM, fromM) > 0) {
      addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
    }
  });
  if (!(load.total > 0)) return null;
  let best = 0;
  for (let i = 1; i < prepared.near.count; i++) {
    if ((load.byTree[i] as number) > (load.byTree[best] as number)) best = i;
  }
  const zones = zonesOfTree(context, prepared.near.numbers()[best] as number);
  const [x, y] = [xOf(line.plane, zones.lon), yOf(line.plane, zones.lat)];
  const { station, distance } = nearestOn(line.polyline, x, y, fromM, toM);
  return {
    zones,
    share: (load.byTree[best] as number) / load.total,
    x,
    y,
    atM: station,
    distanceM: distance,
  };
}
