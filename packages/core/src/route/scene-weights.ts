import type { RouteScene } from './scene.js';
import { handDigOf, noDigOf } from './scene-trees.js';

/** Trunk diameters at which harm to a tree has faded (BS 5837:2012, 4.6.1). */
const FADES_AT = 12;

/**
 * Worth of the harm that a metre of trench does to the trees about it: full beside a no-dig circle, falling with the
 * square of the way to 12 diameters (judgement: few roots are left there, and thin ones).
 */
export function harmPerM({ trees, costs, trenchWidthM }: RouteScene, x: number, y: number): number {
  let sum = 0;
  for (const tree of trees) {
    const sideM = Math.hypot(x - tree.x, y - tree.y) - trenchWidthM / 2;
    const far = FADES_AT * tree.stemDiameterM;
    if (sideM >= far) continue;
    const near = noDigOf(tree);
    const t = Math.max(0, (sideM - near) / (far - near));
    sum += costs.treeHarmPerM * (1 - t) ** 2;
  }
  return sum;
}

/** True where the trench is dug by hand for the sake of a tree. */
export function nearTrunk({ trees, trenchWidthM }: RouteScene, x: number, y: number): boolean {
  return trees.some((tree) => Math.hypot(x - tree.x, y - tree.y) - trenchWidthM / 2 < handDigOf(tree));
}

/** How much digging, root trouble and harm to trees count against each other. */
export interface Weights {
  readonly dig: number;
  readonly roots: number;
  readonly harm: number;
}
