import { chordOf } from '../geometry/chord.js';
import type { Point } from '../geometry/disc-less-strip.js';
import { type Interval, unionOf } from '../geometry/intervals.js';
import { stretchesInside } from '../geometry/overlap.js';
import type { Polyline } from '../geometry/polyline.js';
import type { PipeChoice, RoutePipe, SolidRule } from '../model/route.js';
import { asNumber } from '../prices/price-quantities.js';
import { clearanceOf } from '../roots/clearance.js';
import { solidStretches } from '../roots/clearance-stretches.js';
import { soilFactor } from '../roots/reach.js';
import { treeSize } from '../roots/tree-size.js';
import { reachOf } from '../roots/zones.js';
import { drainClearance } from '../tables/drain-clearance.js';
import { jointRow } from '../tables/joints.js';
import { pipeRow } from '../tables/pipes.js';
import { bendRuleOf, bendsOf } from './bends.js';
import { pathLength } from './path-stations.js';
import { routeChance } from './route-chance.js';
import { linesOfRoute } from './route-line.js';
import { digsOfRoute, priceOfDigs } from './route-price.js';
import { depthAlong, fallOf } from './route-profile.js';
import type { RouteScene } from './scene.js';
import { stretchesOf } from './stretches.js';

/** Solid pipe begins this far before the roots, metres (judgement: a root that goes on along the trench). */
const BEFORE_M = 1;
/** Trunk diameters that count as the root zone here. */
const ZONE_DIAMETERS = 12;
/** At half the reach a fifth of the root curve is left: about where the dripline stands (judgement). */
const ZONE_REACHES = 0.5;

/** Radii inside which pipe past a tree is better solid: 12 diameters, dripline or half the reach, the widest. */
function zonesOf({ site, trees, nowYear }: RouteScene): number[] {
  return trees.map(({ id, stemDiameterM, driplineM }) => {
    const tree = site.trees.find((other) => other.id === id);
    if (tree === undefined) return driplineM;
    const { row, stemDiameter, crownRadius } = treeSize(tree, nowYear);
    const reach = reachOf(row, stemDiameter, crownRadius, soilFactor(site.soil));
    return Math.max(driplineM, ZONE_DIAMETERS * stemDiameterM, ZONE_REACHES * reach);
  });
}

/** Stretches of a path inside the root zone of any tree. */
export function inRootZone(scene: RouteScene, points: readonly Point[]): Interval[] {
  const found: Interval[] = [];
  zonesOf(scene).forEach((radius, t) => {
    const { x, y } = scene.trees[t] as RouteScene['trees'][number];
    let s = 0;
    for (let i = 0; i + 1 < points.length; i++) {
      const [a, b] = [points[i], points[i + 1]] as [Point, Point];
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const chord = chordOf(...a, ...b, x, y, radius);
      if (chord) found.push([s + chord[0] * length - BEFORE_M, s + chord[1] * length + BEFORE_M]);
      s += length;
    }
  });
  const lengthM = pathLength(points);
  return unionOf(found.map(([from, to]): Interval => [Math.max(0, from), Math.min(lengthM, to)]));
}

/** A path as a line with stations. */
function lineOf(points: readonly Point[]): Polyline {
  const s = new Float64Array(points.length);
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]] as [Point, Point];
    s[i] = (s[i - 1] as number) + Math.hypot(b[0] - a[0], b[1] - a[1]);
  }
  return { x: Float64Array.from(points, ([x]) => x), y: Float64Array.from(points, ([, y]) => y), s };
}

/** Stretches of a path where guidance on farm drains would have no drain with holes. */
export function inClearance({ site, trees, nowYear }: RouteScene, points: readonly Point[]): Interval[] {
  const circles = trees.flatMap(({ id, x, y }) => {
    const tree = site.trees.find((other) => other.id === id);
    return tree === undefined ? [] : [{ x, y, radiusM: clearanceOf(treeSize(tree, nowYear).row) }];
  });
  return stretchesInside(lineOf(points), circles);
}

const totalOf = (parts: readonly Interval[]): number => parts.reduce((sum, [from, to]) => sum + to - from, 0);

/** Metres of a path inside some stretches and outside others. */
const lengthLess = (inside: readonly Interval[], less: readonly Interval[]): number =>
  totalOf(unionOf([...inside, ...less])) - totalOf(unionOf(less));

interface Candidate {
  readonly id: string;
  readonly pipe: RoutePipe;
  readonly solid: readonly Interval[];
  readonly solidBy: SolidRule | null;
  readonly name: string;
}

function nameOf({ material, joint, perforated, wrapped }: RoutePipe): string {
  const row = pipeRow(material);
  const holes = perforated ? `${wrapped ? 'wrapped ' : ''}perforated ` : '';
  return `${holes}${row.name}, ${jointRow(joint ?? row.joint).name}`;
}

function candidatesOf(scene: RouteScene, points: readonly Point[]): Candidate[] {
  const { pipe } = scene.request;
  const { sizeM } = pipe;
  const coil: RoutePipe = { material: 'hdpe-corrugated-heavy', sizeM };
  const drained: RoutePipe = pipe.perforated ? pipe : { ...coil, perforated: true, wrapped: true };
  const of = (id: string, chosen: RoutePipe, name = nameOf(chosen)): Candidate => ({
    id,
    pipe: chosen,
    solid: [],
    solidBy: null,
    name,
  });
  return [
    of('asked', pipe),
    of('coil', { ...coil, joint: 'none' }, `${pipeRow(coil.material).name} in one coil`),
    of('gasketed', { material: 'pvc-sdr35', sizeM, joint: 'gasket' }),
    of('welded', { material: 'pvc-sch40', sizeM, joint: 'solvent' }),
    of('perforated', drained),
    {
      id: 'solid-past-trees',
      pipe: drained,
      solid: inRootZone(scene, points),
      solidBy: { radiusM: null, source: 'our-judgement' },
      name: `${nameOf(drained)}; solid past the trees`,
    },
    {
      id: 'solid-by-guidance',
      pipe: drained,
      solid: solidStretches(lineOf(points), scene.trees),
      solidBy: { radiusM: drainClearance.solidWithinM.value, source: drainClearance.solidWithinM.source },
      name: `${nameOf(drained)}; solid within 50 ft (15 m) of a tree`,
    },
  ];
}

function choiceOf(
  scene: RouteScene,
  points: readonly Point[],
  { id, pipe, solid, solidBy, name }: Candidate,
): PipeChoice {
  const { site, request, horizonYears, costs, plane, nowYear, limits } = scene;
  const lengthM = pathLength(points);
  const fall = fallOf(scene, points);
  const depthAt = depthAlong(scene, fall?.kind === 'laid' ? fall : null);
  const bends = bendsOf(points, bendRuleOf(pipe));
  const coverAt = (s: number): number => Math.max(0, depthAt(s) - limits.pipeHeightM);
  const lines = linesOfRoute({
    plane,
    points,
    lengthM,
    bends,
    coverAt,
    laidYear: nowYear,
    asked: pipe,
    solid,
  });
  const within = (years: number) => routeChance(site, lines, request.asOf, years, costs.discountRate);
  const [ten, twentyFive] = [within(10), within(25)];
  const asked = horizonYears === 25 ? twentyFive : within(horizonYears);
  const priced = priceOfDigs(
    scene,
    digsOfRoute({ stretches: stretchesOf(scene, points), bends, depthAt, pipe, solid, lengthM }),
    pipe,
  );
  const now = asNumber(priced.total);
  const roots = asked.discounted * costs.repairEach;
  return {
    id,
    name,
    material: pipe.material,
    joint: pipe.joint ?? pipeRow(pipe.material).joint,
    joints: asked.joints.length,
    solid,
    solidBy,
    perforatedM: pipe.perforated ? lengthM - totalOf(solid) : 0,
    holesNearTreesM: pipe.perforated ? lengthLess(inClearance(scene, points), solid) : 0,
    chance: { '10': ten.chance, '25': twentyFive.chance },
    cost: { now, roots, presentValue: now + roots },
  };
}

const sameKind = (a: RoutePipe, b: RoutePipe): boolean =>
  a.material === b.material &&
  (a.joint ?? pipeRow(a.material).joint) === (b.joint ?? pipeRow(b.material).joint) &&
  (a.perforated ?? false) === (b.perforated ?? false) &&
  (a.wrapped ?? false) === (b.wrapped ?? false);

/**
 * The same path laid with other pipes: a coil without joints, gasketed, glued, perforated and wrapped, and that with
 * solid pipe inside the root zones (judgement) or within 50 ft of a stem (guidance on farm drains). The pipe that was
 * asked for comes first.
 */
export function pipeChoices(scene: RouteScene, points: readonly Point[]): PipeChoice[] {
  const [asked, ...others] = candidatesOf(scene, points) as [Candidate, ...Candidate[]];
  const lengthM = pathLength(points);
  const worth = others.filter(({ pipe, solid, solidBy }) => {
    if (solidBy === null) return !sameKind(pipe, asked.pipe);
    const solidM = totalOf(solid);
    return solidM > 0 && solidM < lengthM - 1e-6;
  });
  return [asked, ...worth].map((candidate) => choiceOf(scene, points, candidate));
}
