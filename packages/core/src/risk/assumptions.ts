import type { Assumption } from '../model/issue.js';
import type { Site } from '../model/site.js';
import { contextOf, prepareLine, type RankOptions } from './context.js';
import { lineAssumptions } from './line-assumptions.js';

/** Everything that would have to be assumed to score a site: of its lines, then of its trees. */
export function assumptionsOf(site: Site, options: RankOptions): Assumption[] {
  const context = contextOf(site, options);
  return [
    ...context.lines.flatMap((line) => lineAssumptions(prepareLine(context, line))),
    ...context.field.sizes.flatMap((size) => size.assumed),
  ];
}
