import type { Dig } from '../model/dig.js';
import type { LearnedModel } from '../model/learned.js';
import type { PriceList, PriceTerms } from '../model/prices.js';
import type { LonLat } from '../model/site.js';
import type { OwnerLimits } from '../model/works.js';
import type { QuantityUnits } from '../quantities/wording.js';
import type { JointKey, MaterialKey } from '../tables/pipe-row.js';
import type { Assumed } from './assumptions.js';

/** A line laid elsewhere in place of the stretch: one alternative of a route, as it is dug. */
export interface NewRoute {
  readonly name: string;
  /** From the upper end down. */
  readonly path: readonly LonLat[];
  readonly digs: readonly Dig[];
  readonly material: MaterialKey;
  readonly sizeM: number;
  readonly joint?: JointKey;
  readonly pieceM?: number;
  readonly perforated?: boolean;
  readonly wrapped?: boolean;
  /** Ground to the top of the pipe; null where not known. */
  readonly depthStartM: number | null;
  readonly depthEndM: number | null;
}

export interface DecideOptions {
  /** ISO date that the choice is for. */
  readonly asOf: string;
  /** The invented demo list where not given. */
  readonly prices?: PriceList;
  readonly terms?: PriceTerms;
  readonly limits?: OwnerLimits;
  /** Numbers to use in place of the assumed ones. */
  readonly assume?: Partial<Assumed>;
  /** Pipe for the better replacement; heavy-wall PVC with welded joints where not given. */
  readonly betterPipe?: MaterialKey;
  readonly newRoute?: NewRoute;
  readonly segmentM?: number;
  readonly learned?: LearnedModel;
  readonly units?: QuantityUnits;
}
