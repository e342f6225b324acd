import { cite } from '../sources/cited.js';
import { fromInches } from '../units/length.js';

/** Limits of harm by a trench that stand in no other relation. */
export const harmLimits = {
  /** Trunk diameters within which only an arborist says whether and how. */
  arboristDiameters: cite(
    6,
    'ansi-a300-part8',
    'quoted',
    'its guide asks for 3 to 6 diameters: the wider end without an arborist',
  ),
  /** Share of the protection circle up to which the loss is minor. */
  minorShare: cite(
    0.1,
    'as-4970-2009',
    'quoted',
    '3.3.2, 3.3.3: minor up to 10 % and outside the structural roots',
  ),
  /** Share above which nothing should be dug. */
  tooMuchShare: cite(
    0.25,
    'our-judgement',
    'judgement',
    'extension pages call 25 to 30 % of the root circle major damage',
  ),
  /** Roots from this thickness on are not cut without an arborist. */
  askBeforeCuttingM: cite(fromInches(2), 'common-practice', 'memory', '2 in; British practice has 1 in'),
} as const;
