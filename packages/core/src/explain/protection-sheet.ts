import type { Interval } from '../geometry/intervals.js';
import { stretchesInside } from '../geometry/overlap.js';
import { lengthOf, nearestOn, type Polyline, polylineOf } from '../geometry/polyline.js';
import type { ProtectionSheet, SheetStretch, SheetTree, SheetWay } from '../model/protection-sheet.js';
import type { RouteAlternative, RouteRequest, RouteStretch } from '../model/route.js';
import type { SharedRouteRequest, SharedWay } from '../model/shared-route.js';
import type { LonLat, Site } from '../model/site.js';
import type { TreeHarm } from '../model/tree-harm.js';
import { cautionsFor } from '../risk/cautions.js';
import { boringPast } from '../roots/boring.js';
import type { HarmTree } from '../roots/harm.js';
import { noDigRadius, protectionRadiusBs5837 } from '../roots/protection.js';
import { treeSize } from '../roots/tree-size.js';
import { type RouteScene, sceneOf } from '../route/scene.js';
import { sceneOfAll } from '../route/shared-ends.js';
import { sceneForSize } from '../route/shared-lines.js';
import { harmLimits } from '../tables/harm-limits.js';
import { metres } from '../units/quantity.js';

type Rings = SheetTree['rings'];

const WAYS: readonly SheetWay[] = ['do-not-dig', 'arborist', 'bore', 'hand-or-air'];

function ringsOf({ stemDiameterM, structuralM, protectionM }: HarmTree): Rings {
  const stem = metres(stemDiameterM);
  return {
    noDigM: noDigRadius(stem),
    arboristM: Math.max(harmLimits.arboristDiameters.value * stemDiameterM, structuralM),
    careM: protectionRadiusBs5837(stem),
    fenceM: protectionM,
  };
}

/** Stretches of the trench's middle whose near side lies within a ring about one tree. */
function within(line: Polyline, { x, y }: HarmTree, ringM: number, halfWidthM: number): Interval[] {
  return stretchesInside(line, [{ x, y, radiusM: ringM + halfWidthM }]);
}

interface Zone {
  readonly tree: string;
  readonly way: SheetWay;
  readonly parts: readonly Interval[];
}

function zonesOf(line: Polyline, trees: readonly HarmTree[], halfWidthM: number): Zone[] {
  return trees.flatMap((tree): Zone[] => {
    const { noDigM, arboristM, careM } = ringsOf(tree);
    const zone = (way: SheetWay, ringM: number): Zone => ({
      tree: tree.id,
      way,
      parts: within(line, tree, ringM, halfWidthM),
    });
    return [
      zone('do-not-dig', noDigM),
      zone('arborist', arboristM),
      zone('hand-or-air', Math.max(arboristM, careM)),
    ];
  });
}

const holds = (parts: readonly Interval[], s: number): boolean =>
  parts.some(([from, to]) => from <= s && s <= to);

/** How one place is opened, and for which trees; null where like any other. */
function wayAt(
  zones: readonly Zone[],
  bores: readonly Interval[],
  s: number,
): Omit<SheetStretch, 'fromM' | 'toM'> | null {
  const here = zones.filter(({ parts }) => holds(parts, s));
  if (here.length === 0) return null;
  const trees = [...new Set(here.map(({ tree }) => tree))];
  if (holds(bores, s)) return { way: 'bore', trees };
  const way = WAYS[Math.min(...here.map((zone) => WAYS.indexOf(zone.way)))] as SheetWay;
  return { way, trees };
}

/** Stretches of a route that trees call for, by exact stations. */
export function treeStretches(
  line: Polyline,
  trees: readonly HarmTree[],
  bores: readonly Interval[],
  trenchWidthM: number,
): SheetStretch[] {
  const zones = zonesOf(line, trees, trenchWidthM / 2);
  const stops = [...zones.flatMap(({ parts }) => parts.flat()), ...bores.flat(), 0, lengthOf(line)];
  const sorted = [...new Set(stops)].sort((a, b) => a - b);
  const found: SheetStretch[] = [];
  sorted.slice(1).forEach((toM, i) => {
    const fromM = sorted[i] as number;
    const way = wayAt(zones, bores, (fromM + toM) / 2);
    if (way === null) return;
    const last = found.at(-1);
    const goesOn = last?.toM === fromM && last.way === way.way && last.trees.join() === way.trees.join();
    if (goesOn) found[found.length - 1] = { ...last, toM };
    else found.push({ fromM, toM, ...way });
  });
  return found;
}

/** One line to be dug. */
interface SheetLine {
  /** Not given where it is the only one. */
  readonly id?: string;
  readonly path: Polyline;
  readonly bores: readonly Interval[];
  readonly trenchWidthM: number;
}

const named = ({ id }: SheetLine): { readonly line?: string } => (id === undefined ? {} : { line: id });

function sheetTree(scene: RouteScene, lines: readonly SheetLine[], harm: TreeHarm): SheetTree | null {
  const tree = scene.trees.find(({ id }) => id === harm.id);
  const given = scene.site.trees.find(({ id }) => id === harm.id);
  if (tree === undefined || given === undefined || harm.rule === 'clear') return null;
  const near = lines
    .map((line) => ({ line, place: nearestOn(line.path, tree.x, tree.y) }))
    .reduce((a, b) => (b.place.distance < a.place.distance ? b : a));
  return {
    id: harm.id,
    name: treeSize(given, scene.nowYear).row.common[0],
    stemDiameterM: tree.stemDiameterM,
    stemAssumed: given.stemDiameterM === null,
    ...named(near.line),
    atM: near.place.station,
    nearestM: harm.nearestM,
    rule: harm.rule,
    reasons: harm.reasons,
    severedShare: harm.severedShare,
    encroachment: harm.encroachment,
    rings: ringsOf(tree),
    boring: boringPast(tree.stemDiameterM, tree.driplineM),
  };
}

function sheetOf(
  scene: RouteScene,
  lines: readonly SheetLine[],
  harm: readonly TreeHarm[],
  trenchDepthM: number,
): ProtectionSheet {
  const trees = harm
    .flatMap((each) => sheetTree(scene, lines, each) ?? [])
    .sort((a, b) => a.nearestM - b.nearestM);
  const about = scene.trees.filter(({ id }) => trees.some((tree) => tree.id === id));
  const near = trees.map(({ nearestM, stemDiameterM }) => Math.max(0, nearestM) / stemDiameterM);
  return {
    lengthM: lines.reduce((sum, { path }) => sum + lengthOf(path), 0),
    trees,
    stretches: lines.flatMap((line) =>
      treeStretches(line.path, about, line.bores, line.trenchWidthM).map((stretch) => ({
        ...named(line),
        ...stretch,
      })),
    ),
    arboristFor: trees.filter(({ rule }) => rule === 'arborist' || rule === 'no-dig').map(({ id }) => id),
    askBeforeCuttingM: harmLimits.askBeforeCuttingM.value,
    cautions: cautionsFor({
      digging: true,
      trenchDepthM,
      ...(near.length === 0 ? {} : { rootCutting: true, trunkDiametersAway: Math.min(...near) }),
    }),
  };
}

const boresOf = (stretches: readonly RouteStretch[]): Interval[] =>
  stretches.filter(({ way }) => way === 'bored').map(({ fromM, toM }): Interval => [fromM, toM]);

/**
 * The sheet for a crew that digs one route: which trees, how near, which stretches by hand, with an arborist or bored.
 * @param site the one that the route was planned on.
 * @param request the one that the route was planned with.
 * @param route one alternative of the plan.
 * @throws RangeError for a request that makes no sense.
 */
export function protectionSheet(site: Site, request: RouteRequest, route: RouteAlternative): ProtectionSheet {
  const scene = sceneOf(site, request);
  const path = route.geometry.coordinates.map(([lon, lat]): LonLat => [lon as number, lat as number]);
  const line = {
    path: polylineOf(path, scene.plane, false),
    bores: boresOf(route.stretches),
    trenchWidthM: scene.trenchWidthM,
  };
  return sheetOf(scene, [line], route.trees, route.depthM?.max ?? scene.limits.maxDepthM);
}

/**
 * The same for lines from several sources that are dug together: one list of trees, stretches line by line.
 * @param site the one that was planned on.
 * @param request the one that the lines were planned with.
 * @param way the lines to be dug.
 * @returns the sheet; stations in metres from the upper end of each line.
 * @throws RangeError for a request that makes no sense.
 */
export function sharedProtectionSheet(
  site: Site,
  request: SharedRouteRequest,
  way: SharedWay,
): ProtectionSheet {
  const { lines, trees } = way;
  const scene = sceneOfAll(site, request);
  const dug = lines.map(({ id, geometry, stretches, sizeM }) => ({
    id,
    path: polylineOf(geometry.coordinates, scene.plane, false),
    bores: boresOf(stretches),
    trenchWidthM: sceneForSize(scene, sizeM).trenchWidthM,
  }));
  const deepest = lines.map(({ pipe }) => pipe?.depthM.max ?? scene.limits.maxDepthM);
  return sheetOf(scene, dug, trees, Math.max(...deepest));
}
