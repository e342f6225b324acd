/** A seeded lot for routes: a square of ground with a house, a drive, a walk, a water line, trees and spot levels. */

/** Mulberry32: the same numbers on every machine. */
function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

const ORIGIN = [-40, 30];
const PER_LAT = 110_852;
const PER_LON = 96_486;
const at = (x, y) => [ORIGIN[0] + x / PER_LON, ORIGIN[1] + y / PER_LAT];
const feature = (type, coordinates, properties) => ({
  type: 'Feature',
  properties,
  geometry: { type, coordinates },
});
const ring = (west, south, east, north) => [
  [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south],
  ].map(([x, y]) => at(x, y)),
];

const SPECIES = [
  'Quercus alba',
  'Acer rubrum',
  'Salix babylonica',
  'Ulmus americana',
  'Malus domestica',
  'Pinus strobus',
  'Betula nigra',
];

/** The lot as a site file, its source behind the house and its outlet at the front. */
export function routeLot({ seed, sizeM = 60, trees = 20, levels = true }) {
  const random = seeded(seed);
  const between = (low, high) => low + random() * (high - low);
  const house = [
    sizeM * between(0.3, 0.36),
    sizeM * between(0.4, 0.46),
    sizeM * between(0.58, 0.68),
    sizeM * between(0.62, 0.7),
  ];
  const features = [
    feature('Polygon', ring(0, 0, sizeM, sizeM), { kind: 'obstacle', type: 'boundary', id: 'lot' }),
    feature('Polygon', ring(...house), { kind: 'obstacle', type: 'building', id: 'house' }),
    feature('Polygon', ring(house[0], 0, house[0] + 4, house[1]), {
      kind: 'obstacle',
      type: 'paving',
      id: 'drive',
    }),
    feature('Polygon', ring(house[2] - 3, 0, house[2] - 1.8, house[1]), {
      kind: 'obstacle',
      type: 'paving',
      id: 'walk',
    }),
    feature('LineString', [at(house[2] + 4, 0), at(house[2] + 4, house[3])], {
      kind: 'obstacle',
      type: 'utility',
      id: 'water',
    }),
  ];
  const from = [between(house[0] + 1, house[2] - 1), house[3] + between(1, 6)];
  const to = [between(0.1, 0.9) * sizeM, 1];
  const clear = (x, y, dM) =>
    Math.hypot(x - from[0], y - from[1]) > 3 * dM + 1.5 &&
    Math.hypot(x - to[0], y - to[1]) > 3 * dM + 1.5 &&
    (x < house[0] - 1 || x > house[2] + 1 || y < house[1] - 1 || y > house[3] + 1);
  for (let n = 0; n < trees; ) {
    const [x, y, dM] = [between(1, sizeM - 1), between(1, sizeM - 1), between(0.1, 0.8)];
    if (!clear(x, y, dM)) continue;
    const species = SPECIES[Math.floor(random() * SPECIES.length)];
    features.push(
      feature('Point', at(x, y), { kind: 'tree', id: `t${n}`, species, dbh_cm: Math.round(dM * 100) }),
    );
    n++;
  }
  if (levels) {
    const slope = between(0.02, 0.05);
    for (const [i, [x, y]] of [
      [2, 2],
      [sizeM - 2, 2],
      [2, sizeM - 2],
      [sizeM - 2, sizeM - 2],
      [sizeM / 2, sizeM / 3],
      [from[0], from[1]],
    ].entries()) {
      const elevation = 30 + slope * y + between(-0.1, 0.1);
      features.push(feature('Point', at(x, y), { kind: 'level', id: `l${i}`, elevation_m: elevation }));
    }
  }
  features.push(
    feature('Point', at(...from), { kind: 'fitting', type: 'downspout', id: 'source' }),
    feature('Point', at(...to), { kind: 'fitting', type: 'outlet', id: 'outlet' }),
  );
  return { type: 'FeatureCollection', rootreach: { schema: 1, invented: true }, features };
}
