import { cite } from '../sources/cited.js';
import { fromFeet, fromInches } from '../units/length.js';

/** Numbers of digging and laying that a firm would set by its own crew and ground. */
export const trenchNumbers = {
  /** Depth classes of a trench; from the last one on its walls need a protective system. */
  shallowToM: cite(fromFeet(2), 'our-judgement', 'judgement', 'knee-deep, dug from above'),
  midToM: cite(fromFeet(4), 'osha-1926-p', 'quoted', 'a ladder from 4 ft on'),
  protectedFromM: cite(fromFeet(5), 'osha-1926-p', 'quoted', '1926.652(a)(1)'),
  /** Horizontal to vertical, each side. */
  wallSlope: cite(1.5, 'osha-1926-p', 'quoted', '1926.652(b)(1)(i), where the soil is not classed'),
  narrowestM: cite(fromInches(12), 'common-practice', 'memory', 'a 12 in bucket; 6 to 12 in for 4 in pipe'),
  roomBesidePipeM: cite(fromInches(8), 'common-practice', 'memory', '4 in either side of a yard drain'),
  /** From this depth on somebody works in the trench, beside the pipe. */
  fullWidthFromM: cite(fromFeet(4), 'our-judgement', 'judgement', 'too deep to lay from above'),
  beddingBelowM: cite(fromInches(4), 'common-practice', 'memory', '4 in under pipe up to 10 in'),
  beddingAboveM: cite(fromInches(4), 'our-judgement', 'judgement', 'over the top of the pipe'),
  topsoilM: cite(fromInches(6), 'common-practice', 'memory', 'soil over the stone of a French drain'),
  fabricOverlapM: cite(fromInches(12), 'common-practice', 'memory', 'fabric laid over itself'),
  /** Strip beside the trench that is torn up with it, each side. */
  tornBesideM: cite(fromInches(6), 'our-judgement', 'judgement', 'by bucket, spoil and boots'),
  stoneWasteShare: cite(0.1, 'our-judgement', 'judgement', 'settles, spills, sinks in'),
} as const;

/** Loose over bank volume, less one. */
export const swellShares = {
  sand: cite(0.12, 'earthwork-pages', 'read', '10 to 15 %'),
  loam: cite(0.25, 'earthwork-pages', 'read', 'common earth, 20 to 30 %'),
  clay: cite(0.37, 'earthwork-pages', 'read', 'clay, 35 to 40 %'),
} as const;

/** What a crew of two with a small digger gets done in an hour. */
export const crewRates = {
  machineDigM3PerHour: cite(
    3,
    'our-judgement',
    'judgement',
    'between a cautious 2.5 and an easy 6 from trade forums',
  ),
  handDigM3PerHour: cite(0.25, 'our-judgement', 'judgement', 'among roots: 10 to 25 ft a day for two'),
  boreMPerHour: cite(3, 'our-judgement', 'judgement', 'pits not counted'),
  borePitHours: cite(1.5, 'our-judgement', 'judgement', 'each'),
  fillM3PerHour: cite(4, 'our-judgement', 'judgement', 'in layers, tamped'),
  layMPerHour: cite(12, 'our-judgement', 'judgement', 'graded and checked with a level'),
  fittingHours: cite(0.25, 'our-judgement', 'judgement', 'each'),
  basinHours: cite(1.5, 'our-judgement', 'judgement', 'each, set and piped'),
  tieInHours: cite(0.75, 'our-judgement', 'judgement', 'each coupling of new pipe to old'),
  surfaceM2PerHour: {
    lawn: cite(8, 'our-judgement', 'judgement', 'turf lifted, kept wet and laid back'),
    bed: cite(6, 'our-judgement', 'judgement', 'plants lifted and set back'),
    gravel: cite(12, 'our-judgement', 'judgement', 'raked aside and back'),
    paving: cite(1.5, 'our-judgement', 'judgement', 'broken out and made good'),
    bare: cite(40, 'our-judgement', 'judgement', 'raked'),
  },
  setUpHours: cite(1.5, 'our-judgement', 'judgement', 'travel, marking out, clearing up'),
} as const;
