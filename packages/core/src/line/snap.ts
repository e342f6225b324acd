import {
  type BoxIndex,
  type IndexRoom,
  indexFrom,
  type PackedIndex,
  packPaths,
} from '../geometry/box-index.js';
import { type Plane, planeFor, xOf, yOf } from '../geometry/plane.js';
import { lengthOf, nearestOn, type Polyline, polylineOf } from '../geometry/polyline.js';
import type { Issue } from '../model/issue.js';
import type { Drain, Fitting, LonLat } from '../model/site.js';

/** A fitting belongs to a line that passes within this, metres. */
export const SNAP_M = 1;
/** A point this close to a line's end is at the end, metres (judgement). */
export const AT_END_M = 0.3;

/** A line as drawn, in its own plane. */
export interface LineGeometry {
  readonly plane: Plane;
  readonly drawn: Polyline;
  readonly lengthM: number;
}

/** Lines with an index to find those near a place. */
export interface LineNet {
  readonly drains: readonly Drain[];
  readonly index: BoxIndex;
}

/** Boxes of all lines with a metre around them. */
export const packNet = (paths: readonly (readonly LonLat[])[], room?: IndexRoom): PackedIndex =>
  packPaths(paths, SNAP_M, room);

/** @param packed The index over the lines, where it was made before. */
export function netOf(drains: readonly Drain[], packed?: PackedIndex): LineNet {
  return { drains, index: indexFrom(packed === undefined ? packNet(drains.map((d) => d.path)) : packed) };
}

/** Worked out when asked for: most lines of a town are never snapped to. */
export function geometryOf(net: LineNet, line: number): LineGeometry {
  const { path } = net.drains[line] as Drain;
  const plane = planeFor(path);
  const drawn = polylineOf(path, plane, false);
  return { plane, drawn, lengthM: lengthOf(drawn) };
}

/** A line near a place. */
export interface Near {
  readonly line: number;
  readonly stationM: number;
  readonly distanceM: number;
  /** `start` or `end` as drawn where the place is at that end. */
  readonly atEnd: 'start' | 'end' | null;
}

/** Where on a line, as drawn, a place is nearest, however far. */
export function nearOf({ plane, drawn, lengthM }: LineGeometry, line: number, [lon, lat]: LonLat): Near {
  const { station, distance } = nearestOn(drawn, xOf(plane, lon), yOf(plane, lat));
  const atEnd = station <= AT_END_M ? 'start' : station >= lengthM - AT_END_M ? 'end' : null;
  return { line, stationM: station, distanceM: distance, atEnd };
}

/** No line is nearer by less than a millimetre; then the id decides, not the order of the file. */
const millimetres = (near: Near): number => Math.round(1000 * near.distanceM);
const idOf = (net: LineNet, near: Near): string => net.drains[near.line]?.id ?? '';

/** Lines within a metre of a place, nearest first. */
export function linesNear(net: LineNet, at: LonLat): Near[] {
  return net.index
    .search(at[0], at[1], at[0], at[1])
    .map((line) => nearOf(geometryOf(net, line), line, at))
    .filter((near) => near.distanceM <= SNAP_M)
    .sort((a, b) => millimetres(a) - millimetres(b) || (idOf(net, a) < idOf(net, b) ? -1 : 1));
}

/** A fitting on a line, at a station as drawn. */
export interface SnappedFitting {
  readonly fitting: Fitting;
  readonly stationM: number;
  readonly atEnd: 'start' | 'end' | null;
  /** True on the one line that carries a tee's, bend's or other fitting's joints. */
  readonly owns: boolean;
  /** Pipes of this line that meet at the fitting: 2 where it runs through, 1 where it ends. */
  readonly pipes: 1 | 2;
}

/** Fittings at which all lines that come up to them meet. */
export const PLACES_SHARED_BY_ALL: readonly Fitting['type'][] = ['basin', 'cleanout'];

/** Which of the lines near a fitting is its own: the named one, else one that runs through, else the nearest. */
function ownerOf(near: readonly Near[], named: number | undefined): Near | undefined {
  if (named !== undefined) return near.find((n) => n.line === named);
  return near.find((n) => n.atEnd === null && n.distanceM <= AT_END_M) ?? near[0];
}

/** Puts every fitting on its line or lines; those that belong to none are reported. */
export function snapFittings(
  net: LineNet,
  fittings: readonly Fitting[],
): { byLine: ReadonlyMap<number, SnappedFitting[]>; issues: Issue[] } {
  const byLine = new Map<number, SnappedFitting[]>();
  const issues: Issue[] = [];
  if (fittings.length === 0) return { byLine, issues };
  const numberOf = new Map(net.drains.map((d, i) => [d.id, i]));
  for (const fitting of fittings) {
    let near = linesNear(net, fitting.position);
    const named = fitting.drain === null ? undefined : numberOf.get(fitting.drain);
    if (named !== undefined && !near.some((n) => n.line === named)) {
      near = [nearOf(geometryOf(net, named), named, fitting.position)];
    }
    const owner = ownerOf(near, named);
    if (!owner || owner.distanceM > SNAP_M) {
      issues.push({
        code: 'fitting-off-line',
        severity: 'warning',
        distanceM: owner?.distanceM ?? null,
        place: { ...fitting.origin, feature: fitting.id, path: 'geometry' },
      });
      continue;
    }
    for (const n of near) {
      const shared = PLACES_SHARED_BY_ALL.includes(fitting.type);
      if (n !== owner && !(n.distanceM <= AT_END_M && (shared || n.atEnd !== null))) continue;
      const list = byLine.get(n.line) ?? [];
      list.push({
        fitting,
        stationM: n.stationM,
        atEnd: n.atEnd,
        owns: n === owner,
        pipes: n.atEnd === null ? 2 : 1,
      });
      byLine.set(n.line, list);
    }
  }
  return { byLine, issues };
}

/** True where an end of a line runs into the middle of another one, within the end tolerance. */
export function endJoinsAnother(net: LineNet, line: number, end: 'start' | 'end'): boolean {
  const path = (net.drains[line] as Drain).path;
  const at = path[end === 'start' ? 0 : path.length - 1] as LonLat;
  return linesNear(net, at).some((n) => n.line !== line && n.atEnd === null && n.distanceM <= AT_END_M);
}
