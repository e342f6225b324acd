import { describe, expect, it } from 'vitest';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import { crossesPaved, type Ground, groundOf, wayRound } from '../../../packages/core/src/risk/between.js';
import { type Scene, scene } from '../../scenes/scene.js';

/** A line along y = 0 whose plane has its origin where the scene has it. */
const yard = (): Scene =>
  scene().drain({
    id: 'main',
    path: [
      [-10, 0],
      [10, 0],
    ],
    flow: 'as-drawn',
  });

function ground(made: Scene): Ground {
  const site = made.site();
  const found = groundOf(site, layOutLines(site, 3).at(0).plane);
  if (found === null) throw new Error('there is something in the ground');
  return found;
}

describe('the ground between stem and pipe', () => {
  it('is free where nothing stands in it', () => {
    const site = yard().site();
    expect(groundOf(site, layOutLines(site, 3).at(0).plane)).toBeNull();
  });

  it.each([
    ['building', true],
    ['paving', true],
    ['pool', true],
    ['wall', true],
    ['utility', false],
    ['boundary', false],
  ])('under a %s is hard: %s', (type, hard) => {
    const made = yard().obstacle({
      type,
      path: [
        [-1, 2],
        [1, 2],
        [1, 3],
        [-1, 3],
        [-1, 2],
      ],
    });
    expect(crossesPaved(ground(made), 0, 6, 0, 0)).toBe(hard);
    expect(crossesPaved(ground(made), 5, 6, 5, 0)).toBe(false);
  });

  it('is hard where the stem stands in a hole of the paving', () => {
    const made = yard().obstacle({
      type: 'paving',
      path: [
        [-3, -1],
        [3, -1],
        [3, 8],
        [-3, 8],
        [-3, -1],
      ],
    });
    expect(crossesPaved(ground(made), 0, 12, 0, 0)).toBe(true);
  });
});

describe('the way round a barrier', () => {
  const behind = yard().barrier({
    path: [
      [-4, 3],
      [3, 3],
    ],
  });

  it('is that by the nearer end', () => {
    // from (0, 6) round (3, 3) to (0, 0)
    expect(wayRound(ground(behind), 0, 6, 0, 0)).toBeCloseTo(2 * Math.hypot(3, 3), 4);
  });

  it('is none where the barrier does not stand between', () => {
    expect(wayRound(ground(behind), 8, 6, 8, 0)).toBeNull();
    expect(wayRound(ground(behind), 0, 2, 0, 0)).toBeNull();
  });

  it('is the longest of several', () => {
    const two = behind.barrier({
      path: [
        [-6, 1.5],
        [6, 1.5],
      ],
    });
    expect(wayRound(ground(two), 0, 6, 0, 0)).toBeCloseTo(Math.hypot(6, 4.5) + Math.hypot(6, 1.5), 4);
  });
});
