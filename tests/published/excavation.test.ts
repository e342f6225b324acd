import { describe, expect, it } from 'vitest';
import type { Dig } from '../../packages/core/src/model/dig.js';
import { inUnit } from '../../packages/core/src/prices/in-unit.js';
import { depthClassOf } from '../../packages/core/src/quantities/depth-class.js';
import { quantitiesOf } from '../../packages/core/src/quantities/quantities-of.js';
import { trenchVolumeM3 } from '../../packages/core/src/quantities/trench-volume.js';
import { fullTrenchWidthM } from '../../packages/core/src/quantities/trench-width.js';
import { fromFeet, fromInches, toInches } from '../../packages/core/src/units/length.js';

const ft = (feet: number): number => fromFeet(feet);
const yd3 = (m3: number): number => inUnit(m3, 'm3', 'yd3') as number;

const dig = (change: Partial<Dig> = {}): Dig => ({
  lengthM: ft(100),
  depthStartM: ft(2),
  depthEndM: ft(2),
  widthM: ft(1),
  surface: 'lawn',
  bored: false,
  handDig: false,
  pipe: null,
  sizeM: fromInches(4),
  perforated: false,
  wrapped: false,
  bedding: 'native',
  stoneM: null,
  oldPipeM: 0,
  barrierM: 0,
  fittings: [],
  ...change,
});

const amount = (digs: readonly Dig[], code: string, options = {}): number =>
  quantitiesOf(digs, options)
    .filter((line) => line.code === code)
    .reduce((sum, { quantity }) => sum + quantity, 0);

describe('volume of a trench', () => {
  it.each([
    ['100 x 1 x 2 ft', ft(100), ft(1), ft(2), 0, 7.407],
    ['10 x 10 x 5 ft (one web page prints 14.8, which is wrong)', ft(10), ft(10), ft(5), 0, 18.519],
    ['100 ft, 1 ft at the bottom, 6 ft deep, 1.5 to 1 both sides', ft(100), ft(1), ft(6), 1.5, 222.22],
  ])('%s by arithmetic', (_, lengthM, widthM, depthM, slope, cubicYards) => {
    expect(yd3(trenchVolumeM3(lengthM, widthM, depthM, depthM, slope))).toBeCloseTo(cubicYards, 2);
  });

  // prismoidal formula, as surveying handbooks print it: V = L / 6 (A1 + 4 Am + A2)
  it.each([
    [30, 0.4, 0.5, 2.1, 1.5],
    [12, 0.3, 1.8, 0.2, 0.75],
    [50, 0.6, 1, 1, 1],
  ])('agrees with the prismoidal formula over %d m', (lengthM, widthM, from, to, slope) => {
    const area = (d: number): number => widthM * d + slope * d * d;
    const prismoidal = (lengthM / 6) * (area(from) + 4 * area((from + to) / 2) + area(to));
    expect(trenchVolumeM3(lengthM, widthM, from, to, slope)).toBeCloseTo(prismoidal, 9);
  });

  it('is less than by average end areas where the depth changes, by m L (d2 - d1)^2 / 6', () => {
    // Peterson, Estimating Trench Excavation: the average-end method; it exceeds the exact volume of a sloped trench
    const [lengthM, widthM, from, to, slope] = [20, 0.5, 0.6, 1.8, 1.5] as const;
    const area = (d: number): number => widthM * d + slope * d * d;
    const averageEnd = (lengthM * (area(from) + area(to))) / 2;
    const exact = trenchVolumeM3(lengthM, widthM, from, to, slope);
    expect(averageEnd - exact).toBeCloseTo((slope * lengthM * (to - from) ** 2) / 6, 9);
  });
});

describe('a list of quantities', () => {
  it('digs 7.407 cubic yards for 100 ft of 1 by 2 ft', () => {
    // 2 ft is the border: the trench is no deeper than that at its middle, so it counts with the deeper class
    expect(yd3(amount([dig()], 'trench-mid'))).toBeCloseTo(7.407, 3);
  });

  it('carts spare soil by its loose volume: 200 cubic yards that swell by 40 % are 280', () => {
    // a worked example on a page on swell; here the spare soil makes room for stone that fills the trench
    const whole = dig({
      lengthM: ft(5400),
      depthStartM: ft(1),
      depthEndM: ft(1),
      bedding: 'gravel',
      stoneM: ft(1),
    });
    expect(yd3(amount([whole], 'trench-shallow'))).toBeCloseTo(200, 6);
    expect(yd3(amount([whole], 'spoil-away', { swellShare: 0.4 }))).toBeCloseTo(280, 6);
  });

  it('takes common earth to swell by a quarter: 7.407 in the bank are 9.259 loose', () => {
    const whole = dig({ bedding: 'gravel', stoneM: ft(2) });
    expect(yd3(amount([whole], 'spoil-away', { soil: 'loam' }))).toBeCloseTo(9.259, 3);
  });

  it('fills 50 ft of a 12 by 18 in French drain about a 4.7 in pipe with 2.555 cubic yards of stone', () => {
    const french = dig({
      lengthM: ft(50),
      depthStartM: ft(2),
      depthEndM: ft(2),
      widthM: fromInches(12),
      pipe: 'hdpe-corrugated',
      // 1.17 times the nominal size is the outside: this size has the 4.7 in of the example
      sizeM: fromInches(4.7 / 1.17),
      perforated: true,
      wrapped: true,
      bedding: 'gravel',
      stoneM: fromInches(18),
    });
    const withWaste = amount([french], 'drain-stone');
    expect(yd3(withWaste / 1.1)).toBeCloseTo(2.555, 3);
    expect(inUnit(withWaste / 1.1, 'm3', 'ton')).toBeCloseTo(3.58, 2);
    // twice width and height and 12 in over itself: 6 ft around
    expect(inUnit(amount([french], 'fabric'), 'm2', 'ft2')).toBeCloseTo(300, 6);
  });

  it('cuts a falling trench where its class changes and loses no soil by it', () => {
    const falling = dig({ depthStartM: ft(1), depthEndM: ft(6) });
    const codes = ['trench-shallow', 'trench-mid', 'trench-deep', 'trench-walled'];
    const lengths = quantitiesOf([falling], { units: 'us' }).filter(({ code }) => codes.includes(code));
    expect(lengths.map(({ code, basis }) => `${code} ${basis}`)).toEqual([
      'trench-shallow 20.0 ft long',
      'trench-mid 40.0 ft long',
      'trench-deep 20.0 ft long',
      'trench-walled 20.0 ft long',
    ]);
    const upright = quantitiesOf([falling], { deepWalls: 'shored' });
    const dug = upright
      .filter(({ code }) => codes.includes(code))
      .reduce((sum, { quantity }) => sum + quantity, 0);
    expect(yd3(dug)).toBeCloseTo((100 * 3.5) / 27, 6);
    // both faces of the last 20 ft, 5.5 ft deep in the middle
    expect(inUnit(amount([falling], 'shoring', { deepWalls: 'shored' }), 'm2', 'ft2')).toBeCloseTo(220, 6);
  });
});

describe('walls', () => {
  // 29 CFR 1926.652(a)(1)(ii): no protective system only in trenches less than 5 ft deep
  it('are protected from exactly 5 ft on, and not at 4.9 ft', () => {
    expect(depthClassOf(ft(5))).toBe('walled');
    expect(depthClassOf(ft(4.9))).toBe('deep');
    expect(amount([dig({ depthStartM: ft(5), depthEndM: ft(5) })], 'trench-walled')).toBeGreaterThan(0);
  });

  it('are laid back by 1.5 to 1 where the soil is not classed (1926.652(b)(1)(i))', () => {
    const deep = dig({ depthStartM: ft(6), depthEndM: ft(6) });
    expect(yd3(amount([deep], 'trench-walled'))).toBeCloseTo(222.22, 2);
  });
});

describe('width to work beside a pipe', () => {
  // ASTM D2321, from memory: the larger of outside + 16 in and 1.25 outside + 12 in; a printed table has 26, 28, 31 in
  it.each([
    [4.215, 20.2],
    [12.5, 28.5],
    [10, 26],
    [12, 28],
    [15, 31],
  ])('is for %d in outside %d in', (outsideIn, widthIn) => {
    expect(toInches(fullTrenchWidthM(fromInches(outsideIn)))).toBeCloseTo(widthIn, 0);
  });
});
