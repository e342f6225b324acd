import { describe, expect, it } from 'vitest';
import { pipeTopAt } from '../../../packages/core/src/line/pipe-top.js';
import type { Drain } from '../../../packages/core/src/model/site.js';
import { type Scene, scene } from '../../scenes/scene.js';

/** A line of 20 m, 0.6 m deep at its start and 0.9 m at its end. */
const line = (more = {}): Scene =>
  scene().drain({
    path: [
      [0, 0],
      [20, 0],
    ],
    depth_start_m: 0.6,
    depth_end_m: 0.9,
    ...more,
  });

function topOf(made: Scene, end: 'start' | 'end') {
  const site = made.site();
  return pipeTopAt(site, site.drains[0] as Drain, end);
}

describe('the top of a pipe at an end', () => {
  it('lies its depth under the ground level beside it', () => {
    const made = line()
      .level({ id: 'up', at: [0, 1], elevation_m: 101 })
      .level({ id: 'down', at: [20, -2], elevation_m: 100.5 });
    expect(topOf(made, 'start')).toMatchObject({ topM: 100.4, level: { id: 'up' } });
    expect(topOf(made, 'end')?.topM).toBeCloseTo(99.6, 12);
    expect(topOf(made, 'end')?.distanceM).toBeCloseTo(2, 5);
  });

  it('goes by the nearest level, no further off than 3 m', () => {
    const far = line().level({ id: 'far', at: [-3.01, 0], elevation_m: 101 });
    expect(topOf(far, 'start')).toBeNull();
    far.level({ id: 'edge', at: [-1.8, 2.39], elevation_m: 102 });
    expect(topOf(far, 'start')?.level.id).toBe('edge');
    far
      .level({ id: 'near', at: [0.5, 0.5], elevation_m: 103 })
      .level({ id: 'other', at: [0, 1], elevation_m: 99 });
    expect(topOf(far, 'start')?.level.id).toBe('near');
  });

  it('is not known without a depth or a level', () => {
    expect(topOf(line(), 'start')).toBeNull();
    const half = line({ depth_start_m: undefined }).level({ at: [0, 0], elevation_m: 101 });
    expect(topOf(half, 'start')).toBeNull();
    expect(topOf(half, 'end')).toBeNull();
  });
});
