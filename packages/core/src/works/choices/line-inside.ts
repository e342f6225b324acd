import { sizeWord } from '../../quantities/size-word.js';
import type { MaterialKey } from '../../tables/pipe-row.js';
import { fromInches } from '../../units/length.js';
import { asItIs, type Case, extra, impossible, type Plan } from '../plan.js';
import { meetings, partsOn, withFittings } from '../renew.js';
import { splitLine } from '../split-line.js';
import { metresSeen } from '../stretch.js';

/** A liner takes the shape of what it is pressed against (common practice). */
const NO_EVEN_WALL: readonly MaterialKey[] = ['hdpe-corrugated', 'hdpe-corrugated-heavy', 'brick'];
/** Liners are made from about this size on (common practice). */
const LEAST_SIZE_M = fromInches(3) - 0.002;

/** A new skin inside the old pipe: no joints within it, ends and connections as open as before. */
export function lineInside(c: Case): Plan {
  const { line, number, fromM, toM } = c.stretch;
  const { drain } = line;
  const no = (reason: Plan['reasons'][number]): Plan => impossible(c, 'line-inside', reason);
  if (metresSeen(c.stretch, ['full']) > 0) return no('full-cannot-be-lined');
  if (metresSeen(c.stretch, ['crushed', 'sag', 'offset']) > 0) return no('lost-shape-cannot-be-lined');
  if (drain.perforated) return no('perforated-cannot-be-lined');
  if (NO_EVEN_WALL.includes(drain.material)) return no('corrugated-cannot-be-lined');
  if (drain.sizeM === null) return no('size-not-known');
  if (drain.sizeM < LEAST_SIZE_M) return no('too-small-to-line');
  const split = splitLine(c.seen, number, [fromM, toM], { joint: 'none', cutYear: c.nowYear });
  const { stretch } = split;
  const connections = meetings(c, stretch.fromM + 0.5, stretch.toM - 0.5);
  // the liner ends in the old pipe: roots find the edge
  const ends = [stretch.fromM, stretch.toM].map((atM) => ({
    type: 'coupling' as const,
    atM,
    replaces: null,
  }));
  return {
    ...asItIs(c, 'line-inside'),
    reasons: [
      'joints-inside-gone-ends-stay',
      ...(connections.length > 0 ? (['connections-cut-open-again'] as const) : []),
    ],
    site: withFittings(split.site, line, stretch.id, ends, false),
    parts: partsOn(c, split),
    left: null,
    work: { fromM: stretch.fromM, toM: stretch.toM, pipe: null, sizeM: drain.sizeM, fittings: [] },
    extras: [
      extra('clear-by-cutter'),
      extra('lining-set-up'),
      {
        code: `lining-${sizeWord(drain.sizeM)}`,
        text: 'lining cured in place, connections cut open again',
        quantity: stretch.toM - stretch.fromM,
        unit: 'm',
        basis: '',
        isMaterial: true,
      },
    ],
  };
}
