import type { Seen } from '../../model/site.js';
import type { ChoiceReason } from '../../model/works.js';
import type { MaterialKey } from '../../tables/pipe-row.js';
import { asItIs, type Case, extra, impossible, type Plan } from '../plan.js';
import { metresSeen } from '../stretch.js';

/** A cutter tears the wall (common practice): jet only. */
const TORN_BY_CUTTERS: readonly MaterialKey[] = ['hdpe-corrugated', 'hdpe-corrugated-heavy', 'pvc-thin-wall'];
const ROOTS: readonly Seen[] = ['fine', 'mass', 'full'];

/** Jetted or cut out inside, again and again. A line that is full or crushed cannot be cleared (common practice). */
export function clearAgain(c: Case): Plan {
  const { line, gravest } = c.stretch;
  const seen = (kind: Seen): boolean => metresSeen(c.stretch, [kind]) > 0;
  if (seen('crushed')) return impossible(c, 'clear-again', 'crushed-cannot-be-cleared');
  if (seen('full')) return impossible(c, 'clear-again', 'full-cannot-be-cleared');
  const roots = seen('fine') || seen('mass');
  if (!roots && gravest !== null) return impossible(c, 'clear-again', 'cutting-does-not-mend-shape');
  const jet = !seen('mass') || TORN_BY_CUTTERS.includes(line.drain.material);
  const reasons: ChoiceReason[] = ['opens-come-back'];
  if (seen('mass') && jet) reasons.push('cutters-tear-corrugated');
  if (!roots) reasons.push('look-first');
  const shape = c.stretch.slices.find(({ trouble }) => !ROOTS.includes(trouble.seen)) ?? null;
  const { id } = line.drain;
  return {
    ...asItIs(c, 'clear-again'),
    reasons,
    site: {
      ...c.site,
      drains: c.site.drains.map((drain) => (drain.id === id ? { ...drain, cutYear: c.nowYear } : drain)),
    },
    left: shape,
    extras: [extra(jet ? 'clear-by-jet' : 'clear-by-cutter')],
    visits: jet ? 'jet' : 'cutter',
  };
}
