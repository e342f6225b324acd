// The same through GEOS compiled to WebAssembly: 64-gons in plane metres, intersections measured.
import { planeFor } from '@rootreach/core';
import Flatbush from 'flatbush';
import initGeosJs from 'geos-wasm';

const CORNERS = 64;
const COS = Array.from({ length: CORNERS + 1 }, (_, k) => Math.cos((2 * Math.PI * k) / CORNERS));
const SIN = Array.from({ length: CORNERS + 1 }, (_, k) => Math.sin((2 * Math.PI * k) / CORNERS));

export async function makeOverlapGeos() {
  const geos = await initGeosJs();
  const buffer = geos.Module._malloc(8 * 2 * (CORNERS + 1));
  const value = geos.Module._malloc(8);

  /** Coordinates handed over in one copy. */
  const sequence = (xy) => {
    geos.Module.HEAPF64.set(xy, buffer / 8);
    return geos.GEOSCoordSeq_copyFromBuffer(buffer, xy.length / 2, 0, 0);
  };
  const polygon = (x, y, r) => {
    const xy = new Float64Array(2 * (CORNERS + 1));
    for (let k = 0; k < CORNERS; k++) {
      xy[2 * k] = x + r * COS[k];
      xy[2 * k + 1] = y + r * SIN[k];
    }
    xy[2 * CORNERS] = xy[0];
    xy[2 * CORNERS + 1] = xy[1];
    return geos.GEOSGeom_createPolygon(geos.GEOSGeom_createLinearRing(sequence(xy)), 0, 0);
  };

  return (trees, lines) => {
    const index = new Flatbush(trees.length);
    for (const { position, radiusM } of trees) {
      const dLat = radiusM / 111_000;
      const dLon = radiusM / 75_000;
      index.add(position[0] - dLon, position[1] - dLat, position[0] + dLon, position[1] + dLat);
    }
    index.finish();
    let pairs = 0;
    let metres = 0;
    for (const path of lines) {
      const plane = planeFor(path);
      const px = (lon) => (lon - plane.lon) * plane.metresPerDegreeLon;
      const py = (lat) => (lat - plane.lat) * plane.metresPerDegreeLat;
      const line = geos.GEOSGeom_createLineString(
        sequence(Float64Array.from(path.flatMap(([lon, lat]) => [px(lon), py(lat)]))),
      );
      const lons = path.map((p) => p[0]);
      const lats = path.map((p) => p[1]);
      for (const i of index.search(
        Math.min(...lons),
        Math.min(...lats),
        Math.max(...lons),
        Math.max(...lats),
      )) {
        const { position, radiusM } = trees[i];
        const area = polygon(px(position[0]), py(position[1]), radiusM);
        const inside = geos.GEOSIntersection(line, area);
        geos.GEOSLength(inside, value);
        const sum = geos.Module.getValue(value, 'double');
        geos.GEOSGeom_destroy(inside);
        geos.GEOSGeom_destroy(area);
        if (sum > 0) pairs++;
        metres += sum;
      }
      geos.GEOSGeom_destroy(line);
    }
    return { pairs, metres };
  };
}
