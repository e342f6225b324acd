import type { MaterialKey } from '../../tables/pipe-row.js';
import { pipeRow } from '../../tables/pipes.js';
import { fromFeet } from '../../units/length.js';
import { type Case, impossible, type Plan } from '../plan.js';
import { renewed } from '../renew.js';

/** Pipe that nobody sells for yards any more (common practice). */
const NOT_SOLD: readonly MaterialKey[] = ['asbestos-cement', 'bituminous-fibre', 'brick'];

/** The stretch laid anew with the pipe that it had. */
export function replaceLike(c: Case): Plan {
  const { material, materialKnown } = c.stretch.line.drain;
  if (!materialKnown || material === 'unknown') return impossible(c, 'replace-like', 'pipe-not-known');
  if (NOT_SOLD.includes(material)) return impossible(c, 'replace-like', 'not-sold-any-more');
  const { fromM, toM } = c.stretch;
  return {
    ...renewed(c, 'replace-like', { pipe: material, fromM, toM, basins: false }),
    reasons: ['whole-stretch-new', 'same-joints-as-before'],
  };
}

/** The longest piece that a van carries, metres (common practice: 20 ft). */
const VAN_M = fromFeet(20) + 0.01;

/** Long pieces, so that few joints lie past a tree (common practice). */
function longestStick(pipe: MaterialKey): number {
  const { pieceM, otherPiecesM } = pipeRow(pipe);
  const sticks = [pieceM.value, ...otherPiecesM].filter((length) => length <= VAN_M);
  return Math.max(...sticks);
}

/** Pipe with tight joints far apart, and a way in where lines meet (common practice). */
export function replaceHeavier(c: Case, better: MaterialKey): Plan {
  const { material, perforated } = c.stretch.line.drain;
  if (material === better) return impossible(c, 'replace-heavier', 'already-the-better-pipe');
  const { fromM, toM } = c.stretch;
  const plan = renewed(c, 'replace-heavier', {
    pipe: better,
    fromM,
    toM,
    basins: !perforated,
    pieceM: longestStick(better),
  });
  const basin = plan.work?.fittings.some(({ type }) => type === 'basin') ?? false;
  return {
    ...plan,
    reasons: [
      'whole-stretch-new',
      'fewer-tighter-joints',
      ...(basin ? (['access-where-lines-meet'] as const) : []),
    ],
  };
}
