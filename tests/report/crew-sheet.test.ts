import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { wordCaution } from '../../packages/core/src/index.js';
import { treeLimits, utilitiesNear } from '../../packages/report/src/crew/stretch-geometry.js';
import { crewSheet } from '../../packages/report/src/index.js';
import { ownerInput, siteOf, TAIL_FULL } from './inputs.js';
import { parsed } from './page-text.js';

const input = ownerInput(siteOf('corner-lot', TAIL_FULL));
const choice = input.decided?.choices.find(({ id }) => id === input.decided?.recommended);
if (choice === undefined) throw new Error('nothing was recommended');
const sheet = crewSheet({ ...input, choice });
const text = (parsed(sheet).textContent ?? '').replace(/\s+/g, ' ');

describe("the crew's sheet", () => {
  it('is valid HTML in both languages', async () => {
    const validator = new HtmlValidate({ extends: ['html-validate:recommended', 'html-validate:document'] });
    for (const language of ['en', 'es'] as const) {
      const { results } = await validator.validateString(crewSheet({ ...input, choice, language }));
      expect(results.flatMap(({ messages }) => messages)).toEqual([]);
    }
  });

  it('says where to dig, from the way in and along the line, and how deep', () => {
    expect(text).toMatch(/From the way in\d+ to \d+ ft (?:up|down) the pipe from the \w+/);
    expect(text).toMatch(/Along the line\d+ to \d+ ft from the lower end/);
    expect(text).toMatch(/Depth to top of pipe\d+ in at the near end, \d+ in at the far end/);
  });

  it('has the checks before backfill: fall with water, camera pass', () => {
    expect(text).toContain('Fall checked with a level');
    expect(text).toContain('Water poured in at the top');
    expect(text).toContain('Camera pass through every new joint');
  });

  it('lists the quantities of what was chosen', () => {
    expect(choice.quantities.length).toBeGreaterThan(3);
    for (const { text: item } of choice.quantities) expect(text).toContain(item.replace(/\s+/g, ' '));
  });

  it('carries the cautions of a dig beside a tree, and that nobody climbs in', () => {
    for (const code of ['locate-utilities', 'spoil-back', 'saws-in-soil', 'no-entry'] as const) {
      expect(text).toContain(wordCaution(code, 'en'));
    }
    expect(text.split(wordCaution('local-code', 'en'))).toHaveLength(2);
  });
});

describe('limits by the tree', () => {
  const straight = ownerInput(siteOf('french-drain-plan'), { choices: false });

  it('are told for trees within twelve trunk widths, and for no others', () => {
    const limits = treeLimits(straight);
    for (const { tree, nearestM } of limits) expect(nearestM).toBeLessThan(12 * tree.stemDiameterM);
    const told = new Set(limits.map(({ tree }) => tree.id));
    for (const { id, distanceM } of straight.segment.trees) {
      const tree = straight.result.trees.find((other) => other.id === id);
      if (tree && distanceM < 12 * tree.stemDiameterM) expect(told).toContain(id);
    }
  });

  it('keep hand digging inside the stretch', () => {
    for (const { insideM } of treeLimits(straight)) {
      for (const [from, to] of insideM) {
        expect(from).toBeGreaterThanOrEqual(straight.segment.startM - 0.01);
        expect(to).toBeLessThanOrEqual(straight.segment.endM + 0.01);
      }
    }
  });
});

describe('utilities near', () => {
  it('are told with the station at which they cross', () => {
    const { site, segment } = ownerInput(siteOf('corner-lot'), { choices: false });
    const [first, last] = [segment.geometry.coordinates[0], segment.geometry.coordinates.at(-1)];
    const [lon0, lat0] = first as readonly [number, number];
    const [lon1, lat1] = last as readonly [number, number];
    const [midLon, midLat] = [(lon0 + lon1) / 2, (lat0 + lat1) / 2];
    const across = {
      id: 'u',
      origin: { file: 'x', index: 0 },
      type: 'utility' as const,
      name: 'gas, as sketched',
      shape: {
        type: 'path' as const,
        path: [
          [midLon - 0.00003, midLat],
          [midLon + 0.00003, midLat],
        ] as const,
      },
    };
    const [near] = utilitiesNear({ ...site, obstacles: [across] }, segment);
    expect(near?.nearestM).toBeLessThan(0.1);
    expect(near?.atM).toBeCloseTo((segment.startM + segment.endM) / 2, 0);
  });
});
