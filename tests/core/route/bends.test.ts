import { describe, expect, it } from 'vitest';
import {
  bendRuleOf,
  bendsOf,
  fittingsFor,
  roomLacking,
  tangentM,
  turnAt,
} from '../../../packages/core/src/route/bends.js';
import { fitBends } from '../../../packages/core/src/route/fit-bends.js';
import { lengthOf } from './plain-field.js';

type Points = readonly (readonly [number, number])[];
const STEP = Math.PI / 8;

const turnsOf = (points: Points): number[] =>
  points.slice(2).map((c, i) => turnAt(points[i] as [number, number], points[i + 1] as [number, number], c));

describe('bends', () => {
  it('are made of fittings where pipe comes in sticks, and swept where it comes in a coil', () => {
    expect(bendRuleOf({ material: 'pvc-sdr35', sizeM: 0.1 }).kind).toBe('fittings');
    expect(bendRuleOf({ material: 'hdpe-dual-wall', sizeM: 0.1 }).kind).toBe('fittings');
    expect(bendRuleOf({ material: 'hdpe-corrugated', sizeM: 0.1 })).toMatchObject({
      kind: 'swept',
      radiusM: 0.8,
    });
    expect(bendRuleOf({ material: 'hdpe-corrugated', sizeM: 0.1, pieceM: 3.05 }).kind).toBe('fittings');
    expect(bendRuleOf({ material: 'hdpe-welded', sizeM: 0.1 })).toMatchObject({ kind: 'swept', radiusM: 3 });
  });

  it.each([
    [1, [22.5]],
    [2, [45]],
    [3, [45, 22.5]],
    [4, [90]],
    [6, [90, 45]],
  ])('%i steps of 22.5 degrees take %j', (steps, fittings) => {
    expect(fittingsFor(steps)).toEqual(fittings);
    expect(fittings.reduce((a, b) => a + b, 0)).toBe(22.5 * steps);
  });

  it('take up R tan(half the turn) on either side when swept', () => {
    expect(tangentM(2, Math.PI / 2)).toBeCloseTo(2, 12);
    // a right angle between straights of 1 m lacks a metre of room for a radius of 2 m
    expect(roomLacking(2, [0, 0], [1, 0], [1, 1], true, true)).toBeCloseTo(1, 12);
    expect(roomLacking(2, [0, 0], [2, 0], [2, 2], true, true)).toBe(0);
    expect(roomLacking(2, [0, 0], [2, 0], [2, 2], false, true)).toBeCloseTo(1, 12);
  });

  it('count a sweep of many small turns as one', () => {
    const arc = Array.from({ length: 10 }, (_, i): [number, number] => {
      const angle = (i / 9) * (Math.PI / 2);
      return [5 * Math.sin(angle), 5 - 5 * Math.cos(angle)];
    });
    const path: Points = [[-5, 0], ...arc, [5, 12]];
    const bends = bendsOf(path, { kind: 'swept', radiusM: 0.8 });
    expect(bends).toHaveLength(1);
    expect(bends[0]?.turnDegrees).toBeCloseTo(90, 6);
  });
});

describe('a path fitted to fittings', () => {
  const paths: readonly Points[] = [
    [
      [0, 0],
      [10, 3],
      [14, 12],
    ],
    [
      [0, 0],
      [6, 1],
      [12, 6],
      [13, 20],
    ],
    [
      [0, 0],
      [5, 5],
      [12, 4],
      [20, 12],
    ],
    [
      [0, 0],
      [4, 0.9],
      [8, 2.7],
      [11, 6],
      [12, 14],
    ],
  ];
  it.each(paths.map((path) => [path]))('turns by whole steps only: %j', (path) => {
    const fitted = fitBends(path, STEP, lengthOf);
    expect(fitted?.[0]).toEqual(path[0]);
    expect(fitted?.at(-1)?.[0]).toBeCloseTo(path.at(-1)?.[0] as number, 9);
    expect(fitted?.at(-1)?.[1]).toBeCloseTo(path.at(-1)?.[1] as number, 9);
    for (const turn of turnsOf(fitted ?? [])) {
      expect(Math.abs(turn / STEP - Math.round(turn / STEP))).toBeLessThan(1e-6);
    }
    // going by length alone it is little longer than what it was made of
    expect(lengthOf(fitted ?? []) / lengthOf(path)).toBeLessThan(1.06);
  });

  it('leaves a straight as it is', () => {
    expect(
      fitBends(
        [
          [0, 0],
          [3, 4],
        ],
        STEP,
        lengthOf,
      ),
    ).toEqual([
      [0, 0],
      [3, 4],
    ]);
  });

  it('gives none where there is no room', () => {
    expect(
      fitBends(
        [
          [0, 0],
          [10, 3],
          [14, 12],
        ],
        STEP,
        () => Infinity,
      ),
    ).toBeNull();
  });
});
