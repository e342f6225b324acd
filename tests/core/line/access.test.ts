import { describe, expect, it } from 'vitest';
import { reachFor } from '../../../packages/core/src/line/access.js';
import { type LineModel, layOutLines } from '../../../packages/core/src/line/line-model.js';
import { type Scene, scene } from '../../scenes/scene.js';

/** A line of 30 m whose outlet end lies at the origin. */
const line30 = (): Scene =>
  scene().drain({
    id: 'main',
    path: [
      [30, 0],
      [0, 0],
    ],
    flow: 'as-drawn',
  });

function laidOut(made: Scene): LineModel {
  return layOutLines(made.site(), 3).at(0);
}

const rounded = (reach: ReturnType<typeof reachFor>) => ({
  ...reach,
  atM: Math.round(reach.atM * 1e6) / 1e6,
  toM: Math.round(reach.toM * 1e6) / 1e6,
});

describe('where a crew goes in to reach a stretch', () => {
  const withBasins = laidOut(
    line30()
      .fitting({ id: 'B1', type: 'basin', at: [10, 0] })
      .fitting({ id: 'CO1', type: 'cleanout', at: [25, 0] })
      .fitting({ id: 'W1', type: 'wye', at: [18, 0] }),
  );

  it('is the way in with the shortest push, up or down the line', () => {
    expect(rounded(reachFor(withBasins, 12, 15))).toEqual({
      from: 'B1',
      fromName: 'basin B1',
      direction: 'upstream',
      atM: 2,
      toM: 5,
    });
    expect(rounded(reachFor(withBasins, 5, 8))).toEqual({
      from: 'B1',
      fromName: 'basin B1',
      direction: 'downstream',
      atM: 2,
      toM: 5,
    });
    expect(rounded(reachFor(withBasins, 20, 23))).toEqual({
      from: 'CO1',
      fromName: 'cleanout CO1',
      direction: 'downstream',
      atM: 2,
      toM: 5,
    });
  });

  it('is never a wye, whose branch is under ground', () => {
    expect(reachFor(withBasins, 17, 19).from).not.toBe('W1');
  });

  it('starts at nothing where the stretch begins at the way in', () => {
    expect(rounded(reachFor(withBasins, 10, 13))).toMatchObject({
      from: 'B1',
      direction: 'upstream',
      atM: 0,
      toM: 3,
    });
    expect(rounded(reachFor(withBasins, 7, 10))).toMatchObject({
      from: 'B1',
      direction: 'downstream',
      atM: 0,
      toM: 3,
    });
  });

  it('may be the outlet, from which one can only go up', () => {
    const line = laidOut(
      line30()
        .fitting({ id: 'O1', type: 'outlet', at: [0, 0] })
        .fitting({ id: 'DS1', type: 'downspout', at: [30, 0] }),
    );
    expect(rounded(reachFor(line, 6, 9))).toEqual({
      from: 'outlet end',
      fromName: 'the outlet',
      direction: 'upstream',
      atM: 6,
      toM: 9,
    });
    expect(rounded(reachFor(line, 21, 24))).toMatchObject({
      from: 'DS1',
      direction: 'downstream',
      atM: 6,
      toM: 9,
    });
  });

  it('is the nearer end of a line without any way in', () => {
    const bare = laidOut(line30());
    expect(rounded(reachFor(bare, 0, 3))).toEqual({
      from: 'outlet end',
      fromName: 'the lower end',
      direction: 'upstream',
      atM: 0,
      toM: 3,
    });
    expect(rounded(reachFor(bare, 24, 27))).toEqual({
      from: 'upper end',
      fromName: 'the upper end',
      direction: 'downstream',
      atM: 3,
      toM: 6,
    });
  });

  it('gives a push as long as the stretch for every segment of a line', () => {
    for (const { fromM, toM } of withBasins.segments) {
      const reach = reachFor(withBasins, fromM, toM);
      expect(reach.toM - reach.atM).toBeCloseTo(toM - fromM, 9);
      expect(reach.atM).toBeGreaterThanOrEqual(0);
    }
  });
});
