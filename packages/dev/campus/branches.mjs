import { mainDepth } from './main-depth.mjs';
import { FOUL_KINDS, MAINS, STORM_KINDS, YARD_KINDS } from './plan.mjs';
import { rounded } from './rounded.mjs';

/** Joins a branch to the reach of a main that lies at x, and tells its id and its depth there. */
function join(reaches, main, x) {
  const reach = reaches.find(
    (r) => r.main === main && x >= Math.min(r.from, r.to) && x <= Math.max(r.from, r.to),
  );
  reach.corners.push(x);
  return { id: reach.id, depth: mainDepth(main.carries, (x - main.from) / (main.to - main.from)) };
}

/** What is known of a branch: some of it is left out, as it is in any real record. */
function branchRecord({ between, chance, pick }, [material, first, last, size]) {
  const known = {};
  if (material !== 'unknown') known.material = material;
  known.size_mm = size;
  if (chance(0.85)) known.installed = String(Math.round(between(first, last)));
  if (chance(0.15)) known.dug = String(Math.round(between(2019, 2024)));
  else if (chance(0.2)) known.cut = `${Math.round(between(2019, 2025))}-0${Math.round(between(3, 9))}`;
  if (chance(0.3)) known.wet = pick(['dry', 'often', 'standing']);
  return known;
}

/** A line from a point outside a wall to its main: straight out, then at an angle if the tee is not opposite. */
function addBranch(
  { sheet, lines, reaches },
  { id, start, main, x, kind, startFitting, carries, extra = {} },
) {
  const target = [x, main.y];
  const joined = join(reaches, main, x);
  const elbow = [start[0], start[1] + (main.y - start[1]) * 0.45];
  const bends = Math.abs(x - start[0]) > 1;
  const record = branchRecord(sheet, kind);
  lines.addDrain(bends ? [start, elbow, target] : [start, target], {
    ...record,
    id,
    carries,
    depth_start_m: rounded(sheet.between(0.4, 0.7), 0.05),
    depth_end_m: rounded(joined.depth - 0.1, 0.05),
    ...extra,
  });
  lines.addFitting(startFitting, start, id);
  if (bends) lines.addFitting('bend', elbow, id);
  lines.addFitting(carries === 'foul' || sheet.chance(0.3) ? 'wye' : 'tee', target, joined.id);
}

/* Which mains serve a row of halls, and from which wall. */
const SERVICE = [
  { storm: ['a', 'north'], foul: ['d', 'south'] },
  { storm: ['a', 'south'], foul: ['b', 'north'] },
  { storm: ['c', 'north'], foul: ['b', 'south'] },
];
const mainOf = (key) => MAINS.find((main) => main.key === key);
const outside = (hall, wall) => (wall === 'north' ? hall.north + 0.4 : hall.south - 0.4);

/** Three roof lines and one foul line from each hall. */
export function addHallLines(network, halls) {
  const { between, chance, pick } = network.sheet;
  for (const [i, hall] of halls.entries()) {
    const { storm, foul } = SERVICE[hall.row];
    /* Halls south of a main join it a little apart from those north of it. */
    const shift = hall.row === 1 ? 1.5 : 0;
    for (const [n, share] of [0.1, 0.5, 0.9].entries()) {
      const at = hall.west + (hall.east - hall.west) * share;
      addBranch(network, {
        id: `roof-${i + 1}-${n + 1}`,
        start: [at, outside(hall, storm[1])],
        main: mainOf(storm[0]),
        x: at + shift - (chance(0.5) ? between(2, 4) : 0),
        kind: pick(STORM_KINDS),
        startFitting: 'downspout',
        carries: 'storm',
        extra: { serves_m2: Math.round(((hall.east - hall.west) * (hall.north - hall.south)) / 3) },
      });
    }
    const at = hall.west + (hall.east - hall.west) * between(0.3, 0.7);
    addBranch(network, {
      id: `foul-${i + 1}`,
      start: [at, outside(hall, foul[1])],
      main: mainOf(foul[0]),
      x: at + shift + between(2, 4),
      kind: pick(FOUL_KINDS),
      startFitting: 'cleanout',
      carries: 'foul',
    });
  }
}

/** Lawn basins beside the paths, with a short line to the nearest storm main; some of it perforated. */
export function addYardDrains(network) {
  const { between, pick } = network.sheet;
  for (const [m, key] of ['a', 'c'].entries()) {
    for (const [n, x] of [4, 78, 142, 210].entries()) {
      const main = mainOf(key);
      const perforated = n % 2 === 1;
      addBranch(network, {
        id: `yard-${key}-${n + 1}`,
        start: [x, main.y + (m === 0 && n % 2 === 0 ? 1 : -1) * between(16, 24)],
        main,
        x: x - 2,
        kind: pick(YARD_KINDS),
        startFitting: 'basin',
        carries: 'storm',
        extra: perforated ? { perforated: true, wrapped: n === 1 } : {},
      });
    }
  }
}
