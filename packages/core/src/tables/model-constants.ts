import { cite } from '../sources/cited.js';

/** Constants of the model that come from published work rather than from us. */
export const modelConstants = {
  /** Foul against storm water: odds of roots in foul against combined sewers. */
  foulFactor: cite(1.7, 'torres-2017', 'quoted', 'odds ratio in the abstract'),
  /** Contact pressure of a seal at which half of the joints can be passed, MPa. */
  sealMidpointMPa: cite(0.28, 'sadler-2001', 'calculated', 'entered at 0.04 to 0.20, not at 0.37 MPa'),
  sealScaleMPa: cite(0.04, 'sadler-2001', 'calculated', 'logistic through those points'),
  /** Log-sd of the crown radius taken from a stem diameter (0.27), over two as it enters half of the reach. */
  crownFromStemLogSd: cite(0.27 / 2, 'mcpherson-2016', 'calculated', 'all-species fit, 13,297 trees'),
} as const;
