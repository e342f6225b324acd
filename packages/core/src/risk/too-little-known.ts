import type { PreparedLine, RiskContext } from './context.js';
import type { Load } from './load.js';

/** Share of the load that must come from trees of measured size (judgement). */
const ENOUGH = 0.5;

/**
 * True where a score would be a guess dressed up as a number: no tree was given at all; or of the line neither
 * material nor age nor depth is known and most of the load comes from trees whose trunk was not measured.
 */
export function tooLittleKnown(context: RiskContext, prepared: PreparedLine, load: Load): boolean {
  if (context.site.trees.length === 0) return true;
  const { drain } = prepared.line;
  if (drain.materialKnown || prepared.clock.ageKnown || prepared.line.depthKnown) return false;
  let measured = 0;
  for (let t = 0; t < prepared.near.count; t++) {
    const tree = context.field.trees[prepared.near.number[t] as number];
    if (tree && tree.stemDiameterM !== null) measured += load.byTree[t] as number;
  }
  return load.total > 0 && measured < ENOUGH * load.total;
}
