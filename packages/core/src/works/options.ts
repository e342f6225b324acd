import type { LearnedModel } from '../model/learned.js';
import type { PriceList, PriceTerms } from '../model/prices.js';
import type { RouteAlternative, RoutePipe } from '../model/route.js';
import type { Units } from '../model/site.js';
import type { OwnerLimits } from '../model/works.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import type { Assumed } from './assumptions.js';

/** A line laid elsewhere in place of the stretch: one alternative of `planRoute`, and the pipe it was planned with. */
export interface NewRoute {
  readonly alternative: RouteAlternative;
  readonly pipe: RoutePipe;
}

/** What choices are weighed with. Only the date is needed. */
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
  readonly units?: Units;
}
