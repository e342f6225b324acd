import { describe, expect, it } from 'vitest';
import type { Site } from '../../../packages/core/src/model/site.js';
import { seenContextOf } from '../../../packages/core/src/risk/seen-context.js';
import { counted, fittingAt, withFittings } from '../../../packages/core/src/works/renew.js';
import { splitLine } from '../../../packages/core/src/works/split-line.js';
import {
  metresSeen,
  stretchOf,
  targetOf,
  type WorkRequest,
} from '../../../packages/core/src/works/stretch.js';
import { type Scene, scene } from '../../scenes/scene.js';

const OPTIONS = { asOf: '2026-11-25', segmentM: 3 };

/** A clay line of 18 m with its outlet at reading 0. */
const line18 = (): Scene =>
  scene().drain({
    id: 'main',
    name: 'Back yard',
    path: [
      [18, 0],
      [0, 0],
    ],
    flow: 'as-drawn',
    material: 'clay',
    size_mm: 100,
    installed: 1970,
  });
const finding = (made: Scene, more: Readonly<Record<string, unknown>>): Scene =>
  made.finding({ drain: 'main', from: 'end', date: '2026-05-01', ...more });

const asked = (site: Site, request: WorkRequest) => stretchOf(site, seenContextOf(site, OPTIONS), request);
const round = (value: number): number => Math.round(value * 1e6) / 1e6;

describe('a stretch that is asked about', () => {
  const both = (): Site =>
    finding(finding(line18(), { at_m: 4, to_m: 6.5, seen: 'mass' }), {
      at_m: 8,
      to_m: 9,
      seen: 'fine',
    }).site();

  it('is told with its length, its segments and the gravest of what was seen in it', () => {
    const target = targetOf(asked(both(), { drain: 'main', fromM: 2, toM: 10 }));
    expect(target).toMatchObject({
      drainId: 'main',
      drainName: 'Back yard',
      lengthM: 8,
      segmentIds: ['main/1', 'main/2', 'main/3', 'main/4'],
      material: 'clay',
      known: { seen: 'mass' },
    });
    expect(round(target.lineLengthM)).toBe(18);
    expect(target.known?.lengthM).toBeCloseTo(2.5, 6);
    expect(targetOf(asked(line18().site(), { drain: 'main' })).known).toBeNull();
    const later = finding(finding(line18(), { at_m: 4, to_m: 6, seen: 'fine' }), { at_m: 9, seen: 'full' });
    expect(targetOf(asked(later.site(), { drain: 'main' })).known?.seen).toBe('full');
  });

  it('is a segment, a whole line, or what of it lies on the line', () => {
    const ends = (request: WorkRequest) => {
      const { fromM, toM } = asked(both(), request);
      return [round(fromM), round(toM)];
    };
    expect(ends({ segment: 'main/3' })).toEqual([6, 9]);
    expect(ends({ drain: 'main' })).toEqual([0, 18]);
    expect(ends({ drain: 'main', fromM: 7, toM: 3 })).toEqual([3, 7]);
    expect(ends({ drain: 'main', fromM: -5, toM: 30 })).toEqual([0, 18]);
    for (const request of [{ segment: 'main/9' }, { drain: 'none' }, { drain: 'main', fromM: 20, toM: 30 }]) {
      expect(() => ends(request)).toThrow(RangeError);
    }
  });

  it('has the metres of each thing seen in it', () => {
    const stretch = asked(both(), { drain: 'main', fromM: 5, toM: 18 });
    // by slices of 0.1 m, one more at either end
    expect(Math.abs(metresSeen(stretch, ['mass']) - 1.5)).toBeLessThan(0.11);
    expect(Math.abs(metresSeen(stretch, ['fine', 'mass']) - 2.5)).toBeLessThan(0.31);
    expect(metresSeen(stretch, ['sag'])).toBe(0);
  });
});

describe('a stretch cut out of its line', () => {
  const cut = (made: Scene, fromM: number, toM: number) => {
    const site = made.site();
    const number = site.drains.findIndex(({ id }) => id === 'main');
    return splitLine(seenContextOf(site, OPTIONS), number, [fromM, toM], {});
  };

  it('leaves the rests of its line on either side, save a hand breadth', () => {
    const ids = (fromM: number, toM: number) => cut(line18(), fromM, toM).pieces.map(({ id }) => id);
    expect(ids(6, 12)).toEqual(['main below', 'main renewed', 'main above']);
    expect(ids(0.2, 12)).toEqual(['main renewed', 'main above']);
    expect(ids(6, 17.8)).toEqual(['main below', 'main renewed']);
    expect(ids(0.2, 17.8)).toEqual(['main']);
  });

  it('takes with it what was seen in it, and leaves what was seen beside it', () => {
    const left = (more: Readonly<Record<string, unknown>>) =>
      cut(finding(line18(), { seen: 'mass', ...more }), 6, 12).site.findings.map(
        ({ drain, atM, toM, entries }) => [drain, round(atM), toM === null ? null : round(toM), entries],
      );
    expect(left({ at_m: 6, to_m: 12, entries: 3 })).toEqual([]);
    expect(left({ at_m: 3, entries: 2 })).toEqual([['main below', 3, null, 2]]);
    expect(left({ at_m: 15, to_m: 17, entries: 2 })).toEqual([['main above', 3, 5, 2]]);
    // nobody knows how many of the three lay in the part that stays
    expect(left({ at_m: 4, to_m: 9, entries: 3 })).toEqual([['main below', 4, 6, null]]);
    expect(left({ at_m: 5, to_m: 13 })).toEqual([
      ['main below', 5, 6, null],
      ['main above', 0, 1, null],
    ]);
  });
});

describe('fittings of new pipe', () => {
  const made = line18()
    .fitting({ id: 'w', type: 'wye', at: [13, 0] })
    .fitting({ id: 'c', type: 'coupling', at: [9, 0] });

  it('are found within a foot of a station', () => {
    const site = made.site();
    const line = seenContextOf(site, OPTIONS).context.lines.at(0);
    expect([12.75, 13.25].map((at) => fittingAt(line, at)?.id)).toEqual(['w', 'w']);
    expect([12.65, 13.35, 0].map((at) => fittingAt(line, at))).toEqual([undefined, undefined, undefined]);
  });

  it('take the place of the old ones; a basin is tight and belongs to every line that comes up to it', () => {
    const site = made.site();
    const line = seenContextOf(site, OPTIONS).context.lines.at(0);
    const after = withFittings(
      site,
      line,
      'new pipe',
      [
        { type: 'basin', atM: 13, replaces: 'w' },
        { type: 'coupling', atM: 4, replaces: null },
      ],
      null,
    ).fittings;
    const old = site.fittings.find(({ id }) => id === 'w');
    expect(after.map(({ id, type, sealed, drain }) => [id, type, sealed, drain])).toEqual([
      ['c', 'coupling', null, null],
      ['w', 'basin', true, null],
      ['main new coupling 4.0', 'coupling', null, 'new pipe'],
    ]);
    expect(after[1]?.position).toEqual(old?.position);
  });

  it('are bought like with like', () => {
    const of = (type: 'wye' | 'basin') => ({ type, atM: 0, replaces: null });
    expect(counted([of('wye'), of('basin'), of('wye')])).toEqual([
      { type: 'wye', count: 2 },
      { type: 'basin', count: 1 },
    ]);
  });
});
