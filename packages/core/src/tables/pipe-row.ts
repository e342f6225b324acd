import type { Cited } from '../sources/cited.js';
import type { Pascals } from '../units/quantity.js';

/** What a pipe is made of, as the table of pipes knows it; `unknown` for anything else. */
export type MaterialKey =
  | 'hdpe-corrugated'
  | 'hdpe-corrugated-heavy'
  | 'hdpe-dual-wall'
  | 'hdpe-welded'
  | 'pvc-sdr35'
  | 'pvc-sch40'
  | 'pvc-thin-wall'
  | 'abs'
  | 'clay'
  | 'concrete'
  | 'cast-iron'
  | 'asbestos-cement'
  | 'bituminous-fibre'
  | 'brick'
  | 'unknown';

/** How pieces of pipe are joined, as the table of joints knows it. */
export type JointKey =
  | 'none'
  | 'snap'
  | 'taped'
  | 'gasket'
  | 'solvent'
  | 'band'
  | 'mortar'
  | 'open'
  | 'welded';

/** One size that a pipe is made in. */
export interface PipeSize {
  readonly nominalIn: number;
  readonly nominalMm: number;
  /** Real inside diameter, metres. */
  readonly insideDiameterM: Cited<number>;
  /** Where stiffness depends on the size; else the row's. */
  readonly stiffness?: Cited<Pascals>;
}

/** One pipe of the table, each value with its source. */
export interface PipeRow {
  readonly key: MaterialKey;
  /** Plain name for people: `clay tile`, `thin-wall PVC`. */
  readonly name: string;
  readonly sizes: readonly PipeSize[];
  /** Usual laying length between joints, metres; the longest coil for coiled pipe. */
  readonly pieceM: Cited<number>;
  /** Other lengths it is sold or was laid in, metres. */
  readonly otherPiecesM: readonly number[];
  /** Its usual joint. */
  readonly joint: JointKey;
  /** Pipe stiffness (a flexible pipe's standard minimum; an equivalent for rigid pipe, our judgement). */
  readonly stiffness: Cited<Pascals>;
  readonly rigid: boolean;
  readonly manningN: {
    readonly low: Cited<number>;
    readonly mid: Cited<number>;
    readonly high: Cited<number>;
  };
  readonly expectedLifeYears: Cited<number>;
  /** Age to assume when nothing is known, years. */
  readonly assumedAgeYears: Cited<number>;
}

/** One kind of joint of the table. */
export interface JointRow {
  readonly key: JointKey;
  readonly name: string;
  /** Openness to roots against an unsealed rigid joint = 1. */
  readonly factor: Cited<number>;
}
