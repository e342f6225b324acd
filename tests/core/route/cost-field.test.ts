import { describe, expect, it } from 'vitest';
import { openPath, outline, plainField, rectangle } from './plain-field.js';

const wall = (of: 'inside' | 'outside' | 'edges', shape: ReturnType<typeof rectangle>, clearanceM = 0.3) => ({
  id: 'k',
  of,
  shape,
  clearanceM,
  ends: [],
});

describe('the cost of a straight', () => {
  it('is its length where nothing lies', () => {
    expect(plainField().between(2, 3, 5, 7)).toBeCloseTo(5, 12);
    expect(plainField().between(2, 3, 2, 3)).toBe(0);
  });

  it('counts an area exactly for the part that lies in it', () => {
    const shape = outline([10, 0], [20, 0], [15, 10]);
    const field = plainField({ areas: [{ id: 'bed', shape, morePerM: 3, layer: 'surface' }] });
    // at y = 5 the triangle is 5 m wide
    expect(field.between(5, 5, 25, 5)).toBeCloseTo(20 + 3 * 5, 9);
    expect(field.between(14, 1, 16, 1)).toBeCloseTo(2 * 4, 9);
    expect(field.between(5, 12, 25, 12)).toBeCloseTo(20, 12);
  });

  it('takes the dearest of surfaces that overlap, and adds what lies under them', () => {
    const surface = (id: string, morePerM: number) => ({
      id,
      shape: rectangle(10, 0, 20, 30),
      morePerM,
      layer: 'surface' as const,
    });
    const utility = { id: 'gas', shape: rectangle(14, 0, 15, 30), morePerM: 7, layer: 'utility' as const };
    const field = plainField({ areas: [surface('drive', 2), surface('walk', 4), utility] });
    expect(field.between(5, 5, 25, 5)).toBeCloseTo(20 + 10 * 4 + 1 * 7, 9);
  });

  it('adds up what is smooth', () => {
    const field = plainField({ smooth: (x, y) => 0.1 * x + 0.2 * y });
    expect(field.between(3, 4, 9, 12)).toBeCloseTo(10 * (1 + 0.1 * 6 + 0.2 * 8), 9);
  });

  it('is the same both ways', () => {
    const field = plainField({
      areas: [{ id: 'a', shape: rectangle(4, 4, 9, 20), morePerM: 2, layer: 'surface' }],
      smooth: (x) => Math.sin(x) + 1,
    });
    expect(field.between(2, 3, 21, 17)).toBeCloseTo(field.between(21, 17, 2, 3), 9);
  });
});

describe('what may not be entered', () => {
  it('bars a straight through a circle and lets one pass that touches it', () => {
    const field = plainField({ discs: [{ id: 't', x: 15, y: 15, radiusM: 3 }] });
    expect(field.between(5, 15, 25, 15)).toBe(Infinity);
    expect(field.clear(5, 18, 25, 18)).toBe(true);
    expect(field.clear(5, 17.99, 25, 17.99)).toBe(false);
  });

  it('keeps its clearance to a wall all round', () => {
    const field = plainField({ keepouts: [wall('inside', rectangle(10, 10, 20, 20))] });
    expect(field.clear(5, 9.69, 25, 9.69)).toBe(true);
    expect(field.clear(5, 9.71, 25, 9.71)).toBe(false);
    expect(field.clear(12, 12, 18, 18)).toBe(false);
    // past a corner, 0.3 m from it
    expect(field.clear(9.5, 9, 9.5, 21)).toBe(true);
  });

  it('lets a route begin at a wall but not go through it', () => {
    const ends = [{ x: 15, y: 20.01, radiusM: 1.5 }];
    const field = plainField({ keepouts: [{ ...wall('inside', rectangle(10, 10, 20, 20)), ends }] });
    expect(field.clear(15, 20.01, 15, 25)).toBe(true);
    expect(field.clear(15, 20.01, 18, 20.8)).toBe(true);
    expect(field.clear(15, 20.01, 18, 20.1)).toBe(false);
    expect(field.clear(15, 20.01, 15, 15)).toBe(false);
    expect(field.clear(15, 20.01, 15, 5)).toBe(false);
  });

  it('never leaves a lot, but for an outlet that was given beyond it', () => {
    const lot = wall('outside', rectangle(2, 2, 28, 28), 0);
    const field = plainField({ keepouts: [lot] });
    expect(field.clear(3, 3, 27, 27)).toBe(true);
    expect(field.clear(3, 3, 29, 27)).toBe(false);
    expect(field.clear(29, 3, 29, 9)).toBe(false);
    const out = plainField({ keepouts: [{ ...lot, ends: [{ x: 15, y: 1, radiusM: 1.3 }] }] });
    expect(out.clear(15, 10, 15, 1)).toBe(true);
    expect(out.clear(18, 10, 18, 1)).toBe(false);
  });

  it('does not let a route cross a wall drawn as a line', () => {
    const field = plainField({ keepouts: [wall('edges', openPath([5, 15], [25, 15]))] });
    expect(field.clear(15, 10, 15, 20)).toBe(false);
    expect(field.clear(4, 10, 4, 20)).toBe(true);
  });

  it('marks the lattice as the straights see it', () => {
    const field = plainField({
      discs: [{ id: 't', x: 15, y: 15, radiusM: 3 }],
      keepouts: [wall('inside', rectangle(2, 2, 6, 6))],
    });
    const { x0, y0, cellM, columns, rows } = field.grid;
    const wide = 2 * columns - 1;
    for (let k = 0; k < 2 * rows - 1; k += 3) {
      for (let i = 0; i < wide; i += 3) {
        const [x, y] = [x0 + (i * cellM) / 2, y0 + (k * cellM) / 2];
        expect(field.blocked[k * wide + i] === 0).toBe(field.clear(x, y, x + 1e-9, y));
      }
    }
  });
});
