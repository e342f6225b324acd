import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Drain } from '../../../packages/core/src/model/site.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { siteAround } from '../../../packages/core/src/works/site-around.js';
import { CAMPUS, CORNER_LOT } from '../../cli/call.js';
import { scene } from '../../scenes/scene.js';

const read = (path: string) => readSite([{ name: path, text: readFileSync(path, 'utf8') }]).site;
const asOf = '2026-11-25';

describe('the part of a site that bears on one line', () => {
  const campus = read(CAMPUS);

  it('is less than a campus and gives the same chance for every segment of the line', () => {
    for (const id of [campus.drains[0], campus.drains[30], campus.drains[59]].map((drain) => drain?.id)) {
      const drain = campus.drains.find((one) => one.id === id) as Drain;
      const part = siteAround(campus, drain);
      expect(part.drains.length).toBeLessThan(campus.drains.length);
      const of = (site: typeof campus) =>
        rank(site, { asOf })
          .segments.filter(({ drainId }) => drainId === id)
          .map(({ id: segment, chance }) => [segment, chance] as const)
          .sort(([a], [b]) => (a < b ? -1 : 1));
      const [own, whole] = [of(part), of(campus)];
      expect(own.map(([segment]) => segment)).toEqual(whole.map(([segment]) => segment));
      own.forEach(([, chance], i) => {
        expect(chance.likely).toBeCloseTo(whole[i]?.[1].likely as number, 3);
      });
    }
  });

  it('is the whole of a lot', () => {
    const lot = read(CORNER_LOT);
    expect(siteAround(lot, lot.drains[0] as Drain)).toBe(lot);
  });

  // roots that count reach no further than some hundred metres; the margin is 120
  it('is what lies within 120 m of the line on every side', () => {
    const made = scene().drain({
      id: 'main',
      path: [
        [0, 0],
        [30, 0],
      ],
      flow: 'as-drawn',
    });
    for (let i = 0; i < 45; i++)
      made.drain({
        id: `far ${i}`,
        path: [
          [5000, 20 * i],
          [5009, 20 * i],
        ],
        flow: 'as-drawn',
      });
    const sides = {
      east: [30, 0, 1, 0],
      west: [0, 0, -1, 0],
      north: [15, 0, 0, 1],
      south: [15, 0, 0, -1],
    } as const;
    for (const [side, [x, y, east, north]] of Object.entries(sides)) {
      for (const off of [115, 126]) {
        made.tree({ id: `${side} ${off}`, at: [x + off * east, y + off * north], species: 'Acer rubrum' });
      }
    }
    const town = made.site();
    const part = siteAround(town, town.drains[0] as Drain);
    expect(part.drains.map(({ id }) => id)).toEqual(['main']);
    expect(part.trees.map(({ id }) => id).sort()).toEqual(
      Object.keys(sides)
        .map((side) => `${side} 115`)
        .sort(),
    );
  });
});
