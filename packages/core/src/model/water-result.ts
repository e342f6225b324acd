import type { SourceKey } from '../sources/bibliography.js';
import type { HowKnown } from '../sources/how-known.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import type { SurfaceKey } from '../tables/runoff.js';
import type { Caution } from './caution.js';
import type { Assumption, Issue } from './issue.js';
import type { Drain, Seen } from './site.js';

/** A number with the ends between which sources differ. */
export interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** Why something of a line cannot be said. */
export type WaterGap =
  | 'size-not-given'
  | 'depths-not-given'
  | 'levels-not-given'
  | 'one-level-for-both-ends'
  | 'no-fall'
  | 'rain-not-given'
  | 'area-not-given'
  | 'foul'
  | 'ring'
  | 'nothing-seen';

/** What the owner of a line should be told. */
export type WaterWarning =
  | 'no-fall'
  | 'not-self-cleansing'
  | 'may-not-clean-itself'
  | 'usual-slope-not-enough'
  | 'too-small'
  | 'may-be-too-small'
  | 'too-small-with-roots'
  | 'holds-water-back';

/** What was last seen in the way of the water, at the place where it takes most. */
export interface SeenBlockage {
  readonly seen: Seen;
  /** Share of the section lost. */
  readonly share: number;
  /** As the camera's log says, or what is typical of what was seen. */
  readonly shareFrom: 'given' | 'typical';
  /** Stations from the outlet end; the same for a point. */
  readonly fromM: number;
  readonly toM: number;
  readonly year: number | null;
  /** Head that a short ball costs at the design flow, metres; null for a stretch or without a design flow. */
  readonly headLossM: number | null;
}

/** What one line carries and has to carry. `low` is the low flow, so that of the high n. */
export interface LineWater {
  readonly drainId: string;
  readonly name: string | null;
  readonly material: MaterialKey;
  readonly materialName: string;
  readonly carries: Drain['carries'];
  readonly lengthM: number;
  /** Size as given. */
  readonly sizeM: number | null;
  readonly insideDiameterM: number | null;
  /** Fall over length, from the upper end to the outlet end. */
  readonly slope: number | null;
  readonly slopeFrom: 'levels' | 'given' | null;
  readonly n: Range;
  readonly fullFlowM3s: Range | null;
  readonly fullVelocityMs: Range | null;
  /** Whether the full pipe reaches the velocity at the middle n. */
  readonly selfCleansing: boolean | null;
  /** True where low and high n say the same. */
  readonly selfCleansingIsSure: boolean | null;
  /** Slope at which it would. */
  readonly selfCleansingSlope: Range | null;
  /** Line into which this one drains. */
  readonly drainsInto: string | null;
  /** Area that this line takes in itself, and with all lines that drain into it. */
  readonly servesM2: number | null;
  readonly servedM2: number | null;
  /** Heads of the net above, or this line, whose area nobody gave: the design flow is then the least. */
  readonly notCounted: { readonly lines: number; readonly examples: readonly string[] };
  /** Flow at the outlet end in the rain given. */
  readonly designFlowM3s: Range | null;
  /** Design flow over full flow: most in the smoothest pipe, least in the roughest. */
  readonly usedShare: Range | null;
  /** Depth of the water over the inside diameter at the middle design flow; null where the pipe cannot carry it. */
  readonly depthRatio: number | null;
  readonly blockage: SeenBlockage | null;
  readonly withRootsM3s: Range | null;
  readonly usedShareWithRoots: Range | null;
  readonly unknown: readonly { readonly field: string; readonly why: WaterGap }[];
  readonly warnings: readonly WaterWarning[];
}

/** What lines carry and have to carry. Flows and velocities low, middle and high. Plain JSON. */
export interface WaterResult {
  readonly schema: 1;
  readonly site: { readonly name: string | null; readonly invented: boolean };
  readonly rain: {
    readonly mmPerHour: number | null;
    readonly from: 'given' | 'site' | null;
    /** Where to find it, where it is not known. */
    readonly lookUp: string | null;
  };
  readonly runoff: Range & { readonly surface: SurfaceKey; readonly name: string };
  /** Velocity that was asked for in the full pipe, m/s. */
  readonly selfCleansingMs: number;
  readonly lines: readonly LineWater[];
  readonly assumed: readonly Assumption[];
  readonly issues: readonly Issue[];
  /** Published relations that it was worked out with. */
  readonly basis: readonly { readonly what: string; readonly source: SourceKey; readonly known: HowKnown }[];
  readonly cautions: readonly Caution[];
}
