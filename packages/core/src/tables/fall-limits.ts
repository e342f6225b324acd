import { cite } from '../sources/cited.js';
import { fromInches } from '../units/length.js';

/** Numbers of a line laid with fall that its limits do not give. */
export const fallLimits = {
  /** Steepest stretch where no limit is given, metre per metre. */
  maxFall: cite(
    1,
    'common-practice',
    'memory',
    'a line is stepped down with a pair of eighth bends, 45 degrees',
  ),
  /** No flatter fall is offered than this. */
  flattest: cite(
    fromInches(1 / 16) / fromInches(12),
    'chicago-plumbing-code',
    'read',
    'a sixteenth of an inch per foot, the least for any size (8 in and over)',
  ),
  /** Deeper by up to this, metres, for the sake of longer straight grades. */
  gradeSlackM: cite(0.03, 'our-judgement', 'judgement', 'a trench floor is trimmed to about an inch'),
} as const;

/** How far ground levels speak beyond themselves. */
export const groundLimits = {
  /** Beyond their outline or ends, as a share of how far apart they lie. */
  beyondShare: cite(0.25, 'our-judgement', 'judgement', 'a slope goes on for a little'),
  /** To the side of levels that stand in line, as a share of how far apart they lie. */
  asideShare: cite(1, 'our-judgement', 'judgement', 'fall across is taken as none'),
  /** Levels stand in line where their spread across is below this share of that along. */
  inLineShare: cite(0.05, 'our-judgement', 'judgement', 'too little to tell a fall across'),
  /** In any case this far beyond, metres. */
  besideM: cite(1, 'our-judgement', 'judgement', 'a level is taken beside the thing, not on it'),
} as const;
