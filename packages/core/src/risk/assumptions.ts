import type { Assumption } from '../model/issue.js';
import type { Site } from '../model/site.js';
import { treeAssumptions } from '../roots/tree-size.js';
import { contextOf, prepareLine, type RankOptions } from './context.js';
import { lineAssumptions } from './line-assumptions.js';

/**
 * Everything that would have to be assumed to score a site: of its lines, then of its trees.
 * @param site as read.
 * @param options as for `rank`.
 */
export function assumptionsOf(site: Site, options: RankOptions): Assumption[] {
  const context = contextOf(site, options);
  return [
    ...site.drains.flatMap((_, i) => lineAssumptions(prepareLine(context, context.lines.at(i)))),
    ...site.trees.flatMap((tree, i) => treeAssumptions(tree, context.field.sizeOf(i))),
  ];
}
