import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dig } from '../../../packages/core/src/model/dig.js';
import type { Quantity } from '../../../packages/core/src/model/quantity.js';
import type { QuantityOptions } from '../../../packages/core/src/quantities/options.js';
import { quantitiesOf } from '../../../packages/core/src/quantities/quantities-of.js';
import { sampleDig } from './sample-dig.js';

function of(code: string, digs: readonly Dig[], options: QuantityOptions = {}): Quantity | undefined {
  return quantitiesOf(digs, options).find((line) => line.code === code);
}
const amount = (code: string, digs: readonly Dig[], options: QuantityOptions = {}): number =>
  of(code, digs, options)?.quantity ?? 0;

describe('a quantity list', () => {
  it('holds what a short yard line takes, in the order of the work', () => {
    const codes = quantitiesOf([sampleDig({ fittings: [{ type: 'basin', count: 1 }] })]).map(
      ({ code }) => code,
    );
    expect(codes).toEqual([
      'set-up',
      'utility-locate',
      'trench-shallow',
      'bedding-gravel',
      'pipe-pvc-sdr35-4in',
      'basin',
      'warning-tape',
      'backfill',
      'spoil-away',
      'reinstate-lawn',
      'crew-hours',
      'digger-hours',
    ]);
  });

  it('leaves no soil over and none short: dug is filled back and carted off', () => {
    const depth = fc.double({ min: 0.3, max: 1.4, noNaN: true });
    fc.assert(
      fc.property(depth, depth, fc.constantFrom('native', 'sand', 'gravel'), (from, to, bedding) => {
        const digs = [sampleDig({ depthStartM: from, depthEndM: to, bedding })];
        const lines = quantitiesOf(digs, { swellShare: 0 });
        const sum = (start: string): number =>
          lines.filter(({ code }) => code.startsWith(start)).reduce((all, { quantity }) => all + quantity, 0);
        expect(sum('backfill') + sum('spoil-away')).toBeCloseTo(sum('trench-'), 9);
      }),
    );
  });

  it('is the same for one dig and for the same dig cut in two', () => {
    const whole = quantitiesOf([sampleDig({ depthStartM: 0.4, depthEndM: 0.8 })]);
    const halves = quantitiesOf([
      sampleDig({ lengthM: 5, depthStartM: 0.4, depthEndM: 0.6 }),
      sampleDig({ lengthM: 5, depthStartM: 0.6, depthEndM: 0.8 }),
    ]);
    for (const { code, quantity } of whole) {
      expect(halves.find((line) => line.code === code)?.quantity, code).toBeCloseTo(quantity, 6);
    }
  });

  it('keeps trenches of different widths apart under one code', () => {
    const lines = quantitiesOf([sampleDig({ widthM: 0.3 }), sampleDig({ widthM: 0.6 })]);
    expect(lines.filter(({ code }) => code === 'trench-shallow').map(({ text }) => text)).toEqual([
      'trench dug by machine, up to 0.6 m deep, 0.30 m wide',
      'trench dug by machine, up to 0.6 m deep, 0.60 m wide',
    ]);
  });

  it('makes a trench wide enough to work in once it is too deep to lay from above', () => {
    expect(
      of('trench-deep', [sampleDig({ depthStartM: 1.3, depthEndM: 1.3 })], { units: 'us' })?.text,
    ).toContain('20 in wide');
    expect(of('trench-shallow', [sampleDig()], { units: 'us' })?.text).toContain('12 in wide');
  });

  it('cuts paving on both sides and makes it good', () => {
    const paved = [sampleDig({ surface: 'paving', widthM: 0.3 })];
    expect(amount('saw-cut', paved)).toBeCloseTo(20, 9);
    // 0.3 m of trench and 6 in either side
    expect(amount('reinstate-paving', paved)).toBeCloseTo(10 * (0.3 + 0.3048), 9);
    expect(amount('reinstate-lawn', paved)).toBe(0);
  });

  it('digs by hand and cuts roots clean where it is told to', () => {
    const byHand = [sampleDig({ handDig: true })];
    expect(amount('root-cutting', byHand)).toBeCloseTo(10, 9);
    expect(amount('trench-by-hand-shallow', byHand)).toBeCloseTo(amount('trench-shallow', [sampleDig()]), 9);
    expect(amount('crew-hours', byHand)).toBeGreaterThan(2 * amount('crew-hours', [sampleDig()]));
  });

  it('opens nothing but two pits where it bores', () => {
    const bored = quantitiesOf([sampleDig({ bored: true, bedding: 'native' })]).map(({ code }) => code);
    expect(bored).toEqual([
      'set-up',
      'utility-locate',
      'bore',
      'bore-pit',
      'pipe-pvc-sdr35-4in',
      'crew-hours',
    ]);
  });

  it('buys pipe of one kind together, whatever it is laid under', () => {
    const lines = quantitiesOf([sampleDig({ lengthM: 5 }), sampleDig({ lengthM: 5, surface: 'paving' })], {
      pieceM: 6,
    });
    expect(lines.find(({ code }) => code === 'pipe-pvc-sdr35-4in')).toMatchObject({
      quantity: 12,
      basis: '2 pieces of 6.00 m for 10.00 m, 2.00 m cut off',
    });
  });

  it('measures a barrier by its face, and old pipe by its length', () => {
    const barrier = sampleDig({ pipe: null, barrierM: 0.9, bedding: 'native', oldPipeM: 4 });
    expect(amount('root-barrier', [barrier])).toBeCloseTo(9, 9);
    expect(amount('old-pipe-out', [barrier])).toBe(4);
    expect(of('warning-tape', [barrier])).toBeUndefined();
  });

  it('comes near what crews say they get done: 100 ft of downspout line in about a day', () => {
    // from memory: 100 to 150 ft a day for three with a trencher; two with a small digger take longer
    const hours = amount('crew-hours', [sampleDig({ lengthM: 30.48, depthStartM: 0.45, depthEndM: 0.45 })]);
    expect(hours).toBeGreaterThan(6);
    expect(hours).toBeLessThan(14);
  });

  it.each([{ lengthM: -1 }, { depthEndM: Number.NaN }, { sizeM: Infinity }])('refuses %o', (change) => {
    expect(() => quantitiesOf([sampleDig(change)])).toThrow(RangeError);
  });

  it.each([{ swellShare: -0.1 }, { wallSlope: Number.NaN }, { pieceM: 0 }])(
    'refuses the option %o',
    (options) => {
      expect(() => quantitiesOf([sampleDig()], options)).toThrow(RangeError);
    },
  );
});
