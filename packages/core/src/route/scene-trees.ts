import type { Point } from '../geometry/disc-less-strip.js';
import type { Plane } from '../geometry/plane.js';
import type { Site } from '../model/site.js';
import type { HarmTree } from '../roots/harm.js';
import { noDigRadius, protectionRadiusBs5837 } from '../roots/protection.js';
import { structuralRadius } from '../roots/structural.js';
import { treeSize } from '../roots/tree-size.js';
import { protectionRadius } from '../roots/zones.js';
import { metres } from '../units/quantity.js';
import { pointOf } from './scene-ends.js';

/** Standing trees as harm sees them, in the plane of a route. */
export function harmTreesOf(site: Site, plane: Plane, nowYear: number): HarmTree[] {
  return site.trees
    .filter((tree) => tree.felledYear === null || tree.felledYear > nowYear)
    .map((tree) => {
      const { row, stemDiameter, crownRadius } = treeSize(tree, nowYear);
      const [x, y]: Point = pointOf(plane, tree.position);
      return {
        id: tree.id,
        x,
        y,
        stemDiameterM: stemDiameter,
        structuralM: structuralRadius(stemDiameter),
        protectionM: protectionRadius(site.protection, row, stemDiameter, crownRadius),
        driplineM: crownRadius,
      };
    });
}

/** No side of a trench comes nearer to a stem. */
export const noDigOf = (tree: HarmTree): number => noDigRadius(metres(tree.stemDiameterM));

/** From the stem to where a machine may dig: inside 12 diameters (BS 5837:2012) and the structural roots by hand or air. */
export const handDigOf = (tree: HarmTree): number =>
  Math.max(protectionRadiusBs5837(metres(tree.stemDiameterM)), tree.structuralM);
