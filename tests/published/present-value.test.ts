import { describe, expect, it } from 'vitest';
import {
  annuity,
  discounted,
  troubleValue,
  visitsValue,
} from '../../packages/core/src/works/present-value.js';

describe('present value', () => {
  // present worth of 1 a year, as interest tables of engineering economy print it (from memory; four decimals)
  it.each([
    [0.04, 25, 15.6221],
    [0.05, 10, 7.7217],
    [0.1, 20, 8.5136],
    [0.08, 5, 3.9927],
    [0, 12, 12],
  ])('of 1 a year at %d over %d years is %d', (rate, years, printed) => {
    expect(annuity(rate, years)).toBeCloseTo(printed, 4);
  });

  it('of yearly amounts is the sum of the discounted ones', () => {
    const sum = Array.from({ length: 25 }, (_, i) => discounted(1, 0.04, i + 1)).reduce((a, b) => a + b);
    expect(annuity(0.04, 25)).toBeCloseTo(sum, 12);
  });

  it('of visits every year is the annuity less the last one, which falls on the horizon', () => {
    expect(visitsValue(100, 1, 0.04, 25)).toBeCloseTo(100 * annuity(0.04, 24), 9);
  });

  // spreadsheets: PV((1 + r)^k - 1, n / k, -each) for payments k years apart
  it('of visits every five years is an annuity at the rate of five years', () => {
    const five = 1.04 ** 5 - 1;
    expect(visitsValue(195, 5, 0.04, 25)).toBeCloseTo(195 * annuity(five, 4), 9);
  });

  it('of trouble at an even rate is the annuity brought half a year forward', () => {
    const value = troubleValue(1440, (year) => 0.12 * year, 0.04, 25);
    expect(value).toBeCloseTo(1440 * 0.12 * annuity(0.04, 25) * 1.04 ** 0.5, 9);
  });

  it('of trouble without a discount is what it costs times how often it is expected', () => {
    expect(troubleValue(1000, (year) => 1 - Math.exp(-year / 7), 0, 25)).toBeCloseTo(
      1000 * (1 - Math.exp(-25 / 7)),
      9,
    );
  });
});
