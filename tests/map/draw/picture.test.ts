import { describe, expect, it } from 'vitest';
import { distanceM, shifted } from '../../../apps/map/src/draw/flat.js';
import {
  groundOfPixel,
  readUnderlay,
  scaledByTwo,
  type Underlay,
} from '../../../apps/map/src/draw/picture.js';
import { CORNER } from './lot.js';

const picture: Underlay = {
  image: 'data:image/jpeg;base64,AAAA',
  widthPx: 1600,
  heightPx: 1200,
  centre: CORNER,
  metresPerPixel: 0.05,
  turnDegrees: 0,
  opacity: 0.8,
};

describe('a picture under the plan', () => {
  it('lies with its middle at its centre and its top to the north', () => {
    expect(groundOfPixel(picture, [800, 600])).toEqual(CORNER);
    const corner = groundOfPixel(picture, [0, 0]);
    expect(distanceM(corner, shifted(CORNER, -40, 30))).toBeLessThan(0.001);
  });

  it('turned by a quarter has its top to the east', () => {
    const top = groundOfPixel({ ...picture, turnDegrees: 90 }, [800, 0]);
    expect(distanceM(top, shifted(CORNER, 30, 0))).toBeLessThan(0.001);
  });

  it.each([0, 37, -120])(
    'scaled by two places shows their distance as it is, turned by %d',
    (turnDegrees) => {
      const turned = { ...picture, turnDegrees };
      const pixels = [[200, 300] as const, [1400, 950] as const];
      const [a, b] = pixels.map((at) => groundOfPixel(turned, at)) as [typeof CORNER, typeof CORNER];
      const scaled = scaledByTwo(turned, a, b, 22.86) as Underlay;
      const [after, other] = pixels.map((at) => groundOfPixel(scaled, at)) as [typeof CORNER, typeof CORNER];
      expect(Math.abs(distanceM(after, other) / 22.86 - 1)).toBeLessThan(1e-4);
      expect(distanceM(after, a)).toBeLessThan(0.001);
    },
  );

  it('is not scaled by one place, or to nothing', () => {
    expect(scaledByTwo(picture, CORNER, CORNER, 10)).toBeNull();
    expect(scaledByTwo(picture, CORNER, shifted(CORNER, 9, 0), 0)).toBeNull();
    expect(scaledByTwo(picture, CORNER, shifted(CORNER, 9, 0), Number.NaN)).toBeNull();
  });

  it('comes back from the site file as it was', () => {
    expect(readUnderlay({ underlay: JSON.parse(JSON.stringify(picture)) })).toEqual(picture);
  });

  it.each([
    ['an address elsewhere', { image: 'https://example.invalid/a.png' }],
    ['a picture that can hold script', { image: 'data:image/svg+xml;base64,AAAA' }],
    ['something hung on the address', { image: 'data:image/png;base64,AA") url(x' }],
    ['no size', { widthPx: 0 }],
    ['a place off the earth', { centre: [0, 99] }],
    ['no scale', { metresPerPixel: null }],
  ])('is left out with %s', (_, wrong) => {
    expect(readUnderlay({ underlay: { ...picture, ...wrong } })).toBeNull();
  });
});
