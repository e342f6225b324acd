import { routeNumbers } from '../tables/route-numbers.js';
import { type CostField, costFieldOf, type KeepoutDisc, type PricedArea } from './cost-field.js';
import { gridOver, overNodes, type RouteGrid, valueAt } from './grid.js';
import { type RootField, rootFieldOf } from './root-field.js';
import type { RouteScene } from './scene.js';
import { utilityStrips } from './scene-obstacles.js';
import { handDigOf, noDigOf } from './scene-trees.js';
import { harmPerM, type Weights } from './scene-weights.js';

/** About so many cells along the longer side of a lot. */
const CELLS = 120;
const LEAST_CELL_M = 0.25;
/** No lattice has more nodes: the cells of a very large site grow. */
const MOST_NODES = 400_000;
/** Without a lot line the search goes this far beyond the ends, metres and as a share of their distance. */
const BEYOND_M = 10;
const BEYOND_SHARE = 0.35;

/** Circles about the stems in which the middle of a trench may not run. */
export function noDigDiscs({ trees, trenchWidthM }: RouteScene): KeepoutDisc[] {
  return trees.map((tree) => ({
    id: tree.id,
    x: tree.x,
    y: tree.y,
    radiusM: noDigOf(tree) + trenchWidthM / 2,
  }));
}

/** Distance over radius at which a straight cuts a quarter off a circle: acos x - x sqrt(1 - x^2) = pi / 4. */
const QUARTER_AT = 0.403973;

/**
 * The same circles, and about trees that no end stands near the wider ones outside which a straight trench takes no more
 * than a quarter of the protection circle.
 */
export function sparingDiscs(scene: RouteScene): KeepoutDisc[] {
  const ends = [{ x: scene.from[0], y: scene.from[1] }, ...scene.to];
  return noDigDiscs(scene).map((disc, i) => {
    const tree = scene.trees[i] as RouteScene['trees'][number];
    const wider = QUARTER_AT * tree.protectionM + scene.trenchWidthM / 2;
    const free = ends.every(({ x, y }) => Math.hypot(x - tree.x, y - tree.y) > wider);
    return free && wider > disc.radiusM ? { ...disc, radiusM: wider } : disc;
  });
}

/** The lattice of a scene: over the lot where there is one, else about the ends. */
export function gridOf({ obstacles, from, to, request }: RouteScene): RouteGrid {
  const xs = [from[0], ...to.map(({ x }) => x)];
  const ys = [from[1], ...to.map(({ y }) => y)];
  const lots = obstacles.keepouts.filter(({ of }) => of === 'outside').map(({ shape }) => shape);
  const spanM = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  const beyond = lots.length > 0 ? 1 : Math.max(BEYOND_M, BEYOND_SHARE * spanM);
  const west = Math.min(...xs.map((x) => x - beyond), ...lots.map((lot) => lot.west));
  const east = Math.max(...xs.map((x) => x + beyond), ...lots.map((lot) => lot.east));
  const south = Math.min(...ys.map((y) => y - beyond), ...lots.map((lot) => lot.south));
  const north = Math.max(...ys.map((y) => y + beyond), ...lots.map((lot) => lot.north));
  const sideM = Math.max(east - west, north - south);
  const cellM = request.cellM ?? Math.max(LEAST_CELL_M, sideM / CELLS);
  const least = Math.sqrt(((east - west) * (north - south)) / MOST_NODES);
  return gridOver(west, south, east, north, Math.max(cellM, least));
}

/** A metre of paving: opened and made good, or bored under with its share of the pits. */
function pavedPerM({ costs, request }: RouteScene, widthM: number): number {
  const opened = costs.surfacePerM.paving;
  if (request.boring === false) return opened;
  return Math.min(opened, costs.borePerM + costs.boreEach / Math.max(0.5, widthM));
}

function areasOf(scene: RouteScene, dig: number): PricedArea[] {
  const { obstacles, costs } = scene;
  return [
    ...obstacles.surfaces.map(
      ({ id, surface, shape, widthM }): PricedArea => ({
        id,
        shape,
        layer: 'surface',
        morePerM: dig * (surface === 'paving' ? pavedPerM(scene, widthM) : costs.surfacePerM.bed),
      }),
    ),
    ...obstacles.utilities.flatMap((utility) =>
      utilityStrips(utility, dig * routeNumbers.utilityCaution.value * costs.utilityCrossingEach),
    ),
  ];
}

/** Fields of one scene for different weights, which share what does not hang on them. */
export class SceneFields {
  readonly grid: RouteGrid;
  readonly roots: RootField;
  private blocked: Uint8Array | undefined;
  /** Currency a metre at each node, unweighted: root trouble, harm to trees. */
  private readonly trouble: Float64Array;
  private readonly harm: Float64Array;

  constructor(
    readonly scene: RouteScene,
    private readonly discs: readonly KeepoutDisc[] = noDigDiscs(scene),
  ) {
    const { site, plane, nowYear, horizonYears, costs, limits, request } = scene;
    this.grid = gridOf(scene);
    this.roots = rootFieldOf(site, plane, this.grid, {
      pipe: request.pipe,
      nowYear,
      horizonYears,
      discountRate: costs.discountRate,
      coverM: limits.minCoverM,
    });
    const { grid, roots } = this;
    this.trouble = overNodes(grid, (x, y) => costs.repairEach * valueAt(roots.grid, roots.perM, x, y));
    this.harm = overNodes(grid, (x, y) => harmPerM(scene, x, y));
  }

  weighted(weights: Weights): CostField {
    const { scene, grid, trouble, harm } = this;
    const smooth = trouble.map((metre, i) => weights.roots * metre + weights.harm * (harm[i] as number));
    const field = costFieldOf(
      {
        grid,
        basePerM: weights.dig * scene.costs.laidPerM,
        areas: areasOf(scene, weights.dig),
        keepouts: scene.obstacles.keepouts,
        discs: this.discs,
        pricedDiscs: scene.trees.map((tree) => ({
          id: tree.id,
          x: tree.x,
          y: tree.y,
          radiusM: handDigOf(tree) + scene.trenchWidthM / 2,
          morePerM: weights.dig * scene.costs.handDigPerM,
        })),
        smooth,
      },
      this.blocked,
    );
    this.blocked = field.blocked;
    return field;
  }
}
