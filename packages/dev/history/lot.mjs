import { rounded } from '../campus/rounded.mjs';
import { distanceToPath } from '../distance-to-path.mjs';
import { kinds } from './plan.mjs';

/* Stems keep this far from a trench, and the trees of a lot this far from each other, metres. */
const STEM_CLEARANCE_M = 1.4;
const TREE_APART_M = 3;
const TREES = [8, 11];
/* A tree that matters to a line stands this far to one side of it, metres. */
const BESIDE_M = [1.6, 6.5];

/** Corners of the lines in metres, x east and y north; a branch ends on a corner of the main. */
function pathsOf({ between }) {
  const length = between(34, 44);
  const jitter = () => between(-0.6, 0.6);
  const wyeA = [between(9, 12), jitter()];
  const wyeB = [between(19, 23), jitter()];
  const clear = [length - between(6, 9), jitter()];
  const spout = [between(15, 18), 6];
  return {
    main: [[0, 0], wyeA, wyeB, clear, [length, 0]],
    'branch-a': [[wyeA[0] - between(2, 4), between(10, 14)], [wyeA[0] - 1, 4], wyeA],
    'branch-b': [[wyeB[0] - between(1, 3), -between(9, 13)], wyeB],
    lateral: [
      [16, 19.5],
      [24, 20 + jitter()],
      [length + between(0, 3), 22],
    ],
    footing: [
      [-5 + jitter(), between(4, 7)],
      [-6, -6],
      [-4, -between(17, 21)],
    ],
    downspout: [spout, [spout[0] + 8, 6.5], [length + 2, 7 + jitter()]],
  };
}

/** Fittings by line; the number says at which corner. */
const FITTINGS = [
  ['main', 'B1', 'basin', 0],
  ['main', 'W1', 'wye', 1],
  ['main', 'W2', 'wye', 2],
  ['main', 'CO1', 'cleanout', 3],
  ['main', 'O1', 'outlet', 4],
  ['branch-a', 'DS1', 'downspout', 0],
  ['branch-a', 'E1', 'bend', 1],
  ['branch-b', 'B2', 'basin', 0],
  ['lateral', 'CO2', 'cleanout', 0],
  ['lateral', 'E2', 'bend', 1],
  ['footing', 'CO3', 'cleanout', 0],
  ['footing', 'O2', 'outlet', 2],
  ['downspout', 'DS2', 'downspout', 0],
  ['downspout', 'O3', 'outlet', 2],
];

function addLine(sheet, { units, lines }, id, path) {
  const { pieceFt, sizeIn, installed, ...pipe } = lines[id];
  const us = units === 'us';
  const [start, end] = [sheet.between(0.4, 0.7), sheet.between(0.6, 1.1)];
  const depth = (m) => (us ? rounded(m / 0.3048, 0.1) : rounded(m, 0.05));
  const piece = us ? { piece_ft: pieceFt } : { piece_m: rounded(pieceFt * 0.3048, 0.001) };
  sheet.addLine(path, {
    kind: 'drain',
    id,
    ...pipe,
    ...(us ? { size_in: sizeIn } : { size_mm: sizeIn * 25 }),
    ...(pieceFt === undefined ? {} : piece),
    [us ? 'depth_start_ft' : 'depth_start_m']: depth(start),
    [us ? 'depth_end_ft' : 'depth_end_m']: depth(end),
    installed,
    flow: 'as-drawn',
    wet: sheet.pick(['dry', 'dry', 'often']),
  });
}

function besideALine({ between, pick, chance }, paths) {
  const path = pick(Object.values(paths));
  const leg = Math.floor(between(0, path.length - 1));
  const [[x0, y0], [x1, y1]] = [path[leg], path[leg + 1]];
  const along = between(0, 1);
  const aside = between(...BESIDE_M) * (chance(0.5) ? 1 : -1);
  const length = Math.hypot(x1 - x0, y1 - y0);
  return [
    x0 + along * (x1 - x0) - (aside * (y1 - y0)) / length,
    y0 + along * (y1 - y0) + (aside * (x1 - x0)) / length,
  ];
}

const HOUSE = { west: 13, south: 8.5, east: 27, north: 17.5 };
const inHouse = ([x, y]) =>
  x > HOUSE.west - 1 && x < HOUSE.east + 1 && y > HOUSE.south - 1 && y < HOUSE.north + 1;

function plantTrees(sheet, units, paths) {
  const wanted = Math.round(sheet.between(...TREES));
  const stems = [];
  while (stems.length < wanted) {
    const at = besideALine(sheet, paths);
    const clear = Object.values(paths).every((path) => distanceToPath(at, path) >= STEM_CLEARANCE_M);
    const apart = stems.every(([x, y]) => Math.hypot(x - at[0], y - at[1]) >= TREE_APART_M);
    if (!clear || !apart || inHouse(at)) continue;
    stems.push(at);
    const [species, from, to] = sheet.pick(kinds);
    const dbhCm = sheet.between(from, to);
    const size = units === 'us' ? { dbh_in: rounded(dbhCm / 2.54, 0.5) } : { dbh_cm: Math.round(dbhCm) };
    sheet.addPoint(at, { kind: 'tree', id: `t${stems.length}`, species, ...size });
  }
}

/** Draws a lot without findings on a sheet. */
export function layLot(sheet, plan) {
  const paths = pathsOf(sheet);
  sheet.addRectangle(HOUSE, { kind: 'obstacle', type: 'building', id: 'house', name: 'house' });
  plantTrees(sheet, plan.units, paths);
  for (const [id, path] of Object.entries(paths)) addLine(sheet, plan, id, path);
  for (const [drain, id, type, corner] of FITTINGS) {
    sheet.addPoint(paths[drain][corner], { kind: 'fitting', id, type, drain });
  }
}
