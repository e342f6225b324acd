import { localPlane } from '../local-plane.mjs';
import { seeded } from '../seeded.mjs';
import { NOTE } from './plan.mjs';

/* Open ocean, so that it is no real place. */
const ORIGIN = { lon: -68, lat: 40.2 };

/** An empty drawing: takes features in metres and keeps them in degrees; its chance comes from the seed. */
export function emptySheet(seed, origin = ORIGIN) {
  const { toLonLat } = localPlane(origin.lon, origin.lat);
  const random = seeded(seed);
  const features = [];
  const add = (type, coordinates, properties) =>
    features.push({
      type: 'Feature',
      properties: { ...properties, note: NOTE },
      geometry: { type, coordinates },
    });
  return {
    features,
    between: (low, high) => low + (high - low) * random(),
    pick: (list) => list[Math.floor(random() * list.length)],
    chance: (share) => random() < share,
    addPoint: (at, properties) => add('Point', toLonLat(at), properties),
    addLine: (path, properties) => add('LineString', path.map(toLonLat), properties),
    /** An upright rectangle, its ring counter-clockwise. */
    addRectangle({ west, south, east, north }, properties) {
      const ring = [
        [west, south],
        [east, south],
        [east, north],
        [west, north],
        [west, south],
      ];
      add('Polygon', [ring.map(toLonLat)], properties);
    },
  };
}
