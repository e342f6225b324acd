import { chordOf } from '../geometry/chord.js';
import type { Point } from '../geometry/disc-less-strip.js';
import type { RouteCrossing, RouteStretch, RouteSurface, RouteWay } from '../model/route.js';
import { routeNumbers } from '../tables/route-numbers.js';
import type { RouteScene } from './scene.js';
import type { SurfaceArea } from './scene-obstacles.js';
import { handDigOf } from './scene-trees.js';
import { nearTrunk } from './scene-weights.js';
import { addCrossings, distanceToEdges, holds } from './shapes.js';

/** Stretches shorter than this are one with their neighbour, metres. */
const LEAST_M = 0.05;

/** Fractions of a straight at which what is dug changes. */
function changes(scene: RouteScene, a: Point, b: Point): number[] {
  const stops = [0, 1];
  for (const { shape } of scene.obstacles.surfaces) addCrossings(shape, ...a, ...b, stops);
  for (const tree of scene.trees) {
    const chord = chordOf(...a, ...b, tree.x, tree.y, handDigOf(tree) + scene.trenchWidthM / 2);
    if (chord !== null) stops.push(...chord);
  }
  const handM = routeNumbers.utilityHandDigM.value;
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  for (const { shape } of scene.obstacles.utilities) {
    const hits: number[] = [];
    addCrossings(shape, ...a, ...b, hits);
    for (const hit of hits) stops.push(Math.max(0, hit - handM / length), Math.min(1, hit + handM / length));
  }
  return stops.sort((p, q) => p - q);
}

const paved = (surfaces: readonly SurfaceArea[], x: number, y: number): RouteSurface => {
  const found = surfaces.filter(({ shape }) => holds(shape, x, y)).map(({ surface }) => surface);
  return found.includes('paving') ? 'paving' : found.includes('bed') ? 'bed' : 'lawn';
};

function wayAt(scene: RouteScene, x: number, y: number): RouteWay {
  const handM = routeNumbers.utilityHandDigM.value;
  const byHand =
    nearTrunk(scene, x, y) ||
    scene.obstacles.utilities.some(({ shape }) => distanceToEdges(shape, x, y) < handM);
  return byHand ? 'hand-dug' : 'trench';
}

function merged(stretches: readonly RouteStretch[]): RouteStretch[] {
  const result: RouteStretch[] = [];
  for (const stretch of stretches) {
    const last = result.at(-1);
    const alike = last?.way === stretch.way && last.surface === stretch.surface;
    if (last !== undefined && (alike || stretch.toM - stretch.fromM < LEAST_M)) {
      result[result.length - 1] = { ...last, toM: stretch.toM };
    } else result.push(stretch);
  }
  return result;
}

/** Paving is bored under where that is cheaper than opening it. */
function bored(scene: RouteScene, stretches: readonly RouteStretch[]): RouteStretch[] {
  const { borePerM, boreEach, surfacePerM } = scene.costs;
  if (scene.request.boring === false) return [...stretches];
  const result: RouteStretch[] = [];
  for (let i = 0; i < stretches.length; ) {
    let k = i;
    while (k < stretches.length && stretches[k]?.surface === 'paving') k++;
    const first = stretches[i] as RouteStretch;
    if (k === i) {
      result.push(first);
      i++;
      continue;
    }
    const last = stretches[k - 1] as RouteStretch;
    const lengthM = last.toM - first.fromM;
    if (boreEach + lengthM * borePerM < lengthM * surfacePerM.paving) {
      result.push({ fromM: first.fromM, toM: last.toM, way: 'bored', surface: 'paving' });
    } else result.push(...stretches.slice(i, k));
    i = k;
  }
  return result;
}

/** Stretches of a path that are dug alike, from its upper end. */
export function stretchesOf(scene: RouteScene, points: readonly Point[]): RouteStretch[] {
  const stretches: RouteStretch[] = [];
  let s = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [a, b] = [points[i], points[i + 1]] as [Point, Point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length === 0) continue;
    const stops = changes(scene, a, b);
    for (let k = 0; k + 1 < stops.length; k++) {
      const [from, to] = [stops[k] as number, stops[k + 1] as number];
      if (to <= from) continue;
      const at = (from + to) / 2;
      const [x, y] = [a[0] + at * (b[0] - a[0]), a[1] + at * (b[1] - a[1])];
      stretches.push({
        fromM: s + from * length,
        toM: s + to * length,
        way: wayAt(scene, x, y),
        surface: paved(scene.obstacles.surfaces, x, y),
      });
    }
    s += length;
  }
  return bored(scene, merged(stretches));
}

/** Utilities that a path crosses, from its upper end. */
export function crossingsOf(scene: RouteScene, points: readonly Point[]): RouteCrossing[] {
  const crossings: RouteCrossing[] = [];
  for (const { id, name, shape } of scene.obstacles.utilities) {
    for (const { x, y } of shape.paths) {
      for (let e = 0; e + 1 < x.length; e++) {
        const edge = { x: x.slice(e, e + 2), y: y.slice(e, e + 2) };
        let s = 0;
        for (let i = 0; i + 1 < points.length; i++) {
          const [a, b] = [points[i], points[i + 1]] as [Point, Point];
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          const hits: number[] = [];
          addCrossings({ ...shape, paths: [edge] }, ...a, ...b, hits);
          const [ux, uy] = [
            (edge.x[1] as number) - (edge.x[0] as number),
            (edge.y[1] as number) - (edge.y[0] as number),
          ];
          const cross = Math.abs(ux * (b[1] - a[1]) - uy * (b[0] - a[0])) / (Math.hypot(ux, uy) * length);
          for (const t of hits) {
            const angleDegrees = (Math.asin(Math.min(1, cross)) * 180) / Math.PI;
            crossings.push({ id, name, atM: s + t * length, angleDegrees });
          }
          s += length;
        }
      }
    }
  }
  return crossings.sort((p, q) => p.atM - q.atM);
}
