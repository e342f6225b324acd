import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rootDensity } from '../../packages/core/src/roots/density.js';
import { residual } from './residual.js';

/**
 * Upson, Matthew (2015): Coarse root data from the Silsoe silvoarable trial site. figshare,
 * doi 10.6084/m9.figshare.1536770 (CC-BY). Roots over 2 mm on trench faces from 0.2 to 5 m beside six hybrid
 * poplars, all depths and sizes together, by metre from the trunk.
 */
const COUNTS_BY_METRE = [379, 258, 202, 166, 122];
const STEP_M = 0.2;
const STEPS_PER_METRE = 5;

/** Folder of open data, where the whole file may be counted again. */
const folder = process.env['ROOTREACH_OPEN_DATA'];
const file = folder === undefined ? null : join(folder, 'poplar-coarse-roots', 'coarse_root_counts.csv');

function countedFrom(csv: string): number[] {
  const [header, ...rows] = csv.trim().split(/\r?\n/);
  const columns = (header as string).split(',').map((name) => name.replaceAll('"', ''));
  const [step, count] = [columns.indexOf('dist_gp_m'), columns.indexOf('count')];
  const totals = [0, 0, 0, 0, 0];
  for (const row of rows) {
    const cells = row.split(',');
    const metre = Math.floor((Number(cells[step]) - 1) / STEPS_PER_METRE);
    totals[metre] = (totals[metre] as number) + Number(cells[count]);
  }
  return totals;
}

/** What the curve gives at the trenches of each metre, scaled to the same total. */
function predicted(reachM: number, total: number): number[] {
  const byMetre = COUNTS_BY_METRE.map((_, metre) => {
    let sum = 0;
    for (let k = 1; k <= STEPS_PER_METRE; k++) sum += rootDensity(metre + k * STEP_M, reachM);
    return sum;
  });
  const all = byMetre.reduce((a, b) => a + b, 0);
  return byMetre.map((v) => (v / all) * total);
}

const counts = file !== null && existsSync(file) ? countedFrom(readFileSync(file, 'utf8')) : COUNTS_BY_METRE;
const total = counts.reduce((a, b) => a + b, 0);

describe('coarse roots beside poplars by metre from the trunk (Upson 2015)', () => {
  it('has the totals that are quoted here', () => {
    expect(counts).toEqual(COUNTS_BY_METRE);
    expect(total).toBe(1127);
  });

  // tolerance 12 %: the counts come from six trees and lie in clumps; by chance alone the smallest of the five
  // totals, 122, has a standard error of 9 % even were every root independent of the next
  it.each([11, 11.5, 12])('falls off as the curve with a reach of %f m', (reachM) => {
    const expected = predicted(reachM, total);
    const left = counts.map((count, i) =>
      residual({
        what: `metre ${i + 1}, reach ${reachM} m`,
        got: expected[i] as number,
        published: count,
        tolerance: 0.12 * count,
      }),
    );
    const shown = left.map((r, i) => `${((100 * r) / (counts[i] as number)).toFixed(1)} %`);
    console.info(`Upson 2015, reach ${reachM} m, by metre: ${shown.join(', ')}`);
  });

  it('fits better with 11 to 12 m than with half or twice of it', () => {
    const misfit = (reachM: number): number =>
      predicted(reachM, total).reduce((sum, e, i) => sum + ((counts[i] as number) - e) ** 2 / e, 0);
    expect(misfit(11.5)).toBeLessThan(misfit(5.75) / 4);
    expect(misfit(11.5)).toBeLessThan(misfit(23) / 4);
  });
});
