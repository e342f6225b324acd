/*
 * Makes the invented campus `data/sites/small-campus.geojson`: nine halls in a grid, paths between them, trees
 * in rows along the paths and in clumps on the lawns, and four drain mains with the halls' lines joined to them.
 *
 *   node packages/dev/make-campus.mjs [--seed 7] [--out data/sites/small-campus.geojson]
 *
 * The same seed gives the same file, byte for byte. Nothing in it is measured: sizes, dates and materials are
 * drawn within what is usual for such a place (our judgement), and it lies in open ocean, so it is no real place.
 *
 * Plan, in metres, x east and y north: storm mains A and C fall west to the storm trunk, foul mains B and D fall
 * east to the foul trunk, so that no two lines cross. The ground falls 0.6 % to the south. Lines are drawn from
 * the upper end to the outlet; a branch ends on its main, at a corner of the main, with a tee or a wye there.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { layGround } from './campus/ground.mjs';
import { layNetwork } from './campus/network.mjs';
import { plant } from './campus/planting.mjs';
import { rounded } from './campus/rounded.mjs';
import { emptySheet } from './campus/sheet.mjs';

function addLevels({ addPoint }) {
  for (const x of [0, 75, 150, 225]) {
    for (const y of [-15, 63, 126, 185]) {
      addPoint([x, y - 1], {
        kind: 'level',
        id: `level-${x}-${y}`,
        elevation_m: rounded(20 + 0.006 * y, 0.01),
      });
    }
  }
}

const { values: options } = parseArgs({
  options: {
    seed: { type: 'string', default: '7' },
    out: { type: 'string', default: 'data/sites/small-campus.geojson' },
  },
});
const sheet = emptySheet(Number(options.seed));
const ground = layGround(sheet);
const drains = layNetwork(sheet, ground.halls);
const trees = plant(sheet, { ...ground, drains });
addLevels(sheet);

const about = {
  schema: 1,
  name: 'Invented: small campus',
  invented: true,
  date: '2026-11-25',
  units: 'metric',
  soil: 'loam',
  rain_mm_h: 60,
  protection: 'trunk-multiple',
  notes:
    'An invented campus made by packages/dev/make-campus.mjs and placed in open ocean. The rain is invented too: use your own local value.',
};
const lines = sheet.features.map((feature) => JSON.stringify(feature));
writeFileSync(
  options.out,
  `{"type":"FeatureCollection","rootreach":${JSON.stringify(about)},"features":[\n${lines.join(',\n')}\n]}\n`,
);
const species = new Set(sheet.features.map((f) => f.properties.species).filter(Boolean));
process.stderr.write(
  `${drains.length} lines, ${trees.length} trees of ${species.size} names -> ${options.out}\n`,
);
