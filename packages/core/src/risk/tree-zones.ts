import { boxOf } from '../geometry/box-index.js';
import type { SegmentResult, TreeZones } from '../model/result.js';
import type { LonLat, Tree } from '../model/site.js';
import { soilFactor } from '../roots/reach.js';
import { treeAssumptions } from '../roots/tree-size.js';
import { protectionRadius, zonesOf } from '../roots/zones.js';
import type { RiskContext } from './context.js';

/** Up to this many trees all are described; beyond, those that bear on a reported segment. */
const MOST_TREES = 5000;

/** Circles of one tree, by its number in the field. */
export function zonesOfTree({ field, site }: RiskContext, i: number): TreeZones {
  const tree = field.trees[i] as Tree;
  const size = field.sizeOf(i);
  const zones = zonesOf(size.row, size.stemDiameter, size.crownRadius, soilFactor(site.soil));
  return {
    id: tree.id,
    name: size.row.common[0],
    lon: tree.position[0],
    lat: tree.position[1],
    stemDiameterM: size.stemDiameter,
    vigourClass: size.row.vigour.value,
    driplineM: zones.dripline,
    trunkMultipleM: zones.trunkMultiple,
    structuralM: zones.structural,
    reachM: zones.reach,
    protectionM: protectionRadius(site.protection, size.row, size.stemDiameter, size.crownRadius),
    assumed: treeAssumptions(tree, size),
  };
}

/** Numbers of the trees that a ranking describes: all, or in a town those that bear on a reported segment. */
export function treesToDescribe({ field }: RiskContext, segments: readonly SegmentResult[]): number[] {
  if (field.trees.length <= MOST_TREES) return Array.from(field.trees, (_, i) => i);
  const found = new Set<number>();
  for (const { trees, geometry } of segments) {
    const bearing = new Set(trees.map(({ id }) => id));
    const box = boxOf(geometry.coordinates as unknown as readonly LonLat[]);
    for (const i of field.index.search(...box)) if (bearing.has((field.trees[i] as Tree).id)) found.add(i);
  }
  return [...found].sort((a, b) => a - b);
}
