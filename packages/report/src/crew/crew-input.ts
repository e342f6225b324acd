import type { Choice, RankResult, SegmentResult, Site, Units } from '@rootreach/core';
import type { Language } from '../words/words.js';

/** What the crew's sheet is made from. */
export interface CrewInput {
  readonly site: Site;
  readonly result: RankResult;
  /** The stretch that is to be dug. */
  readonly segment: SegmentResult;
  /** What was chosen, from `decide`; its quantities are left out where not given. */
  readonly choice?: Choice;
  readonly language: Language;
  readonly units: Units;
  readonly by?: string;
}
