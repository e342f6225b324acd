import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pipePieces } from '../../../packages/core/src/quantities/pipe-pieces.js';

describe('pieces of pipe', () => {
  it('are bought whole, and what is cut off is told', () => {
    expect(pipePieces('pvc-sdr35', [10], 3)).toMatchObject({
      pieces: 4,
      boughtM: 12,
      wasteM: 2,
      couplings: 0,
    });
  });

  it('use an off-cut in the next run', () => {
    // 4 m: two pieces, 2 m left; the next 5 m: that off-cut and one piece
    expect(pipePieces('pvc-sdr35', [4, 5], 3)).toMatchObject({ pieces: 3, boughtM: 9, wasteM: 0 });
  });

  it('throw away an off-cut shorter than a foot', () => {
    expect(pipePieces('pvc-sdr35', [2.8, 2.8], 3)).toMatchObject({ pieces: 2, boughtM: 6 });
  });

  it('with plain ends need a coupling between any two of them in a run', () => {
    expect(pipePieces('hdpe-corrugated', [9, 3], 3).couplings).toBe(2);
    expect(pipePieces('hdpe-corrugated', [4, 5], 3).couplings).toBe(2);
  });

  it('come off a coil by the metre, with a coupling only where a coil ends', () => {
    expect(pipePieces('hdpe-corrugated', [25])).toMatchObject({
      coil: true,
      boughtM: 25,
      wasteM: 0,
      couplings: 0,
    });
    expect(pipePieces('hdpe-corrugated', [75])).toMatchObject({ pieces: 3, couplings: 2 });
  });

  it('are never fewer than the length asks for, nor a whole piece too many for each run', () => {
    const runs = fc.array(fc.double({ min: 0.4, max: 40, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(runs, fc.constantFrom(0.9, 3, 6.1), (lengths, piece) => {
        const total = lengths.reduce((sum, run) => sum + run, 0);
        const { boughtM, wasteM } = pipePieces('pvc-sdr35', lengths, piece);
        expect(boughtM).toBeGreaterThanOrEqual(total - 1e-6);
        expect(wasteM).toBeCloseTo(boughtM - total, 9);
        expect(wasteM).toBeLessThan(piece * lengths.length + 1e-6);
      }),
    );
  });
});
