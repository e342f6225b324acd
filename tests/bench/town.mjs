// A seeded town for the benchmarks: streets with lines along them and street trees in rows beside the lines,
// not strewn evenly. Written as two GeoJSON texts, trees and lines.

/** Small seeded generator (xorshift32): the same town on every machine. */
function stream(seed) {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
}

const SPECIES = [
  'Acer platanoides',
  'Acer rubrum',
  'Quercus rubra',
  'Quercus palustris',
  'Tilia cordata',
  'Ulmus americana',
  'Gleditsia triacanthos',
  'Platanus x acerifolia',
  'Ginkgo biloba',
  'Prunus serrulata',
  'Betula nigra',
  'Populus deltoides',
];
const MATERIALS = ['clay', 'concrete', 'pvc-sdr35', 'pvc-thin-wall', 'hdpe-corrugated', 'cast-iron'];
const LAT = 47.4;
const LON = 8.5;
const M_PER_LAT = 111_180;
const M_PER_LON = 75_460;

/** `trees` and `lines` are counts; returns the two texts. */
export function makeTown({ trees, lines, seed }) {
  const u = stream(seed);
  const degrees = (x, y) => [
    Number((LON + x / M_PER_LON).toFixed(8)),
    Number((LAT + y / M_PER_LAT).toFixed(8)),
  ];
  const perStreet = 10;
  const streets = Math.ceil(lines / perStreet);
  const side = Math.sqrt(streets) * 180;
  const treeFeatures = [];
  const lineFeatures = [];
  for (let s = 0; s < streets; s++) {
    const x0 = u() * side;
    const y0 = u() * side;
    const angle = (u() < 0.5 ? 0 : Math.PI / 2) + (u() - 0.5) * 0.2;
    const [c, d] = [Math.cos(angle), Math.sin(angle)];
    const at = (along, across) => degrees(x0 + along * c - across * d, y0 + along * d + across * c);
    let along = 0;
    for (let i = 0; i < perStreet && lineFeatures.length < lines; i++) {
      const length = 20 + 20 * u();
      const n = lineFeatures.length;
      const path = [at(along, 0), at(along + length / 2, (u() - 0.5) * 1.5), at(along + length, 0)];
      lineFeatures.push({
        type: 'Feature',
        properties: {
          kind: 'drain',
          id: `line-${n}`,
          material: MATERIALS[Math.floor(u() * MATERIALS.length)],
          size_mm: 150,
          depth_start_m: Number((0.5 + u()).toFixed(2)),
          depth_end_m: Number((0.7 + u()).toFixed(2)),
          installed: 1950 + Math.floor(u() * 70),
          flow: 'as-drawn',
        },
        geometry: { type: 'LineString', coordinates: path },
      });
      along += length;
    }
    const wanted = Math.round(((s + 1) * trees) / streets) - treeFeatures.length;
    for (let k = 0; k < wanted; k++) {
      const n = treeFeatures.length;
      const across = (u() < 0.5 ? -1 : 1) * (2.5 + 5 * u());
      treeFeatures.push({
        type: 'Feature',
        properties: {
          kind: 'tree',
          id: `tree-${n}`,
          species: SPECIES[Math.floor(u() * SPECIES.length)],
          dbh_cm: 5 + Math.floor(80 * u() * u()),
        },
        geometry: { type: 'Point', coordinates: at((along * (k + u())) / wanted, across) },
      });
    }
  }
  const collection = (features) =>
    `{"type":"FeatureCollection","features":[\n${features.map((f) => JSON.stringify(f)).join(',\n')}\n]}\n`;
  return { trees: collection(treeFeatures), lines: collection(lineFeatures) };
}
