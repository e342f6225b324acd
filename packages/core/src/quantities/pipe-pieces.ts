import type { MaterialKey } from '../tables/pipe-row.js';
import { pipeRow } from '../tables/pipes.js';
import { fromFeet } from '../units/length.js';

/** A longer piece is a coil: it is cut to length and the rest goes on to the next job. */
const LONGEST_STICK_M = fromFeet(20) + 0.01;

/** Pipe to be bought for a length, and what joins it. */
export interface PipePieces {
  readonly pieceM: number;
  readonly coil: boolean;
  /** Sticks bought; of a coil the number begun. */
  readonly pieces: number;
  /** Metres bought. */
  readonly boughtM: number;
  /** Metres cut off and left over. */
  readonly wasteM: number;
  /** Separate couplings; pipe with a bell brings its own. */
  readonly couplings: number;
}

/** Plain ends need a coupling each; bells, and ends fused together, need none. */
const PLAIN_ENDS: readonly MaterialKey[] = [
  'hdpe-corrugated',
  'hdpe-corrugated-heavy',
  'cast-iron',
  'unknown',
];

/** Off-cuts shorter than this are thrown away, metres (judgement). */
const SHORTEST_USED_M = 0.3;

/**
 * Pieces for runs between fittings: each run starts with a new piece or an off-cut that is long enough to use.
 * @param runsM lengths between fittings, metres.
 * @param pieceM laying length; the material's usual one where not given.
 */
export function pipePieces(
  material: MaterialKey,
  runsM: readonly number[],
  pieceM: number = pipeRow(material).pieceM.value,
): PipePieces {
  const neededM = runsM.reduce((sum, run) => sum + run, 0);
  const coil = pieceM > LONGEST_STICK_M;
  const plain = PLAIN_ENDS.includes(material);
  if (coil) {
    const joints = runsM.reduce((sum, run) => sum + Math.max(0, Math.ceil(run / pieceM - 1e-9) - 1), 0);
    const pieces = Math.max(1, Math.ceil(neededM / pieceM - 1e-9));
    return { pieceM, coil, pieces, boughtM: neededM, wasteM: 0, couplings: plain ? joints : 0 };
  }
  let pieces = 0;
  let offCutM = 0;
  let joints = 0;
  for (const runM of runsM) {
    const usedM = offCutM >= SHORTEST_USED_M ? Math.min(offCutM, runM) : 0;
    const restM = runM - usedM;
    const more = Math.max(0, Math.ceil(restM / pieceM - 1e-9));
    joints += Math.max(0, (usedM > 0 ? 1 : 0) + more - 1);
    pieces += more;
    offCutM = more > 0 ? more * pieceM - restM : offCutM - usedM;
  }
  const boughtM = pieces * pieceM;
  return { pieceM, coil, pieces, boughtM, wasteM: boughtM - neededM, couplings: plain ? joints : 0 };
}
