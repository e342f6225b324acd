import type { FallLimits, FallRemedy, GroundUnknown, InvertBounds, LaidPipe } from './fall.js';

/** One line of a network with the ground over it, from its upper end. */
export interface NetworkProfile {
  readonly id: string;
  /** Ids of a source, junction or outlet. */
  readonly from: string;
  readonly to: string;
  readonly stationM: readonly number[];
  readonly groundM: readonly (number | null)[];
  readonly pipeHeightM: number;
}

/** What all lines keep to, and inverts at sources and outlets by id. */
export interface NetworkFallLimits extends Omit<FallLimits, 'pipeHeightM' | 'source' | 'outlet'> {
  readonly ends?: Readonly<Record<string, InvertBounds>>;
}

/** The lines of a network laid with fall, or why they cannot be, or that the ground is not known. */
export type NetworkFall =
  | { readonly kind: 'laid'; readonly lines: readonly { readonly id: string; readonly pipe: LaidPipe }[] }
  | {
      readonly kind: 'impossible';
      readonly shortfallM: number;
      /** The line that falls short most, and where on it. */
      readonly line: string;
      readonly atM: number;
      readonly remedies: readonly FallRemedy[];
    }
  | { readonly kind: 'unknown'; readonly lines: readonly (GroundUnknown & { readonly id: string })[] };
