import { describe, expect, it } from 'vitest';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { Rescorer } from '../../../packages/core/src/risk/rescorer.js';
import { type Scene, scene } from '../../scenes/scene.js';

const AS_OF = '2026-11-25';
const OPTIONS = { asOf: AS_OF };

type Change = (made: Scene) => Scene;
const nothing: Change = (made) => made;

/** Two clay lines 90 m apart, each with trees of its own; `first` stands before all other trees of the list. */
function yard({ first = nothing, change = nothing, piece = 0.6 } = {}): Scene {
  const lines = scene()
    .drain({
      id: 'south',
      path: [
        [0, 0],
        [12, 0],
      ],
      flow: 'as-drawn',
      material: 'clay',
      piece_m: piece,
      installed: 1960,
    })
    .drain({
      id: 'north',
      path: [
        [0, 90],
        [12, 90],
      ],
      flow: 'as-drawn',
      material: 'clay',
      piece_m: 0.6,
      installed: 1990,
    });
  const trees = first(lines)
    .tree({ id: 'maple', at: [4, 3], species: 'Acer rubrum', dbh_cm: 45 })
    .tree({ id: 'guess', at: [9, -4] })
    .tree({ id: 'birch', at: [6, 94], species: 'Betula nigra', dbh_cm: 30 });
  return change(trees);
}

/** What the second of two sites is ranked as, taken after the first and sampled. */
function retaken(first: Scene, second: Scene): ReturnType<typeof rank> {
  const rescorer = new Rescorer();
  for (const made of [first, second]) {
    rescorer.take(made.site(), AS_OF);
    rescorer.settle();
  }
  return rescorer.result();
}

const PAVING: Change = (made) =>
  made.obstacle({
    type: 'paving',
    path: [
      [0, -2],
      [12, -2],
      [12, 5],
      [0, 5],
      [0, -2],
    ],
  });
const BARRIER: Change = (made) =>
  made.barrier({
    path: [
      [0, 1],
      [12, 1],
    ],
    depth_m: 1,
  });
const SOIL: Change = (made) => made.about({ soil: 'clay' });
const CLEAR: Change = (made) =>
  made.finding({ drain: 'south', at_m: 0, to_m: 12, seen: 'clear', date: '2025-06-01' });
const ROOTS: Change = (made) =>
  made.finding({ drain: 'south', at_m: 0, to_m: 12, seen: 'mass', date: '2025-06-01' });
const FAR_TREE: Change = (made) => made.tree({ id: 'far', at: [400, 400], species: 'Ulmus americana' });
const BY_TOLERANCE: Change = (made) => made.about({ protection: 'tolerance-and-age' });

describe('a site that is edited', () => {
  it.each<[string, Scene, Scene]>([
    ['paving that comes', yard(), yard({ change: PAVING })],
    ['paving that goes', yard({ change: PAVING }), yard()],
    ['a barrier that comes', yard(), yard({ change: BARRIER })],
    ['a barrier that goes', yard({ change: BARRIER }), yard()],
    ['another soil', yard(), yard({ change: SOIL })],
    ['a line seen clear', yard(), yard({ change: CLEAR })],
    ['roots in place of clear', yard({ change: CLEAR }), yard({ change: ROOTS })],
    ['another way to draw the circles to be spared', yard(), yard({ change: BY_TOLERANCE })],
    ['a tree out of reach that goes, so that the others move up', yard({ first: FAR_TREE }), yard()],
    ['a line with other pieces', yard(), yard({ piece: 1.2 })],
  ])('is ranked as if it were new: %s', (_, first, second) => {
    const expected = rank(second.site(), OPTIONS);
    const got = retaken(first, second);
    expect(got).toEqual(expected);
    expect(got).not.toEqual(rank(first.site(), OPTIONS));
  });

  it('is ranked as if it were new where its only trees come or go', () => {
    const bare = scene().drain({
      id: 'south',
      path: [
        [0, 0],
        [12, 0],
      ],
      material: 'clay',
    });
    const far = FAR_TREE(
      scene().drain({
        id: 'south',
        path: [
          [0, 0],
          [12, 0],
        ],
        material: 'clay',
      }),
    );
    expect(retaken(bare, far)).toEqual(rank(far.site(), OPTIONS));
    expect(retaken(far, bare)).toEqual(rank(bare.site(), OPTIONS));
    // without any tree nobody can say; with one far off there is nothing to fear
    expect(rank(bare.site(), OPTIONS).segments[0]?.band).not.toBe(
      rank(far.site(), OPTIONS).segments[0]?.band,
    );
  });

  it('keeps the rows of a line that no edit reaches, and of all lines where nothing changed', () => {
    const rescorer = new Rescorer();
    const take = (made: Scene) => {
      rescorer.take(made.site(), AS_OF);
      rescorer.settle();
      return new Map(rescorer.result().segments.map((row) => [row.id, row]));
    };
    const before = take(yard());
    const again = take(yard());
    expect([...again.values()].every((row) => row === before.get(row.id))).toBe(true);
    const other = take(yard({ piece: 1.2 }));
    // a row may stand elsewhere in the order now; what was worked out for it is the same object
    for (const [id, row] of other) expect(row.trees === before.get(id)?.trees).toBe(id.startsWith('north'));
  });

  it('samples anew no more than what has changed', () => {
    const rescorer = new Rescorer();
    rescorer.take(yard().site(), AS_OF);
    expect(rescorer.settled).toBe(false);
    expect(rescorer.settle(7)).toBe(false);
    expect(rescorer.settle(1)).toBe(true);
    expect(rescorer.settled).toBe(true);
    rescorer.take(yard({ piece: 1.2 }).site(), AS_OF);
    const kinds = new Set(rescorer.result().segments.map((row) => `${row.drainId} ${row.interval}`));
    expect(kinds).toEqual(new Set(['south closed-form', 'north sampled']));
    expect(rescorer.settle(3)).toBe(false);
    expect(rescorer.settle(1)).toBe(true);
  });

  it('is ranked by other draws for another seed', () => {
    const site = yard().site();
    const rescorer = new Rescorer({ seed: 5 });
    rescorer.take(site, AS_OF);
    rescorer.settle();
    expect(rescorer.result()).toEqual(rank(site, { ...OPTIONS, seed: 5 }));
    expect(rescorer.result()).not.toEqual(rank(site, OPTIONS));
  });

  it('has no ranking before it was taken', () => {
    expect(() => new Rescorer().result()).toThrow(RangeError);
  });
});
