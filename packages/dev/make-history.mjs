/*
 * Makes the invented camera history `data/findings/`: eight lots with their lines, trees and what cameras saw in
 * them over the years.
 *
 *   npm run build
 *   node packages/dev/make-history.mjs [--seed 5] [--out data/findings]
 *
 * What came in is drawn (Poisson) from what the model expects of each joint and each bit of slot between two runs,
 * times a true multiplier of its own kind of opening:
 *
 *   mortar joints, clay                       1.8     gasketed joints, sewer PVC          0.5
 *   mortar joints, concrete                   1.3     solvent-welded joints, schedule 40  1.0
 *   push-fit joints, single-wall corrugated   1.4     open slots, corrugated              1.0
 *   push-fit joints, thin-wall PVC            1.2     wrapped slots, corrugated           0.8
 *
 * Walls are crushed as often as the model says. So what is to be learned is known (`history/truth.mjs`); nothing in
 * it is measured. The same seed and the same model give the same files, byte for byte.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { emptySheet } from './campus/sheet.mjs';
import { layLot } from './history/lot.mjs';
import { lots } from './history/plan.mjs';
import { tellHistory } from './history/tell.mjs';

const { values: options } = parseArgs({
  options: { seed: { type: 'string', default: '5' }, out: { type: 'string', default: 'data/findings' } },
});

/** Lots lie 2 km apart in open ocean. */
const originOf = (number) => ({ lon: Number((-69.4 + 0.024 * number).toFixed(6)), lat: 40.32 });

function textOf({ name, units, soil }, features) {
  const about = {
    schema: 1,
    name,
    invented: true,
    date: '2026-11-25',
    units,
    soil,
    notes:
      'An invented lot with an invented camera history, made by packages/dev/make-history.mjs and placed in open ocean.',
  };
  const lines = features.map((feature) => JSON.stringify(feature));
  return `{"type":"FeatureCollection","rootreach":${JSON.stringify(about)},"features":[\n${lines.join(',\n')}\n]}\n`;
}

mkdirSync(options.out, { recursive: true });
const seed = Number(options.seed);
lots.forEach((plan, number) => {
  const sheet = emptySheet(seed * 1000 + number, originOf(number));
  layLot(sheet, plan);
  const findings = tellHistory(sheet, plan, textOf(plan, sheet.features));
  const path = join(options.out, `${plan.file}.geojson`);
  writeFileSync(path, textOf(plan, [...sheet.features, ...findings]));
  process.stderr.write(`${findings.length} findings -> ${path}\n`);
});
