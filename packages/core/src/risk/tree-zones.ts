import type { TreeZones } from '../model/result.js';
import { soilFactor } from '../roots/reach.js';
import { treeAssumptions } from '../roots/tree-size.js';
import { protectionRadius, zonesOf } from '../roots/zones.js';
import type { RiskContext } from './context.js';

/**
 * Circles of the trees, for drawing.
 * @param only ids wanted, or null for all.
 */
export function treeZones(context: RiskContext, only: ReadonlySet<string> | null): TreeZones[] {
  const { field, site } = context;
  const ground = soilFactor(site.soil);
  const found: TreeZones[] = [];
  field.trees.forEach((tree, i) => {
    if (only !== null && !only.has(tree.id)) return;
    const size = field.sizeOf(i);
    const zones = zonesOf(size.row, size.stemDiameter, size.crownRadius, ground);
    found.push({
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
    });
  });
  return found;
}
