import { planeFor, polylineOf } from '@rootreach/core';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { areaM2, distanceM, legsM, lengthM, shifted } from '../../../apps/map/src/draw/flat.js';
import type { At } from './lot.js';

const wgs84 = geodesic.Geodesic.WGS84;

describe('lengths shown while drawing', () => {
  // GeographicLib solves the geodesic on the WGS 84 ellipsoid to 15 nm (Karney 2013).
  it.each([0, 12, 33.5, 47.4, 60, 70])(
    'agree with the geodesic to a thousandth at latitude %d, in every direction',
    (lat) => {
      for (let bearing = 0; bearing < 360; bearing += 15) {
        for (const truth of [0.5, 12, 180]) {
          const { lon2, lat2 } = wgs84.Direct(lat, -60, bearing, truth) as { lon2: number; lat2: number };
          const ours = distanceM([-60, lat], [lon2, lat2]);
          expect(Math.abs(ours / truth - 1)).toBeLessThan(1e-3);
        }
      }
    },
  );

  it('are those by which the model measures the same line', () => {
    const path: At[] = [
      [-60, 40],
      [-59.9998, 40.0001],
      [-59.9995, 40.00005],
    ];
    const { s } = polylineOf(path, planeFor(path), false);
    expect(Math.abs(lengthM(path) / (s.at(-1) as number) - 1)).toBeLessThan(1e-3);
    expect(legsM(path)).toHaveLength(2);
    expect(lengthM(path.slice(0, 1))).toBe(0);
  });

  it('come back as they were moved, and an area is its sides multiplied', () => {
    const at: At = [-60, 40];
    const ring = [at, shifted(at, 12, 0), shifted(at, 12, 8), shifted(at, 0, 8)] as const;
    expect(distanceM(at, ring[2])).toBeCloseTo(Math.hypot(12, 8), 3);
    expect(areaM2(ring)).toBeCloseTo(96, 2);
    expect(areaM2(ring.slice(0, 2))).toBe(0);
  });
});
