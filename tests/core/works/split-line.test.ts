import { describe, expect, it } from 'vitest';
import type { Site } from '../../../packages/core/src/model/site.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { seenContextOf } from '../../../packages/core/src/risk/seen-context.js';
import { splitLine } from '../../../packages/core/src/works/split-line.js';
import { AS_OF, seen } from './corner-lot.js';

const site = seen();
const lineNumber = (id: string): number => site.drains.findIndex((drain) => drain.id === id);

function split(id: string, fromM: number, toM: number, change = {}) {
  return splitLine(seenContextOf(site, { asOf: AS_OF }), lineNumber(id), [fromM, toM], change);
}
const ranked = (of: Site) => rank(of, { asOf: AS_OF });

describe('a line with a stretch cut out of it', () => {
  const whole = ranked(site).lines.find(({ drainId }) => drainId === 'collector') as { lengthM: number };
  const { site: cut, pieces } = split('collector', 6, 12);
  const lines = ranked(cut).lines.filter(({ drainId }) => drainId.startsWith('collector'));

  it('is as long as before, end to end', () => {
    expect(pieces.map(({ id }) => id)).toEqual(['collector below', 'collector renewed', 'collector above']);
    const sum = lines.reduce((all, { lengthM }) => all + lengthM, 0);
    expect(sum).toBeCloseTo(whole.lengthM, 3);
  });

  it('keeps every fitting on it, on the piece where it lies', () => {
    const before = ranked(site).lines.find(({ drainId }) => drainId === 'collector');
    const after = lines.flatMap(({ fittings }) => fittings.map(({ id }) => id));
    expect([...new Set(after)].sort()).toEqual(before?.fittings.map(({ id }) => id).sort());
  });

  it('keeps the depths of its ends', () => {
    const above = cut.drains.find(({ id }) => id === 'collector above');
    const below = cut.drains.find(({ id }) => id === 'collector below');
    const old = site.drains[lineNumber('collector')];
    expect(above?.depthStartM).toBeCloseTo(old?.depthStartM as number, 9);
    expect(below?.depthEndM).toBeCloseTo(old?.depthEndM as number, 9);
    expect(above?.depthEndM).toBeCloseTo(
      cut.drains.find(({ id }) => id === 'collector renewed')?.depthStartM as number,
      9,
    );
  });

  it('has its trouble where it was seen, and none in the stretch', () => {
    const places = (of: Site) =>
      ranked(of)
        .segments.filter(({ known }) => known !== null)
        .map(({ known }) => known?.seen)
        .sort();
    expect(places(cut).filter((one) => one === 'fine')).toHaveLength(1);
    // what was seen on another line is still there
    expect(places(cut)).toContain('full');
    const { site: without } = split('collector', 15, 25);
    expect(places(without)).not.toContain('fine');
    expect(ranked(cut).issues.filter(({ code }) => code === 'finding-misplaced')).toEqual([]);
  });

  it('bears nearly the same load as before where nothing is changed', () => {
    const load = (of: Site): number =>
      ranked(of)
        .lines.filter(({ drainId }) => drainId.startsWith('collector'))
        .reduce((sum, { expectedEntries }) => sum + expectedEntries, 0);
    // two cuts: at most two joints fewer out of some twenty
    expect(load(cut) / load(site)).toBeGreaterThan(0.85);
    expect(load(cut) / load(site)).toBeLessThan(1.05);
  });

  it('takes a rest of a hand breadth with it', () => {
    const { pieces: one } = split('tail', 0.2, 10.5);
    expect(one).toHaveLength(1);
    expect(one[0]).toMatchObject({ id: 'tail', fromM: 0 });
  });
});
