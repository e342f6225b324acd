import { describe, expect, it } from 'vitest';
import type { Band, LineResult } from '../../packages/core/src/index.js';
import { bandStroke } from '../../packages/report/src/draw/ink.js';
import { viewOf } from '../../packages/report/src/draw/view.js';
import {
  lotPicture,
  oddsCurve,
  profilePicture,
  tenMarks,
  wordsFor,
} from '../../packages/report/src/index.js';
import { ownerInput, siteOf } from './inputs.js';
import { elements, parsed } from './page-text.js';

const input = ownerInput(siteOf('corner-lot'), { choices: false });
const words = wordsFor('en');
const named = (markup: string, name: string) =>
  elements(parsed(markup)).filter(({ nodeName }) => nodeName === name);
const numberOf = (one: { getAttribute(name: string): string | null }, name: string) =>
  Number(one.getAttribute(name));

describe('strokes of the bands', () => {
  const bands: Band[] = ['leave', 'watch', 'inspect', 'act', 'cannot-say'];

  it('differ without their colour: by weight, casing, centre or dash', () => {
    const shapes = bands.map((band) => {
      const { width, casing, centre, dash } = bandStroke[band];
      return `${width} ${casing?.width} ${centre?.width} ${dash}`;
    });
    expect(new Set(shapes).size).toBe(bands.length);
  });

  it('grow darker and heavier from leave to act', () => {
    const ramp = ['leave', 'watch', 'inspect', 'act'] as const;
    const weight = ramp.map((band) => bandStroke[band].casing?.width ?? bandStroke[band].width);
    expect(weight).toEqual([...weight].sort((a, b) => a - b));
    // Rec. 709 luma of the sRGB values: what a grey print makes of them, nearly
    const grey = ramp.map((band) => {
      const [r, g, b] = [1, 3, 5].map((i) => Number.parseInt(bandStroke[band].color.slice(i, i + 2), 16));
      return 0.2126 * (r as number) + 0.7152 * (g as number) + 0.0722 * (b as number);
    });
    expect(grey).toEqual([...grey].sort((a, b) => b - a));
  });
});

describe('the plan of the lot', () => {
  it('is to scale: the stretch is as long on the plan as on the ground', () => {
    const path = input.segment.geometry.coordinates.map(
      ([lon, lat]) => [lon as number, lat as number] as const,
    );
    const view = viewOf(input.site, path, { least: 300, most: 400 }, false);
    const points = path.map(view.at);
    const drawn = points.slice(1).reduce((sum, [x, y], i) => {
      const [px, py] = points[i] as readonly [number, number];
      return sum + Math.hypot(x - px, y - py);
    }, 0);
    expect(drawn / view.scale).toBeCloseTo(input.segment.lengthM, 2);
  });

  it('holds the whole lot, or what lies about the spot on large ground', () => {
    const campus = ownerInput(siteOf('small-campus'), { choices: false });
    const spot = campus.segment.geometry.coordinates.map(
      ([lon, lat]) => [lon as number, lat as number] as const,
    );
    const whole = viewOf(input.site, [], { least: 300, most: 400 }, false);
    for (const { path } of input.site.drains)
      for (const point of path) expect(whole.holds(whole.at(point))).toBe(true);
    const part = viewOf(campus.site, spot, { least: 300, most: 400 }, false);
    for (const point of spot) expect(part.holds(part.at(point))).toBe(true);
    expect(part.width / part.scale).toBeLessThan(120);
  });

  it('has north up', () => {
    const view = viewOf(input.site, [], { least: 300, most: 400 }, false);
    const [[lon, lat] = [0, 0]] = input.site.drains.map(({ path }) => path[0] ?? [0, 0]);
    expect(view.at([lon, lat + 0.00001])[1]).toBeLessThan(view.at([lon, lat])[1]);
    expect(view.at([lon + 0.00001, lat])[0]).toBeGreaterThan(view.at([lon, lat])[0]);
  });

  it('draws every tree with its wash, and says what it is to those who do not see it', () => {
    const picture = lotPicture({ ...input, words });
    expect(parsed(picture).getAttribute('role')).toBe('img');
    expect(parsed(picture).getAttribute('aria-label')).toBe(words.picture.lot);
    const washed = named(picture, 'circle').filter((one) => one.getAttribute('fill') === 'url(#lot-wash)');
    expect(washed).toHaveLength(input.result.trees.length);
  });

  it('lets no name run over another or over the edge', () => {
    for (const site of ['corner-lot', 'small-campus'] as const) {
      const picture = lotPicture({ ...ownerInput(siteOf(site), { choices: false }), words });
      const height = Number(parsed(picture).getAttribute('viewBox')?.split(' ')[3]);
      const boxes = named(picture, 'text')
        .filter((one) => one.getAttribute('paint-order') === 'stroke')
        .map((one) => {
          const size = numberOf(one, 'font-size');
          const half = ((one.textContent ?? '').length * 0.6 * size) / 2;
          const [x, y] = [numberOf(one, 'x'), numberOf(one, 'y')];
          return { left: x - half, right: x + half, top: y - 0.9 * size, bottom: y + 0.2 * size };
        });
      expect(boxes.length).toBeGreaterThan(3);
      for (const [i, a] of boxes.entries()) {
        expect(a.left).toBeGreaterThanOrEqual(0);
        expect(a.right).toBeLessThanOrEqual(560);
        expect(a.bottom).toBeLessThanOrEqual(height);
        for (const b of boxes.slice(i + 1)) {
          expect(a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).toBe(false);
        }
      }
    }
  });

  it('is the same each time', () => {
    expect(lotPicture({ ...input, words })).toBe(lotPicture({ ...input, words }));
  });
});

describe('ten marks', () => {
  it.each([
    [{ low: 0, likely: 0, high: 1 }, 0],
    [{ low: 3, likely: 5, high: 8 }, 3],
    [{ low: 9, likely: 10, high: 10 }, 0],
  ])('for %o', (tens) => {
    const rings = named(tenMarks(tens, 'x'), 'circle');
    expect(rings).toHaveLength(10);
    const filled = rings.filter((ring) => ring.getAttribute('fill') !== '#fffdf8');
    expect(filled).toHaveLength(tens.likely);
  });
});

describe('the curve of the odds', () => {
  it('runs through the points that it was given', () => {
    const odds = [
      { yearsAhead: 0, chance: { low: 0, likely: 0, high: 0 } },
      { yearsAhead: 10, chance: { low: 0.2, likely: 0.5, high: 0.8 } },
      { yearsAhead: 25, chance: { low: 0.3, likely: 0.8, high: 1 } },
    ];
    const picture = oddsCurve({ odds, horizonYears: 10, words });
    const level = (tens: number) =>
      named(picture, 'line').map((one) => numberOf(one, 'y1'))[tens / 2] as number;
    const dot = named(picture, 'circle')[0];
    expect(numberOf(dot as NonNullable<typeof dot>, 'cy')).toBeCloseTo((level(4) + level(6)) / 2, 1);
    expect(picture).toContain('most likely');
  });
});

describe('the line from the side', () => {
  it('has every joint as a tick', () => {
    const line = input.result.lines.find(({ drainId }) => drainId === input.segment.drainId) as LineResult;
    const picture = profilePicture({ ...input, line, words, nameOf: (id) => id });
    const ticks = named(picture, 'line').filter((one) => one.getAttribute('stroke-width') === '0.9');
    expect(ticks).toHaveLength(line.joints.length);
  });
});
