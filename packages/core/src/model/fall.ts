/** Least and greatest elevation of a pipe's invert at an end, metres; both the same where it is fixed. */
export interface InvertBounds {
  readonly leastM?: number;
  readonly mostM?: number;
}

/** What a pipe laid with fall must keep to. */
export interface FallLimits {
  /** Metre per metre. */
  readonly minFall: number;
  /** Greatest fall, metre per metre; no limit where not given. */
  readonly maxFall?: number;
  /** From the ground to the top of the pipe, metres. */
  readonly minCoverM: number;
  /** From the ground to the invert, metres. */
  readonly maxDepthM: number;
  /** From the invert to the top of the pipe, metres. */
  readonly pipeHeightM: number;
  /** Invert at the upper end: `mostM` is where the water comes in. */
  readonly source?: InvertBounds;
  /** Invert at the lower end: `leastM` is what it empties into. */
  readonly outlet?: InvertBounds;
  /** Metres before the lower end where no cover is asked for, so that the pipe can come out of the ground. */
  readonly bareBeforeOutletM?: number;
}

/** A stretch at one grade, stations from the upper end. */
export interface Grade {
  readonly fromM: number;
  readonly toM: number;
  readonly fall: number;
}

/** One thing that would make a gravity line possible by itself. */
export type FallRemedy =
  | { readonly kind: 'raise-source'; readonly byM: number }
  | { readonly kind: 'lower-outlet'; readonly byM: number }
  | { readonly kind: 'dig-deeper'; readonly maxDepthM: number }
  | { readonly kind: 'less-cover'; readonly minCoverM: number }
  | { readonly kind: 'flatter'; readonly fall: number }
  /** Lift the water by at least this. */
  | { readonly kind: 'pump'; readonly liftM: number }
  /** Let it soak away at or before this station, the furthest that gravity reaches. */
  | { readonly kind: 'dry-well'; readonly atM: number };

/** What binds: the ground over the pipe, the water's way in, the depth allowed, or what it empties into. */
export type FallLimit = 'cover' | 'source' | 'depth' | 'outlet';

/** A pipe that falls all the way, as shallow as the limits let it be. */
export interface LaidPipe {
  readonly kind: 'laid';
  readonly stationM: readonly number[];
  readonly groundM: readonly number[];
  readonly invertM: readonly number[];
  /** Straight grades, from the upper end. */
  readonly grades: readonly Grade[];
  /** From the ground to the invert. */
  readonly depthM: { readonly min: number; readonly max: number };
  /** From the ground to the top of the pipe. */
  readonly coverM: { readonly min: number; readonly max: number };
  readonly fall: { readonly min: number; readonly max: number };
}

/** No pipe can fall all the way within the limits. */
export interface NoFall {
  readonly kind: 'impossible';
  /** How far the highest pipe that falls lies below what is allowed, at the worst place. */
  readonly shortfallM: number;
  readonly atM: number;
  /** What it is that lies too high there, and the place further up that holds the pipe down. */
  readonly below: 'depth' | 'outlet' | 'source';
  readonly heldDownBy: FallLimit;
  readonly heldDownAtM: number;
  readonly remedies: readonly FallRemedy[];
}

/** The ground is not known all along. */
export interface GroundUnknown {
  readonly kind: 'unknown';
  /** Stretches without a ground level, stations from the upper end. */
  readonly unknown: readonly (readonly [fromM: number, toM: number])[];
}

/** A pipe laid with fall, or why there is none, or that the ground is not known. */
export type FallResult = LaidPipe | NoFall | GroundUnknown;
