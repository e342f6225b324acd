import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FittingJoints, jointsOf } from '../../../packages/core/src/line/joints.js';

const fitting = (stationM: number, joints = 3, id = 'w'): FittingJoints => ({
  id,
  stationM,
  joints,
  sealed: null,
});
const stations = (
  lengthM: number,
  pieceM: number | null,
  fittings: readonly FittingJoints[] = [],
): number[] => jointsOf(lengthM, pieceM, fittings).map((j) => j.stationM);

describe('the joints of a line', () => {
  it('lie between pieces, not at the ends', () => {
    expect(stations(10, 3)).toEqual([3, 6, 9]);
    expect(stations(9, 3)).toEqual([3, 6]);
    expect(stations(3, 3)).toEqual([]);
    expect(stations(2, 3)).toEqual([]);
  });

  it('are as many as a crew counts: one fewer than the pieces laid', () => {
    const length = fc.integer({ min: 1, max: 900 }).map((n) => n / 10 + 0.06);
    const piece = fc.integer({ min: 3, max: 80 }).map((n) => n / 10);
    fc.assert(
      fc.property(length, piece, (lengthM, pieceM) => {
        const pieces = Math.ceil(lengthM / pieceM);
        const cut = lengthM - (pieces - 1) * pieceM;
        fc.pre(cut > 0.051);
        expect(stations(lengthM, pieceM)).toHaveLength(pieces - 1);
      }),
      { seed: 8, numRuns: 300 },
    );
  });

  it('start again at every fitting', () => {
    expect(stations(10, 3, [fitting(4)])).toEqual([3, 4, 7]);
    expect(stations(10, 3, [fitting(8), fitting(1)])).toEqual([1, 4, 7, 8]);
  });

  it('make no sliver of pipe before a fitting or an end', () => {
    expect(stations(6.04, 3)).toEqual([3]);
    expect(stations(6.06, 3)).toEqual([3, 6]);
    expect(stations(10, 3, [fitting(3.04)])).toEqual([3.04, 6.04, 9.04]);
  });

  it('count the sockets of a fitting, at the very ends too', () => {
    const joints = jointsOf(6, 3, [fitting(0, 1, 'low'), fitting(6, 5, 'top')]);
    expect(joints).toEqual([
      { stationM: 0, count: 1, fitting: 'low', sealed: null },
      { stationM: 3, count: 1, fitting: null, sealed: null },
      { stationM: 6, count: 5, fitting: 'top', sealed: null },
    ]);
  });

  it('leave out a fitting without sockets but start again at it', () => {
    expect(stations(10, 3, [fitting(4, 0)])).toEqual([3, 7]);
  });

  it('are those of the fittings alone on a run without joints', () => {
    expect(stations(10, null, [fitting(4)])).toEqual([4]);
    expect(stations(10, null)).toEqual([]);
  });

  it('carry what is said of the seal', () => {
    expect(jointsOf(5, null, [{ id: 'b', stationM: 2, joints: 2, sealed: true }])[0]?.sealed).toBe(true);
  });
});
