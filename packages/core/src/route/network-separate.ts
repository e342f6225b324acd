import type { NetworkOutlet, NetworkSource } from '../model/network.js';
import { cheapestPath } from './cheapest-path.js';
import type { CostField } from './cost-field.js';
import { outletVertices, sourceVertex } from './network-ends.js';
import { runTo } from './network-insert.js';
import { polish } from './network-polish.js';
import { type NetworkPrices, NetworkTree } from './network-tree.js';

/** A line of its own for each source, sorted from the nearest outlet on; null where one has no way. */
export function separateLines(
  field: CostField,
  prices: NetworkPrices,
  sources: readonly NetworkSource[],
  outlets: readonly NetworkOutlet[],
): { readonly source: NetworkSource; readonly tree: NetworkTree; readonly cost: number }[] | null {
  const lines: { source: NetworkSource; tree: NetworkTree; cost: number }[] = [];
  for (const source of sources) {
    const ends = outletVertices(outlets);
    const tree = new NetworkTree(field, prices, ends);
    const found = cheapestPath(field, [source.x, source.y], ends, {
      lengthPrice: prices.morePerM(source.load),
    });
    const end = found && ends.find((each) => each === found.target);
    if (!found || !end) return null;
    runTo(tree, sourceVertex(source), found.points, end);
    polish(tree);
    lines.push({ source, tree, cost: tree.cost() });
  }
  return lines.sort((a, b) => a.cost - b.cost);
}

/** The separate lines as one network without a shared trench. */
export function together(
  field: CostField,
  prices: NetworkPrices,
  lines: readonly { readonly tree: NetworkTree }[],
  outlets: readonly NetworkOutlet[],
): NetworkTree {
  const ends = outletVertices(outlets);
  const vertices = lines.flatMap(({ tree }) => {
    for (const vertex of tree.vertices) {
      const end = vertex.next?.kind === 'outlet' ? ends.find(({ id }) => id === vertex.next?.id) : undefined;
      if (end) vertex.next = end;
    }
    return tree.vertices.filter(({ kind }) => kind !== 'outlet');
  });
  return new NetworkTree(field, prices, [...ends, ...vertices]);
}
