import { describe, expect, it } from 'vitest';
import { waterOf } from '../../../packages/core/src/water/water.js';
import { scene } from '../../scenes/scene.js';

type Properties = Readonly<Record<string, unknown>>;

/** Water of a line of 20 m in which this was seen, by the reel from its outlet end. */
function water(drain: Properties, findings: readonly Properties[] = []) {
  const made = scene().drain({
    id: 'main',
    path: [
      [20, 0],
      [0, 0],
    ],
    material: 'pvc-sdr35',
    size_mm: 100,
    flow: 'as-drawn',
    ...drain,
  });
  for (const finding of findings)
    made.finding({ drain: 'main', from: 'end', date: '2026-05-01', ...finding });
  return waterOf(made.site(), { slopeRatio: 0.01 });
}

describe('where a line has least room for water', () => {
  const where = (...findings: readonly Properties[]) => {
    const { blockage } = water({}, findings).lines[0] ?? {};
    return blockage && { seen: blockage.seen, fromM: blockage.fromM, toM: blockage.toM };
  };
  const fine = { seen: 'fine', at_m: 5, to_m: 15 };
  const mass = { seen: 'mass', at_m: 8, to_m: 9 };

  it('is the gravest part of what was seen, in whatever order it was written down', () => {
    const worst = { seen: 'mass', fromM: expect.closeTo(8, 9), toM: expect.closeTo(9, 9) };
    expect(where(fine, mass)).toEqual(worst);
    expect(where(mass, fine)).toEqual(worst);
  });

  it('is a point where it was seen at one reading', () => {
    expect(where(fine, { seen: 'mass', at_m: 12 })).toEqual({
      seen: 'mass',
      fromM: expect.closeTo(12, 9),
      toM: expect.closeTo(12, 9),
    });
    expect(where()).toBeNull();
  });

  it('is no stretch between two points at which roots were seen', () => {
    const [line] = water({}, [
      { seen: 'mass', at_m: 5, blocked_pct: 40 },
      { seen: 'mass', at_m: 12, blocked_pct: 60 },
    ]).lines;
    expect(line?.blockage).toMatchObject({
      fromM: expect.closeTo(12, 9),
      toM: expect.closeTo(12, 9),
      share: 0.6,
    });
  });
});

describe('what is taken as given about a bore', () => {
  const assumed = (drain: Properties) =>
    water(drain).assumed.flatMap(({ path, value, why }) =>
      path.endsWith('insideDiameterM') ? [[value, why]] : [],
    );

  it('is nothing where the size is in the table of the pipe', () => {
    expect(assumed({})).toEqual([]);
  });

  it('is the outside less a usual wall for a metric size of smooth plastic', () => {
    const [[value, why] = []] = assumed({ size_mm: 110 });
    expect(value).toBeLessThan(0.11);
    expect(value).toBeGreaterThan(0.1);
    expect(why).toContain('metric');
  });

  it('is the size itself where the pipe has no such size', () => {
    expect(assumed({ size_mm: 133 })).toEqual([[0.133, expect.stringContaining('no usual size')]]);
  });
});
