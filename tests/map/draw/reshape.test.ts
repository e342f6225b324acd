import { describe, expect, it } from 'vitest';
import { distanceM, shifted } from '../../../apps/map/src/draw/flat.js';
import { outlineOf } from '../../../apps/map/src/draw/outline.js';
import {
  dropPlace,
  insertPlace,
  movePlace,
  moveWhole,
  squareArea,
  turnFlow,
} from '../../../apps/map/src/draw/reshape.js';
import { type FeatureRef, find, type SiteDocument } from '../../../apps/map/src/sketch/document.js';
import { area, CORNER, documentOf, line, point } from './lot.js';

const m = (x: number, y: number) => shifted(CORNER, x, y);
const main: FeatureRef = { kind: 'drain', id: 'main' };
const basin: FeatureRef = { kind: 'fitting', id: 'B1' };
const house: FeatureRef = { kind: 'obstacle', id: 'house' };
const site = documentOf(
  line({ ...main, depth_start_m: 0.4, own: 'kept' }, [m(0, 0), m(10, 0), m(10, 10)]),
  point({ ...basin, type: 'basin' }, m(10, 0)),
  point({ kind: 'fitting', type: 'outlet', id: 'far' }, m(30, 0)),
  area({ ...house, type: 'building' }, [m(-9, 0), m(-3, 0.2), m(-3, 5), m(-9, 5)]),
);
const outline = (now: SiteDocument, ref: FeatureRef) => {
  const feature = find(now, ref);
  return feature ? outlineOf(feature) : [];
};

describe('changing a shape', () => {
  it('moves a place of a line with the fitting on it, and nothing else', () => {
    const now = movePlace(main, 1, m(12, 1))(site);
    expect(outline(now, main)[1]).toEqual(m(12, 1));
    expect(outline(now, basin)[0]).toEqual(m(12, 1));
    expect(outline(now, { kind: 'fitting', id: 'far' })).toEqual(
      outline(site, { kind: 'fitting', id: 'far' }),
    );
    expect(find(now, main)?.properties['own']).toBe('kept');
    expect(outline(site, main)[1]).toEqual(m(10, 0));
  });

  it('moves a fitting without its line', () => {
    const now = movePlace(basin, 0, m(11, 0))(site);
    expect(outline(now, main)).toEqual(outline(site, main));
    expect(outline(now, basin)[0]).toEqual(m(11, 0));
  });

  it('moves a whole line with the fittings on it, by so many metres', () => {
    const now = moveWhole(main, 2, -3)(site);
    for (const [i, at] of outline(now, main).entries()) {
      expect(distanceM(at, outline(site, main)[i] ?? CORNER)).toBeCloseTo(Math.hypot(2, 3), 3);
    }
    expect(distanceM(outline(now, basin)[0] ?? CORNER, m(12, -3))).toBeLessThan(0.001);
  });

  it('puts a place in and takes it out again', () => {
    const more = insertPlace(main, 1, m(5, 1))(site);
    expect(outline(more, main)).toHaveLength(4);
    expect(outline(dropPlace(main, 1)(more), main)).toEqual(outline(site, main));
  });

  it('keeps two places of a line and three corners of an area', () => {
    const two = dropPlace(main, 1)(site);
    expect(dropPlace(main, 0)(two)).toBe(two);
    const three = dropPlace(house, 0)(site);
    expect(outline(three, house)).toHaveLength(3);
    expect(dropPlace(house, 0)(three)).toBe(three);
  });

  it('closes the ring of an area, counterclockwise, after its first corner was moved', () => {
    const now = movePlace(house, 0, m(-8, 1))(site);
    const geometry = find(now, house)?.geometry;
    const ring = geometry?.type === 'Polygon' ? (geometry.coordinates[0] ?? []) : [];
    expect(ring[0]).toEqual(ring.at(-1));
    // RFC 7946, 3.1.6
    const twice = ring.slice(1).reduce((sum, [x = 0, y = 0], i) => {
      const [x0 = 0, y0 = 0] = ring[i] ?? [];
      return sum + (x0 - CORNER[0]) * (y - CORNER[1]) - (x - CORNER[0]) * (y0 - CORNER[1]);
    }, 0);
    expect(twice).toBeGreaterThan(0);
  });

  it('turns the flow round and back, and touches no place and no depth', () => {
    const turned = turnFlow(main)(site);
    expect(find(turned, main)?.properties['flow']).toBe('reversed');
    expect(outline(turned, main)).toEqual(outline(site, main));
    expect(find(turned, main)?.properties['depth_start_m']).toBe(0.4);
    expect(find(turnFlow(main)(turned), main)?.properties['flow']).toBe('as-drawn');
  });

  it('keeps the height of a place that has one', () => {
    const high = documentOf({
      ...line({ ...main }, []),
      geometry: {
        type: 'LineString',
        coordinates: [
          [...m(0, 0), 7],
          [...m(9, 0), 8],
        ],
      },
    });
    const geometry = find(movePlace(main, 0, m(1, 1))(high), main)?.geometry;
    expect(geometry?.type === 'LineString' && geometry.coordinates.map(([, , z]) => z)).toEqual([7, 8]);
  });

  it('squares an area, and leaves a line', () => {
    expect(outline(squareArea(house)(site), house)).toHaveLength(4);
    expect(squareArea(main)(site)).toBe(site);
  });
});
