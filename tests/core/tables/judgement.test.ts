import { describe, expect, it } from 'vitest';
import { judgement, waterJudgement } from '../../../packages/core/src/tables/judgement.js';
import { modelConstants } from '../../../packages/core/src/tables/model-constants.js';
import { toPsi } from '../../../packages/core/src/units/pressure.js';

describe('our own choices', () => {
  it('all carry a reason and a spread', () => {
    for (const each of [...Object.values(judgement), ...Object.values(waterJudgement)]) {
      expect(each.why.length).toBeGreaterThan(10);
      expect(each.logSd).toBeGreaterThanOrEqual(0);
      expect(each.logSd).toBeLessThanOrEqual(0.7);
    }
  });

  it('rise with vigour and with wetness', () => {
    const rising = (values: readonly number[]): void =>
      expect(values).toEqual([...values].sort((a, b) => a - b));
    rising(judgement.vigourWeights.value);
    rising(judgement.regrowthMetresPerYear.value);
    const { dry, often, standing } = judgement.wetFactors.value;
    rising([dry, often, standing]);
  });

  // Gilman 1990: root spread diameter grows 0.9 to 2.4 m a year
  it('keep the regrowth within half of the measured growth of the spread', () => {
    const rates = judgement.regrowthMetresPerYear.value;
    expect(rates[0]).toBe(0.9 / 2);
    expect(rates[4]).toBe(2.4 / 2);
  });

  // Östberg and others 2012: 2,180 intrusions in 33.7 km, which is 0.065 for each joint of 1 m pipes; with pressure
  // 0.25, depth factor 0.4, foul water, an old line and 40 years (model of the derivation, an order of magnitude)
  it('give old foul mains the intrusions that were counted', () => {
    const perJoint =
      judgement.entryRatePerJointYear.value * 0.25 * 0.4 * modelConstants.foulFactor.value * 1.8 * 40;
    expect(perJoint).toBeGreaterThan(2180 / 33_700 / 2);
    expect(perJoint).toBeLessThan((2180 / 33_700) * 2);
  });

  it('refer the crush rate to 35 psi', () => {
    expect(toPsi(judgement.crushReferenceStiffness.value)).toBeCloseTo(35, 6);
  });
});

describe('constants from published work', () => {
  // Sadler, Burn & Whittle 2001: joints at 0.04, 0.10, 0.11 and 0.20 MPa were entered, at 0.37 MPa not
  it('let roots pass the joints that were entered and stop at the one that was not', () => {
    const passed = (mpa: number): number =>
      1 / (1 + Math.exp((mpa - modelConstants.sealMidpointMPa.value) / modelConstants.sealScaleMPa.value));
    for (const mpa of [0.04, 0.1, 0.11, 0.2]) expect(passed(mpa)).toBeGreaterThan(0.85);
    expect(passed(0.37)).toBeLessThan(0.15);
  });
});
