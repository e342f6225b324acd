import type { WaterGap, WaterWarning } from '../model/water-result.js';
import { waterJudgement } from '../tables/judgement.js';

const GAPS: Readonly<Record<WaterGap, string>> = {
  'size-not-given': 'size not given',
  'depths-not-given': 'depth not given at both ends',
  'levels-not-given': 'no ground level near both ends',
  'one-level-for-both-ends': 'one ground level for both ends tells no fall',
  'no-fall': 'it does not fall towards its outlet end',
  'rain-not-given': 'rain not given',
  'area-not-given': 'area that drains into it not given',
  foul: 'foul water: no rain is counted',
  ring: 'the lines run in a ring: nothing tells where the water goes',
  'nothing-seen': 'no roots or damage known',
};

/** Why something of a line's water cannot be said. */
export const wordWaterGap = (gap: WaterGap): string => GAPS[gap];

const USUAL_PERCENT = 100 * waterJudgement.usualSlope.value;

/** Numbers that stand in the warnings, with their units as the reader wants them. */
export interface WaterNumbers {
  /** Velocity asked for: `2 ft/s`. */
  readonly cleansing: string;
  /** Velocity in the full pipe: `1.3 ft/s (1.0 to 1.6)`. */
  readonly velocity: string;
  /** Fall that would do: `1.6 % (1.1 to 2.9)`. */
  readonly slopeNeeded: string;
  /** Head at a root ball: `2 in`. */
  readonly headLoss: string;
  /** What roots leave: `95 gpm`. */
  readonly withRoots: string;
}

/**
 * One warning as a sentence without its full stop.
 * @param warning of a line's water.
 * @param numbers how the reader's page writes flows, velocities, slopes and shares.
 */
export function wordWaterWarning(warning: WaterWarning, numbers: WaterNumbers): string {
  const { cleansing, velocity, slopeNeeded, headLoss, withRoots } = numbers;
  switch (warning) {
    case 'no-fall':
      return 'by depths and levels it does not fall towards its outlet end: check both, or which way it runs';
    case 'not-self-cleansing':
      return `does not clean itself: ${velocity} full, ${cleansing} wanted; that takes a fall of ${slopeNeeded}`;
    case 'may-not-clean-itself':
      return `may not clean itself if it is rough: ${velocity} full, ${cleansing} wanted`;
    case 'usual-slope-not-enough':
      return `laid at the usual ${USUAL_PERCENT} % it would not clean itself: ${cleansing} takes a fall of ${slopeNeeded}`;
    case 'too-small':
      return 'too small for this rain: it backs up even when clear';
    case 'may-be-too-small':
      return 'may be too small for this rain if it is rough and all of the rain runs off';
    case 'too-small-with-roots':
      return `with what was seen in it, it carries ${withRoots}: too little for this rain`;
    case 'holds-water-back':
      return `a short root ball holds this rain back by ${headLoss} of water`;
  }
}
