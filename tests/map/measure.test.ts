import type { Units } from '@rootreach/core';
import { describe, expect, it } from 'vitest';
import * as measure from '../../apps/map/src/measure.js';

const { roundStep, unitM } = measure;
/** With common spaces: the page keeps number and unit together by unbreakable ones. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const length = (m: number, units: Units) => plain(measure.length(m, units));
const depth = (m: number, units: Units) => plain(measure.depth(m, units));
const girth = (m: number, units: Units) => plain(measure.girth(m, units));
const span = (from: number, to: number, units: Units) => plain(measure.span(from, to, units));

// NIST SP 811, appendix B: 1 ft = 0.3048 m and 1 in = 2.54 cm, both exact.
describe('lengths on the page', () => {
  it('are feet and inches for one crew, metres and centimetres for the other', () => {
    expect(length(3.048, 'us')).toBe('10 ft');
    expect(length(3.048, 'metric')).toBe('3 m');
    expect(depth(0.6096, 'us')).toBe('24 in');
    expect(depth(0.6096, 'metric')).toBe('61 cm');
    expect(girth(0.3556, 'us')).toBe('14 in');
    expect(girth(0.3556, 'metric')).toBe('36 cm');
  });

  it('have one decimal below ten feet and none above', () => {
    expect(length(2.7, 'us')).toBe('8.9 ft');
    expect(length(3.04, 'us')).toBe('10 ft');
    expect(length(30.3, 'us')).toBe('99 ft');
  });

  it('name the unit of a span once', () => {
    expect(span(5.312, 7.968, 'us')).toBe('17 to 26 ft');
    expect(span(0, 2.66, 'metric')).toBe('0 to 2.7 m');
  });

  it('switch to the larger unit where the smaller would be long', () => {
    expect(depth(1.2192, 'us')).toBe('48 in');
    expect(depth(1.5, 'us')).toBe('4.9 ft');
    expect(depth(1.2, 'metric')).toBe('1.20 m');
  });

  it('lay a grid of one, two or five units', () => {
    expect(unitM('us')).toBeCloseTo(0.3048, 12);
    expect(unitM('metric')).toBe(1);
    expect([0.2, 1, 1.1, 3, 6, 11, 480].map(roundStep)).toEqual([1, 1, 2, 5, 10, 20, 500]);
  });
});
