import type { DecideResult, OddsPoint, RankResult, SegmentResult, Site, Units } from '@rootreach/core';
import type { Language } from '../words/words.js';

/** What the owner's page is made from. */
export interface OwnerInput {
  readonly site: Site;
  readonly result: RankResult;
  /** The stretch that the page is about. */
  readonly segment: SegmentResult;
  /** Odds of that stretch over the years, from `oddsOverYears`. */
  readonly odds: readonly OddsPoint[];
  /** What can be done, from `decide`; the part is left out where not given. */
  readonly decided?: DecideResult;
  readonly language: Language;
  readonly units: Units;
  /** Who made the estimate, as they want to be named; never made up. */
  readonly by?: string;
}
