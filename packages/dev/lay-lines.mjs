/*
 * Lays invented drain lines beside the trees of an inventory, to try the program on a town: trees in one file,
 * lines in another.
 *
 *   node packages/dev/lay-lines.mjs TREES.geojson --out LINES.geojson [--count 400] [--seed 11]
 *
 * A line takes a tree, finds the direction in which its neighbours stand (the principal axis of the cluster),
 * keeps those of them that stand in the same row, and runs along that row 3-6 m to one side. Trees that have a
 * line are not taken again until every row has had its turn. The same seed and trees give the same file.
 * The lines are invented, also where the trees are real: they say nothing about what lies in any ground.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { distanceToPath } from './distance-to-path.mjs';
import { localPlane } from './local-plane.mjs';
import { seeded } from './seeded.mjs';

/* Our judgement of what a row of street trees looks like, in metres. */
const NEIGHBOUR_M = 45;
const ROW_HALF_WIDTH_M = 2.5;
const FEWEST_IN_ROW = 4;
const SHORTEST_ROW_M = 15;
const OFFSET_M = [3, 6];
/* A trench keeps clear of stems; a row where it can't is left out. */
const STEM_CLEARANCE_M = 1.5;
const TRIES = 6;
const MATERIALS = [
  ['clay', 1930, 1968, [100, 150]],
  ['clay', 1930, 1968, [150]],
  ['concrete', 1940, 1980, [200, 250]],
  ['cast-iron', 1930, 1970, [100]],
  ['asbestos-cement', 1950, 1975, [150]],
  ['bituminous-fibre', 1948, 1970, [100]],
  ['pvc-thin-wall', 1982, 2010, [100]],
  ['pvc-sdr35', 1985, 2022, [100, 150]],
  ['pvc-sch40', 1990, 2022, [100]],
  ['hdpe-corrugated', 1990, 2018, [100, 150]],
  ['hdpe-dual-wall', 2000, 2022, [300]],
  ['abs', 1975, 1992, [100]],
];
const UNKNOWN_SHARE = 0.12;

function readOptions() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      out: { type: 'string' },
      count: { type: 'string', default: '400' },
      seed: { type: 'string', default: '11' },
    },
  });
  const count = Number(values.count);
  if (positionals.length !== 1 || !values.out || !(Number.isInteger(count) && count > 0)) {
    process.stderr.write(
      'usage: node lay-lines.mjs TREES.geojson --out LINES.geojson [--count 400] [--seed 11]\n',
    );
    process.exit(2);
  }
  return { trees: positionals[0], out: values.out, count, seed: Number(values.seed) };
}

function readStems(file) {
  const { features } = JSON.parse(readFileSync(file, 'utf8'));
  const isTree = ({ geometry, properties }) =>
    geometry?.type === 'Point' && (properties?.kind ?? 'tree') === 'tree';
  return features.filter(isTree).map(({ geometry }) => geometry.coordinates);
}

/** Stems by cells a little wider than a neighbourhood, so that nine cells hold all that a line could meet. */
function indexStems(stems) {
  const cellLat = (NEIGHBOUR_M + 10) / 111000;
  const middleLat = stems.reduce((sum, [, lat]) => sum + lat, 0) / stems.length;
  const cellLon = cellLat / Math.cos((middleLat * Math.PI) / 180);
  const cells = new Map();
  const cellOf = ([lon, lat]) => [Math.floor(lon / cellLon), Math.floor(lat / cellLat)];
  for (const [i, stem] of stems.entries()) {
    const key = cellOf(stem).join();
    if (!cells.has(key)) cells.set(key, []);
    cells.get(key).push(i);
  }
  return (stem) => {
    const [column, row] = cellOf(stem);
    const found = [];
    for (let c = column - 1; c <= column + 1; c += 1) {
      for (let r = row - 1; r <= row + 1; r += 1) found.push(...(cells.get([c, r].join()) ?? []));
    }
    return found;
  };
}

/** Unit vector along which points scatter most: the first eigenvector of their covariance. */
function principalAxis(points) {
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of points) {
    xx += (x - meanX) ** 2;
    xy += (x - meanX) * (y - meanY);
    yy += (y - meanY) ** 2;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return { middle: [meanX, meanY], along: [Math.cos(angle), Math.sin(angle)] };
}

const alongOf = ([x, y], { middle, along }) => (x - middle[0]) * along[0] + (y - middle[1]) * along[1];
const acrossOf = ([x, y], { middle, along }) => (y - middle[1]) * along[0] - (x - middle[0]) * along[1];

/** The row that a stem stands in, in a plane at that stem; null where its neighbours make none. */
function rowOf(index, stems, neighboursOf) {
  const plane = localPlane(...stems[index]);
  const around = neighboursOf(stems[index]).map((i) => ({ i, at: plane.toMetres(stems[i]) }));
  const near = around.filter(({ at }) => Math.hypot(...at) <= NEIGHBOUR_M);
  if (near.length < FEWEST_IN_ROW) return null;
  const cluster = { ...principalAxis(near.map(({ at }) => at)), middle: [0, 0] };
  const beside = near.filter(({ at }) => Math.abs(acrossOf(at, cluster)) <= 2 * ROW_HALF_WIDTH_M);
  if (beside.length < FEWEST_IN_ROW) return null;
  const axis = principalAxis(beside.map(({ at }) => at));
  const row = beside.filter(({ at }) => Math.abs(acrossOf(at, axis)) <= ROW_HALF_WIDTH_M);
  if (row.length < FEWEST_IN_ROW) return null;
  const reach = row.map(({ at }) => alongOf(at, axis));
  const [first, last] = [Math.min(...reach), Math.max(...reach)];
  if (last - first < SHORTEST_ROW_M) return null;
  return {
    plane,
    axis,
    first,
    last,
    members: row.map(({ i }) => i),
    stems: around.map(({ at }) => at),
  };
}

/** A path beside the row, in metres; as lines are seldom quite straight, with a small step half way. */
function drawPath({ axis, first, last }, random) {
  const between = (low, high) => low + (high - low) * random();
  const side = random() < 0.5 ? -1 : 1;
  const offset = between(...OFFSET_M);
  const stations = [first - between(1, 6), (first + last) / 2, last + between(1, 6)];
  const offsets = [offset, Math.max(OFFSET_M[0], offset - between(0, 0.6)), offset];
  const [dx, dy] = axis.along;
  return stations.map((s, i) => [
    axis.middle[0] + s * dx - side * offsets[i] * dy,
    axis.middle[1] + s * dy + side * offsets[i] * dx,
  ]);
}

/** The first of a few paths that keeps clear of every stem near by, in degrees; null where none does. */
function layBeside(row, random) {
  for (let i = 0; i < TRIES; i += 1) {
    const path = drawPath(row, random);
    if (row.stems.every((stem) => distanceToPath(stem, path) >= STEM_CLEARANCE_M)) {
      const coordinates = path.map(row.plane.toLonLat);
      return random() < 0.5 ? coordinates.reverse() : coordinates;
    }
  }
  return null;
}

/** What the record of a line says; some of it is missing, as in any town. */
function recordOf(number, random) {
  const between = (low, high) => low + (high - low) * random();
  const record = { kind: 'drain', id: `line-${String(number).padStart(4, '0')}`, flow: 'as-drawn' };
  const [material, from, to, sizes] = MATERIALS[Math.floor(random() * MATERIALS.length)];
  if (random() >= UNKNOWN_SHARE) record.material = material;
  if (random() < 0.9) record.size_mm = sizes[Math.floor(random() * sizes.length)];
  if (random() < 0.8) record.installed = String(Math.round(between(from, to)));
  record.carries = random() < 0.4 ? 'foul' : 'storm';
  if (random() < 0.75) {
    const top = Math.round(between(0.5, 1.6) * 20) / 20;
    record.depth_start_m = top;
    record.depth_end_m = Math.round((top + between(0.1, 0.5)) * 20) / 20;
  }
  if (record.carries === 'storm' && random() < 0.1)
    Object.assign(record, { perforated: true, wrapped: random() < 0.5 });
  if (random() < 0.1) record.cut = String(Math.round(between(2018, 2025)));
  record.note = 'Invented.';
  return record;
}

/** Numbers 0 to n-1 in an order drawn from the seed. */
function shuffled(n, random) {
  const order = Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j], order[i]];
  }
  return order;
}

function layLines(stems, count, random) {
  const neighboursOf = indexStems(stems);
  const lines = [];
  let laid = -1;
  while (lines.length < count && lines.length > laid) {
    laid = lines.length;
    const taken = new Set();
    for (const index of shuffled(stems.length, random)) {
      if (lines.length >= count) break;
      const row = taken.has(index) ? null : rowOf(index, stems, neighboursOf);
      if (!row || row.members.some((i) => taken.has(i))) continue;
      const coordinates = layBeside(row, random);
      if (!coordinates) continue;
      for (const i of row.members) taken.add(i);
      lines.push({
        type: 'Feature',
        properties: recordOf(lines.length + 1, random),
        geometry: { type: 'LineString', coordinates },
      });
    }
  }
  return lines;
}

const options = readOptions();
const stems = readStems(options.trees);
const lines = stems.length === 0 ? [] : layLines(stems, options.count, seeded(options.seed));
const about = {
  schema: 1,
  name: 'Invented: lines laid beside the trees of an inventory',
  invented: true,
  units: 'metric',
  notes:
    'The lines are made up by packages/dev/lay-lines.mjs. They say nothing about what lies in any ground.',
};
writeFileSync(
  options.out,
  `{"type":"FeatureCollection","rootreach":${JSON.stringify(about)},"features":[\n${lines.map((f) => JSON.stringify(f)).join(',\n')}\n]}\n`,
);
process.stderr.write(`${lines.length} lines beside ${stems.length} trees -> ${options.out}\n`);
if (lines.length < options.count) process.exitCode = 1;
