import { describe, expect, it } from 'vitest';
import { type EndFacts, flowOf } from '../../../packages/core/src/line/flow.js';
import { flowIssue, layOutLines } from '../../../packages/core/src/line/line-model.js';
import type { FittingType } from '../../../packages/core/src/model/site.js';
import { scene } from '../../scenes/scene.js';

const end = (fittings: FittingType[] = [], topM: number | null = null, joinsAnother = false): EndFacts => ({
  topM,
  fittings,
  joinsAnother,
});
const NOTHING = end();

describe('which way the water runs', () => {
  it.each([
    ['as stated, against all else', 'reversed', end(['basin'], 9), end(['outlet'], 1), false, 'given'],
    ['as stated', 'as-drawn', end(['outlet']), end(['basin']), true, 'given'],
    ['down from the start', null, end([], 9), end([], 8), true, 'levels'],
    [
      'down from the end, whatever the fittings',
      null,
      end(['basin'], 8),
      end(['outlet'], 9),
      false,
      'levels',
    ],
    ['by fittings where the pipe lies level', null, end([], 8), end(['outlet'], 8), true, 'fittings'],
    ['by fittings where one level is missing', null, end([], 8), end(['outlet']), true, 'fittings'],
    ['towards an outlet', null, end(['outlet']), NOTHING, false, 'fittings'],
    ['out of a branch into its main', null, NOTHING, end([], null, true), true, 'branch'],
    ['out of a branch drawn from its main', null, end([], null, true), NOTHING, false, 'branch'],
    ['away from a downspout', null, end(['downspout']), NOTHING, true, 'fittings'],
    ['away from a basin at the end', null, NOTHING, end(['basin']), false, 'fittings'],
    ['as drawn from basin to basin', null, end(['basin']), end(['basin']), true, 'as-drawn'],
    ['as drawn from outlet to outlet', null, end(['outlet']), end(['outlet']), true, 'as-drawn'],
    ['as drawn where nothing is known', null, NOTHING, NOTHING, true, 'as-drawn'],
  ] as const)('%s', (_, flow, start, finish, asDrawn, basis) => {
    expect(flowOf({ flow }, start, finish)).toEqual({ asDrawn, basis });
  });
});

describe('a line of a site', () => {
  const path = [
    [0, 0],
    [20, 0],
  ] as const;

  it('falls by ground level and depth together', () => {
    const site = scene()
      .drain({ path, depth_start_m: 0.5, depth_end_m: 1.2 })
      .level({ at: [0, 1], elevation_m: 10 })
      .level({ at: [20, 1], elevation_m: 10.5 })
      .site();
    // tops at 9.5 and 9.3 m: the ground rises along the line, the pipe falls
    const line = layOutLines(site, 3).at(0);
    expect(line).toMatchObject({ flowsAsDrawn: true, flowBasis: 'levels' });
    expect(line.depthOutletM).toBe(1.2);
  });

  it('says so where nothing tells the flow', () => {
    const unknown = layOutLines(scene().drain({ id: 'a', path }).site(), 3).at(0);
    expect(unknown).toMatchObject({ flowsAsDrawn: true, flowBasis: 'as-drawn' });
    expect(flowIssue(unknown)).toMatchObject({
      code: 'flow-assumed',
      severity: 'notice',
      place: { feature: 'a' },
    });
    const told = layOutLines(scene().drain({ id: 'a', path, flow: 'as-drawn' }).site(), 3).at(0);
    expect(flowIssue(told)).toBeNull();
  });

  it('runs into the line that it ends on', () => {
    const site = scene()
      .drain({
        id: 'main',
        path: [
          [0, 0],
          [20, 0],
        ],
        flow: 'as-drawn',
      })
      .drain({
        id: 'branch',
        path: [
          [10, 0],
          [10, 8],
        ],
      })
      .site();
    expect(layOutLines(site, 3).at(1)).toMatchObject({ flowsAsDrawn: false, flowBasis: 'branch' });
  });
});
