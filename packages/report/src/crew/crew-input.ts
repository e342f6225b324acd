import type { Quantity, RankResult, SegmentResult, Site } from '@rootreach/core';
import type { Units } from '../say/lengths.js';
import type { Language } from '../words/words.js';

/** What the crew's sheet is made from. */
export interface CrewInput {
  readonly site: Site;
  readonly result: RankResult;
  /** The stretch that is to be dug. */
  readonly segment: SegmentResult;
  /** What the job takes, from the choice that was made; the part is left out where not given. */
  readonly quantities?: readonly Quantity[];
  readonly language: Language;
  readonly units: Units;
  readonly by?: string;
}
