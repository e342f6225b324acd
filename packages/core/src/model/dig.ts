import type { MaterialKey } from '../tables/pipe-row.js';
import type { FittingType } from './site.js';

/** What lies on top of a trench and has to be put back. */
export type DigSurface = 'lawn' | 'bed' | 'gravel' | 'paving' | 'bare';

/** What a pipe lies in: the soil that came out, brought sand, or washed gravel. */
export type Bedding = 'native' | 'sand' | 'gravel';

/** Fittings of one type that are set in a dig. */
export interface DigFitting {
  readonly type: FittingType;
  readonly count: number;
}

/** One stretch to be dug or bored, alike along its length but for its depth, which runs straight from end to end. */
export interface Dig {
  readonly lengthM: number;
  /** From the ground to the bottom of the trench, or to the pipe's invert where it is bored. */
  readonly depthStartM: number;
  readonly depthEndM: number;
  /** Width of the bottom; null: what the pipe and the depth ask for. */
  readonly widthM: number | null;
  readonly surface: DigSurface;
  readonly bored: boolean;
  /** Dug by hand or air among roots or marked utilities, roots cut clean. */
  readonly handDig: boolean;
  /** Pipe that is laid; null: none. */
  readonly pipe: MaterialKey | null;
  /** Nominal size of that pipe, metres. */
  readonly sizeM: number;
  readonly perforated: boolean;
  /** Fabric around the stone of a perforated pipe, or round the pipe itself without stone. */
  readonly wrapped: boolean;
  readonly bedding: Bedding;
  /** Height of stone from the trench bottom, metres; null: as the bedding and the pipe ask for. */
  readonly stoneM: number | null;
  /** Old pipe that comes out of the trench, metres. */
  readonly oldPipeM: number;
  /** Height of a root barrier set in the trench, metres; 0: none. */
  readonly barrierM: number;
  readonly fittings: readonly DigFitting[];
}
