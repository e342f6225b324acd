import { distanceToPath } from '../distance-to-path.mjs';
import { CLUMP_SPECIES, ROW_SPECIES, TREE_COUNT } from './plan.mjs';
import { rounded } from './rounded.mjs';

const near = ([x, y], box, gap) =>
  x > box.west - gap && x < box.east + gap && y > box.south - gap && y < box.north + gap;

/** A stem stands clear of walls, paving, pipes and other stems. */
function isFree(at, { halls, paths, drains, trees }) {
  if (halls.some((hall) => near(at, hall, 2.5)) || paths.some((path) => near(at, path, 1))) return false;
  if (drains.some((drain) => distanceToPath(at, drain.path) < 1.2)) return false;
  return trees.every((tree) => Math.hypot(tree[0] - at[0], tree[1] - at[1]) > 3);
}

function addTree(site, at, [species, growth, oldest], age) {
  const { sheet, trees } = site;
  const { between, chance, pick, addPoint } = sheet;
  if (trees.length >= TREE_COUNT || !isFree(at, site)) return;
  trees.push(at);
  const years = Math.min(age, oldest);
  const stem = Math.max(5, years * growth * between(0.75, 1.2));
  const record = { kind: 'tree', id: `t${trees.length}`, species };
  /* Stems are taped (girth) or read with callipers; a few were never measured. */
  if (chance(0.97))
    Object.assign(
      record,
      chance(0.25) ? { girth_cm: Math.round(stem * Math.PI) } : { dbh_cm: Math.round(stem) },
    );
  if (chance(0.4)) record.canopy_radius_m = rounded(0.331 * stem ** 0.722 * between(0.85, 1.15), 0.1);
  if (chance(0.35)) record.height_m = rounded(Math.min(28, 3 + 0.38 * stem) * between(0.85, 1.1), 0.5);
  if (chance(0.5)) record.planted = String(2026 - Math.round(years));
  if (chance(0.3)) record.condition = pick(['good', 'good', 'fair', 'poor']);
  addPoint(at, record);
}

/** Rows beside the paths: one species and one age a row, with gaps where a tree was lost. */
function addTreeRows(site) {
  const { between, chance, pick } = site.sheet;
  const rows = [
    ...[54.4, 66.2, 115.4, 123.4].map((y) => ({ from: [4, y], to: [222, y] })),
    ...[68.6, 150.4].map((x) => ({ from: [x, 10], to: [x, 178] })),
  ];
  for (const { from, to } of rows) {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    let species = pick(ROW_SPECIES);
    let age = between(15, 80);
    for (let s = 0; s < length; s += between(8, 11)) {
      if (chance(0.12)) [species, age] = [pick(ROW_SPECIES), between(8, 80)];
      if (chance(0.25)) continue;
      const share = s / length;
      addTree(
        site,
        [
          from[0] + (to[0] - from[0]) * share + between(-0.3, 0.3),
          from[1] + (to[1] - from[1]) * share + between(-0.3, 0.3),
        ],
        species,
        age,
      );
    }
  }
}

function addClumps(site) {
  const { between, chance, pick } = site.sheet;
  for (let i = 0; site.trees.length < TREE_COUNT && i < 400; i += 1) {
    const centre = [between(2, 224), between(6, 182)];
    const species = CLUMP_SPECIES[i % CLUMP_SPECIES.length];
    const age = between(8, 70);
    for (let n = 0; n < 3; n += 1) {
      addTree(
        site,
        [centre[0] + between(-7, 7), centre[1] + between(-7, 7)],
        chance(0.7) ? species : pick(CLUMP_SPECIES),
        age,
      );
    }
  }
}

/** Plants rows along the paths, then clumps until the count is reached. Returns the stems, in metres. */
export function plant(sheet, { halls, paths, drains }) {
  const site = { sheet, halls, paths, drains, trees: [] };
  addTreeRows(site);
  addClumps(site);
  return site.trees;
}
