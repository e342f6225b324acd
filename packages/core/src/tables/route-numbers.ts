import { cite } from '../sources/cited.js';
import { fromFeet, fromInches } from '../units/length.js';

/** Numbers that routes are planned with, where the request does not say otherwise. */
export const routeNumbers = {
  /** An eighth of an inch per foot. */
  minFall: cite(1 / 96, 'chicago-plumbing-code', 'read', 'least slope of drains of 3 to 6 in'),
  minCoverM: cite(fromInches(12), 'common-practice', 'memory', 'yard drains 6 to 12 in under lawn'),
  maxDepthM: cite(fromFeet(4), 'osha-1926-p', 'quoted', 'a ladder from 4 ft on: deeper takes another crew'),
  /** Metres before the outlet where the pipe may come out of the ground. */
  bareBeforeOutletM: cite(3, 'our-judgement', 'judgement', 'a stick of pipe at the outlet'),
  /** Ends and a place between lie no further apart than this, metres. */
  mostApartM: cite(
    2000,
    'our-judgement',
    'judgement',
    'a yard drain is a tenth of that; a slip of the pen is more',
  ),
  horizonYears: cite(25, 'our-judgement', 'judgement', 'a short life of a buried line'),
  discountRate: cite(0.03, 'our-judgement', 'judgement', 'a year, above inflation'),
  wallClearanceM: cite(0.3, 'our-judgement', 'judgement', 'room for a bucket beside a wall'),
  /** A route may come close to a wall within so far of its ends, metres. */
  endRoomM: cite(1.5, 'our-judgement', 'judgement', 'downspouts stand at walls'),
  /** Either side of a marked utility the trench is dug by hand, metres. */
  utilityHandDigM: cite(fromInches(24), 'common-practice', 'memory', '18 to 30 in by place'),
  /** Digging beside a utility is weighed so many times its price. */
  utilityCaution: cite(3, 'our-judgement', 'judgement', 'so that a route turns to cross it near square'),
  /** A crossing flatter than this is said so, degrees. */
  squareEnoughDegrees: cite(60, 'our-judgement', 'judgement', 'near a right angle'),
  /** Bends that fittings make, degrees. */
  fittingTurn: cite(
    22.5,
    'common-practice',
    'memory',
    'eighth, quarter and sixteenth bends: 45, 90 and 22.5 degrees',
  ),
  /** A rigid line may turn this much without a fitting, degrees. */
  jointTurn: cite(1.5, 'our-judgement', 'judgement', 'play of the joints on either side'),
  /** Least radius of a coil laid round a bend, in pipe diameters. */
  coilRadiusDiameters: cite(8, 'our-judgement', 'judgement', 'single-wall coils bend tighter, but flatten'),
  fusedRadiusDiameters: cite(
    30,
    'common-practice',
    'memory',
    '25 to 30 outside diameters for fused pipe in the cold',
  ),
  /** Worth of the harm to a tree beside its no-dig circle, against the price of the trench itself. */
  treeHarmShare: cite(1, 'our-judgement', 'judgement', 'as dear again as the trench'),
  /** Dig-up where roots came in, metres of trench. */
  repairM: cite(2, 'our-judgement', 'judgement', 'one joint and a pipe either side'),
} as const;
