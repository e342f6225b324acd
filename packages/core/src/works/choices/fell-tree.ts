import { asItIs, type Case, extra, impossible, type Plan } from '../plan.js';
import { metresSeen } from '../stretch.js';

/** The tree that brings most goes; its roots die back over some years. */
export function fellTree(c: Case): Plan {
  const tree = c.mainTree;
  if (tree === null) return impossible(c, 'fell-tree', 'no-tree-near');
  if (metresSeen(c.stretch, ['full', 'crushed']) > 0) return impossible(c, 'fell-tree', 'pipe-stays-blocked');
  const { id, stemDiameterM } = tree.zones;
  return {
    ...asItIs(c, 'fell-tree'),
    reasons: ['old-roots-fade', ...(tree.share < 0.95 ? (['other-trees-stay'] as const) : [])],
    site: {
      ...c.site,
      trees: c.site.trees.map((other) => (other.id === id ? { ...other, felledYear: c.nowYear } : other)),
    },
    extras: [extra('fell-tree', stemDiameterM, 'm', `tree ${id}`)],
    felled: id,
  };
}
