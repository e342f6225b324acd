import { describe, expect, it } from 'vitest';
import type { LineWater } from '../../../packages/core/src/model/water-result.js';
import { waterOf } from '../../../packages/core/src/water/water.js';
import { type Place, type Scene, scene } from '../../scenes/scene.js';

type Extra = Readonly<Record<string, unknown>>;
const drain = (id: string, path: readonly Place[], more: Extra = {}) => ({
  id,
  path,
  flow: 'as-drawn',
  material: 'pvc-sdr35',
  size_mm: 100,
  carries: 'storm',
  ...more,
});

function linesOf(made: Scene): Record<string, LineWater> {
  const { lines } = waterOf(made.site(), { rainMmPerHour: 100, slopeRatio: 0.01 });
  return Object.fromEntries(lines.map((line) => [line.drainId, line]));
}

/** Two branches into a main, and the main into a tail. */
const net = (more: { a?: Extra; b?: Extra; main?: Extra; tail?: Extra } = {}): Scene =>
  scene()
    .drain(
      drain(
        'tail',
        [
          [30, 0],
          [40, 0],
        ],
        more.tail,
      ),
    )
    .drain(
      drain(
        'main',
        [
          [0, 0],
          [30, 0],
        ],
        more.main,
      ),
    )
    .drain(
      drain(
        'a',
        [
          [10, 8],
          [10, 0],
        ],
        { serves_m2: 50, ...more.a },
      ),
    )
    .drain(
      drain(
        'b',
        [
          [20, -8],
          [20, 0],
        ],
        { serves_m2: 70, ...more.b },
      ),
    );

describe('the area that drains to a line', () => {
  it('adds down the network', () => {
    const lines = linesOf(net({ main: { serves_m2: 10 } }));
    expect(lines['a']).toMatchObject({ drainsInto: 'main', servesM2: 50, servedM2: 50 });
    expect(lines['main']).toMatchObject({ drainsInto: 'tail', servesM2: 10, servedM2: 130 });
    expect(lines['tail']).toMatchObject({ drainsInto: null, servesM2: null, servedM2: 130 });
  });

  it('goes with the flow, not the drawing', () => {
    const lines = linesOf(net({ b: { flow: 'reversed' } }));
    expect(lines['b']).toMatchObject({ drainsInto: null, servedM2: 70 });
    expect(lines['main']?.servedM2).toBe(50);
  });

  it('is the least where a head of the net has none, and names it', () => {
    const lines = linesOf(net({ b: { serves_m2: undefined } }));
    expect(lines['b']).toMatchObject({
      servedM2: null,
      designFlowM3s: null,
      notCounted: { lines: 1, examples: ['b'] },
    });
    expect(lines['b']?.unknown).toContainEqual({ field: 'designFlowM3s', why: 'area-not-given' });
    expect(lines['tail']).toMatchObject({ servedM2: 50, notCounted: { lines: 1, examples: ['b'] } });
  });

  it('counts no rain in foul lines, unless storm lines run into them', () => {
    const apart = linesOf(net({ a: { carries: 'foul' } }));
    expect(apart['a']).toMatchObject({ servedM2: null, designFlowM3s: null, notCounted: { lines: 0 } });
    expect(apart['a']?.unknown).toContainEqual({ field: 'designFlowM3s', why: 'foul' });
    expect(apart['main']?.servedM2).toBe(70);
    const foul = { carries: 'foul' };
    expect(linesOf(net({ main: foul, tail: foul }))['tail']?.servedM2).toBe(120);
  });

  it('meets at a basin: two lines in, one out', () => {
    const lines = linesOf(
      scene()
        .drain(
          drain(
            'one',
            [
              [0, 8],
              [10, 0.5],
            ],
            { serves_m2: 20 },
          ),
        )
        .drain(
          drain(
            'two',
            [
              [0, -8],
              [10, -0.5],
            ],
            { serves_m2: 30 },
          ),
        )
        .drain(
          drain('out', [
            [10.5, 0],
            [30, 0],
          ]),
        )
        .fitting({ id: 'B', type: 'basin', at: [10, 0] }),
    );
    expect(lines['one']?.drainsInto).toBe('out');
    expect(lines['two']?.drainsInto).toBe('out');
    expect(lines['out']?.servedM2).toBe(50);
  });

  it('is not known in a ring', () => {
    const lines = linesOf(
      scene()
        .drain(
          drain(
            'x',
            [
              [0, 0],
              [20, 0],
            ],
            { serves_m2: 20 },
          ),
        )
        .drain(
          drain(
            'y',
            [
              [20, 0],
              [10, 15],
            ],
            { serves_m2: 20 },
          ),
        )
        .drain(
          drain(
            'z',
            [
              [10, 15],
              [0, 0],
            ],
            { serves_m2: 20 },
          ),
        ),
    );
    for (const id of ['x', 'y', 'z']) {
      expect(lines[id]?.designFlowM3s).toBeNull();
      expect(lines[id]?.unknown).toContainEqual({ field: 'designFlowM3s', why: 'ring' });
    }
  });

  it('goes one way where two lines begin, and says so', () => {
    const made = scene()
      .drain(
        drain(
          'in',
          [
            [0, 0],
            [10, 0],
          ],
          { serves_m2: 20 },
        ),
      )
      .drain(
        drain('q', [
          [10, 0],
          [20, 5],
        ]),
      )
      .drain(
        drain('p', [
          [10, 0],
          [20, -5],
        ]),
      );
    const { lines, assumed } = waterOf(made.site(), { rainMmPerHour: 100 });
    expect(lines.map(({ drainId, servedM2 }) => [drainId, servedM2])).toEqual([
      ['in', 20],
      ['q', null],
      ['p', 20],
    ]);
    expect(assumed).toContainEqual(expect.objectContaining({ path: 'drains/in/drainsInto', value: 'p' }));
  });
});
