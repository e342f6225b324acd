import { describe, expect, it } from 'vitest';
import { openSite } from '../../apps/map/src/open-site.js';
import { placeLabels, profileScale, rows } from '../../apps/map/src/panels/profile-scale.js';
import { siteText } from './site-text.js';

const { result } = openSite([siteText('corner-lot')], '2026-11-25').opened;

describe('the profile', () => {
  it('lays every line over the same width, outlet end on the left', () => {
    for (const line of result.lines) {
      const scale = profileScale(line, 400, 'metric');
      expect(scale.x(0)).toBe(scale.left);
      expect(scale.x(line.lengthM)).toBeCloseTo(scale.right, 9);
    }
  });

  it('keeps ground above pipe, pipe above odds, and ten in ten above none', () => {
    for (const line of result.lines) {
      const scale = profileScale(line, 358, 'us');
      for (const atM of [0, line.lengthM / 2, line.lengthM]) {
        const y = scale.depthY(scale.depthAt(atM));
        expect(y).toBeGreaterThanOrEqual(rows.ground);
        expect(y).toBeLessThanOrEqual(rows.pipeBottom);
      }
      expect(scale.scoreY(0)).toBe(rows.oddsBottom);
      expect(scale.scoreY(100)).toBe(rows.oddsTop);
    }
  });

  it('numbers the stations in the chosen unit and none past the end', () => {
    for (const line of result.lines) {
      for (const units of ['us', 'metric'] as const) {
        const { ticks } = profileScale(line, 358, units);
        expect(ticks[0]).toEqual({ atM: 0, text: '0' });
        expect(ticks.length).toBeLessThan(9);
        for (const { atM, text } of ticks) {
          expect(atM).toBeLessThanOrEqual(line.lengthM + 1e-9);
          expect(Number(text) * (units === 'us' ? 0.3048 : 1)).toBeCloseTo(atM, 9);
        }
      }
    }
  });

  it('never lets two labels overlap and leaves out what finds no room', () => {
    const wanted = Array.from({ length: 30 }, (_, i) => ({ x: (i * 37) % 300, width: 60 }));
    const placed = placeLabels(wanted, 0, 300, 2);
    const spans = placed.flatMap((label, i) => (label ? [{ ...label, width: wanted[i]?.width ?? 0 }] : []));
    expect(spans.length).toBeGreaterThan(4);
    for (const [i, one] of spans.entries()) {
      expect(one.x - one.width / 2).toBeGreaterThanOrEqual(0);
      expect(one.x + one.width / 2).toBeLessThanOrEqual(300);
      for (const other of spans.slice(i + 1)) {
        if (other.row === one.row) expect(Math.abs(other.x - one.x)).toBeGreaterThanOrEqual(60);
      }
    }
  });
});
