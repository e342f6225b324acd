import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { contextOf, prepareLine } from '../../../packages/core/src/risk/context.js';
import { lineLogSd, ownLogSdOf, treesLogSd } from '../../../packages/core/src/risk/interval.js';
import { addLoad, Load } from '../../../packages/core/src/risk/load.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { scoreAll } from '../../../packages/core/src/risk/score-all.js';
import { inWorstTenth, worstTenthFrom } from '../../../packages/core/src/risk/worst-tenth.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';

const campus = readFileSync(
  fileURLToPath(new URL('../../../data/sites/small-campus.geojson', import.meta.url)),
  'utf8',
);
const { site } = readSite([{ name: 'campus', text: campus }]);
const options = { asOf: '2026-11-25' };

describe('the chance of being among the worst tenth, in closed form', () => {
  it('agrees with sampling on the demo campus: within 0.05 on average, rarely off by a quarter', () => {
    const sampled = new Map(rank(site, options).segments.map((s) => [s.id, s.inWorstTenth]));
    const context = contextOf(site, options);
    const columns = scoreAll(context);
    const limit = worstTenthFrom(columns);
    const off: number[] = [];
    for (let row = 0; row < columns.count; row++) {
      const prepared = prepareLine(context, context.lines.at(columns.line[row] as number));
      const i = columns.segment[row] as number;
      const load = new Load(context.field.moments, prepared.near.count);
      const { first } = prepared.inputs.openings;
      addLoad(prepared.inputs, first[i] as number, first[i + 1] as number, load);
      const extra = Math.hypot(
        lineLogSd(prepared.line, prepared.clock),
        treesLogSd(load, prepared.near, context.field),
      );
      const closed = inWorstTenth(load.total, limit, ownLogSdOf(load, extra));
      off.push(Math.abs(closed - (sampled.get(`${prepared.line.drain.id}/${i + 1}`) as number)));
    }
    const mean = off.reduce((sum, v) => sum + v, 0) / off.length;
    const far = off.filter((v) => v > 0.25).length / off.length;
    console.info(
      `worst tenth, closed form against sampled: mean ${mean.toFixed(3)}, beyond 0.25: ${far.toFixed(3)}`,
    );
    expect(mean).toBeLessThan(0.05);
    expect(far).toBeLessThan(0.05);
  });

  it('is a half on the limit, certain without any spread, and nothing where nothing is expected', () => {
    expect(inWorstTenth(0.2, 0.2, 0.4)).toBeCloseTo(0.5, 6);
    expect(inWorstTenth(0.3, 0.2, 0)).toBe(1);
    expect(inWorstTenth(0.1, 0.2, 0)).toBe(0);
    expect(inWorstTenth(0, 0.2, 0.4)).toBe(0);
    // one deviation above the limit: the normal table gives 0.8413 (Abramowitz & Stegun 1964, table 26.1)
    expect(inWorstTenth(0.2 * Math.exp(0.4), 0.2, 0.4)).toBeCloseTo(0.8413, 4);
  });
});
