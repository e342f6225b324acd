import { describe, expect, it } from 'vitest';
import { runoffRow, runoffTable, type SurfaceKey } from '../../packages/core/src/tables/runoff.js';

/**
 * Runoff coefficients of the civil engineers' manual for storms of 5 to 10 years, as course texts repeat them.
 * Copied numbers: no tolerance.
 */
const printed: Readonly<Partial<Record<SurfaceKey, readonly [number, number]>>> = {
  asphalt: [0.7, 0.95],
  concrete: [0.8, 0.95],
  brick: [0.7, 0.85],
  'lawn-sandy-flat': [0.05, 0.1],
  'lawn-sandy-average': [0.1, 0.15],
  'lawn-sandy-steep': [0.15, 0.2],
  'lawn-heavy-flat': [0.13, 0.17],
  'lawn-heavy-average': [0.18, 0.22],
  'lawn-heavy-steep': [0.25, 0.35],
};

describe('runoff coefficients', () => {
  it.each(Object.entries(printed))('%s', (key, [low, high]) => {
    const row = runoffRow(key as SurfaceKey);
    expect([row.low.value, row.high.value]).toEqual([low, high]);
  });

  // the manual prints 0.75 to 0.95; the plumbing codes count all of the rain
  it('of roofs reach from the manual to the plumbing code', () => {
    const { low, mid, high } = runoffRow('roof');
    expect([low.value, mid.value, high.value]).toEqual([0.75, 0.95, 1]);
  });

  it('stand in order within each row, and roof or paving is no narrower than its parts', () => {
    for (const { low, mid, high } of runoffTable) {
      expect(low.value).toBeLessThanOrEqual(mid.value);
      expect(mid.value).toBeLessThanOrEqual(high.value);
    }
    const both = runoffRow('roof-or-paving');
    for (const key of ['roof', 'asphalt', 'concrete', 'brick'] as const) {
      expect(both.low.value).toBeLessThanOrEqual(runoffRow(key).low.value);
      expect(both.high.value).toBeGreaterThanOrEqual(runoffRow(key).high.value);
    }
  });

  it('are refused for a surface that is not in the table', () => {
    expect(() => runoffRow('moss' as SurfaceKey)).toThrow("no surface 'moss'");
  });
});
