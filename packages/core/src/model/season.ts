import type { Caution } from './caution.js';
import type { Issue } from './issue.js';
import type { Seen } from './site.js';

/** One push of the camera: from one way in, one way, for all segments due there. */
export interface SeasonLook {
  readonly site: string;
  readonly drainId: string;
  readonly drainName: string | null;
  readonly segmentIds: readonly string[];
  /** Year and month by which it is due; the month of the plan for one that is due already. */
  readonly due: string;
  /** True where the chance since it was last seen clean has passed the target, or trouble is known. */
  readonly overdue: boolean;
  /** Day that it was given, ISO date; null where the days did not suffice or none were given. */
  readonly day: string | null;
  /** Fitting id, or `outlet end`, `upper end`. */
  readonly from: string;
  readonly fromName: string;
  readonly direction: 'upstream' | 'downstream';
  /** How far to push, metres by the counter. */
  readonly toM: number;
  /** Where trouble is likeliest, metres by the counter. */
  readonly expectM: readonly [fromM: number, toM: number];
  /** Likely chance of the likeliest segment within the horizon. */
  readonly chance: number;
  /** True where something was seen and not dealt with. */
  readonly known: boolean;
  /** The gravest of that. */
  readonly seen: Seen | null;
  /** Stays the same when the season is worked out again. */
  readonly uid: string;
}

/** The next looks on many sites, in the order of their days. Plain JSON. */
export interface SeasonResult {
  readonly schema: 1;
  readonly asOf: string;
  readonly until: string;
  readonly horizonYears: number;
  readonly looks: readonly SeasonLook[];
  /** Looks that found no room in the days given. */
  readonly unplaced: number;
  readonly issues: readonly Issue[];
  readonly cautions: readonly Caution[];
}
