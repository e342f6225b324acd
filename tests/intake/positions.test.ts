import { describe, expect, it } from 'vitest';
import { fromHexWkb } from '../../packages/intake/src/positions/ewkb.js';
import { epsgNumber, projectionOf } from '../../packages/intake/src/positions/projection.js';

/** Metres between two places, near enough for a tolerance. */
function apartM([lon, lat]: readonly [number, number], [lon2, lat2]: readonly [number, number]): number {
  const north = (lat2 - lat) * 111_320;
  const east = (lon2 - lon) * 111_320 * Math.cos((lat * Math.PI) / 180);
  return Math.hypot(north, east);
}

describe('a position on a grid', () => {
  // PROJ 9.1.1, `cs2cs EPSG:n +proj=longlat +datum=WGS84`; 5 m allowed where PROJ itself loads a grid of shifts
  it.each([
    [27700, 530000, 180000, -0.1283539, 51.5039908, 5],
    [2154, 652000, 6862000, 2.345812, 48.8562481, 0.1],
    [28992, 121000, 487000, 4.8879708, 52.3698262, 1],
    [25833, 391000, 5820000, 13.3935435, 52.5191962, 0.1],
    [2056, 2683000, 1248000, 8.5376903, 47.3776072, 2],
    [26918, 583000, 4507000, -74.0174029, 40.7097357, 2],
    [31370, 149000, 170000, 4.3545547, 50.8404105, 5],
    [2227, 6005000, 2112000, -122.4262904, 37.7794322, 2],
  ])('of EPSG %i is where PROJ puts it', (code, x, y, lon, lat, tolerance) => {
    const [gotLon, gotLat] = projectionOf(`EPSG:${code}`)?.toLonLat(x, y) ?? [0, 0];
    expect(apartM([lon, lat], [gotLon, gotLat])).toBeLessThan(tolerance);
  });

  // NYC Open Data, 2015 Street Tree Census: both pairs of coordinates of the same trees
  it.each([
    [956424.2066, 168759.486, -74.10024691, 40.6298386],
    [1046194.69, 226005.9581, -73.77630798, 40.78679319],
    [1012707.841, 239474.9043, -73.89717699, 40.82393298],
  ])('in feet of New York is where the census has it', (x, y, lon, lat) => {
    const [gotLon, gotLat] = projectionOf('2263')?.toLonLat(x, y) ?? [0, 0];
    expect(apartM([lon, lat], [gotLon, gotLat])).toBeLessThan(0.5);
  });

  it('is known by any way of writing its code, and only then', () => {
    for (const text of [
      'EPSG:2263',
      'epsg 2263',
      '2263',
      'urn:ogc:def:crs:EPSG::2263',
      'urn:ogc:def:crs:EPSG:9.1:2263',
    ])
      expect(epsgNumber(text)).toBe(2263);
    expect(epsgNumber('urn:ogc:def:crs:OGC:1.3:CRS84')).toBe(4326);
    expect(projectionOf('EPSG:99999')).toBeNull();
    expect(projectionOf('nonsense')).toBeNull();
    expect(projectionOf('+proj=utm +zone=18 +datum=WGS84')?.toLonLat(500_000, 0)[0]).toBeCloseTo(-75, 6);
  });
});

describe('well-known binary in hex', () => {
  // OGC Simple Features (OGC 06-103r4), 8.2: byte order, type, x, y; written out by hand
  const point = '0101000000000000000000F03F0000000000000040';
  it('is read in the plain and in the extended form', () => {
    expect(fromHexWkb(point)).toEqual({ srid: null, geometry: { type: 'Point', coordinates: [1, 2] } });
    expect(fromHexWkb('0101000020E6100000000000000000F03F0000000000000040')).toEqual({
      srid: 4326,
      geometry: { type: 'Point', coordinates: [1, 2] },
    });
    // big-endian
    expect(fromHexWkb('00000000013FF00000000000004000000000000000')?.geometry).toEqual({
      type: 'Point',
      coordinates: [1, 2],
    });
    const line = '010200000002000000000000000000F03F000000000000004000000000000008400000000000001040';
    expect(fromHexWkb(line)?.geometry).toEqual({
      type: 'LineString',
      coordinates: [
        [1, 2],
        [3, 4],
      ],
    });
  });

  it('is null where the bytes end early, lie about counts or are none', () => {
    expect(fromHexWkb(point.slice(0, -2))).toBeNull();
    expect(fromHexWkb('0102000000FFFFFFFF000000000000F03F0000000000000040')).toBeNull();
    expect(fromHexWkb('hello')).toBeNull();
  });
});
