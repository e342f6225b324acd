import { describe, expect, it } from 'vitest';
import { endJoinsAnother, linesNear, netOf, snapFittings } from '../../../packages/core/src/line/snap.js';
import type { Site } from '../../../packages/core/src/model/site.js';
import { type Place, type Scene, scene } from '../../scenes/scene.js';

const line = (id: string, ...path: Place[]) => ({ id, path });
/** A main of 20 m and a branch that runs into its middle from the north. */
const main = (): Scene => scene().drain(line('main', [0, 0], [20, 0]));
const branched = (gapM = 0): Scene => main().drain(line('branch', [10, 8], [10, gapM]));

const snapped = (made: Scene) => {
  const { drains, fittings } = made.reading().site;
  const { byLine, issues } = snapFittings(netOf(drains), fittings);
  const of = (number: number) =>
    (byLine.get(number) ?? []).map(({ fitting, stationM, atEnd, owns, pipes }) => ({
      id: fitting.id,
      at: Math.round(1000 * stationM) / 1000,
      atEnd,
      owns,
      pipes,
    }));
  return { main: of(0), branch: of(1), issues };
};

describe('a fitting', () => {
  it('lies on a line that passes within a metre', () => {
    expect(snapped(main().fitting({ id: 'W', type: 'wye', at: [6, 0.98] })).main).toEqual([
      { id: 'W', at: 6, atEnd: null, owns: true, pipes: 2 },
    ]);
    const off = snapped(main().fitting({ id: 'W', type: 'wye', at: [6, 1.02] }));
    expect(off.main).toEqual([]);
    expect(off.issues).toMatchObject([{ code: 'fitting-off-line', place: { feature: 'W' } }]);
  });

  it('is at an end within 0.3 m of it', () => {
    const at = (east: number) => snapped(main().fitting({ type: 'cap', at: [east, 0] })).main[0];
    expect(at(0.29)).toMatchObject({ atEnd: 'start', pipes: 1 });
    expect(at(0.31)).toMatchObject({ atEnd: null, pipes: 2 });
    expect(at(19.71)).toMatchObject({ atEnd: 'end', pipes: 1 });
    expect(at(19.69)).toMatchObject({ atEnd: null, pipes: 2 });
  });

  it('where a branch comes in is the line that runs through', () => {
    const wye = snapped(branched().fitting({ id: 'W', type: 'wye', at: [10, 0.1] }));
    expect(wye.main).toMatchObject([{ at: 10, owns: true, pipes: 2 }]);
    expect(wye.branch).toMatchObject([{ at: 7.9, atEnd: 'end', owns: false, pipes: 1 }]);
    // 0.4 m up the branch it is the branch's own
    const own = snapped(branched().fitting({ id: 'B', type: 'bend', at: [10, 0.4] }));
    expect(own.branch).toMatchObject([{ at: 7.6, owns: true }]);
    expect(own.main).toEqual([]);
  });

  it('is the line that it names, though another is nearer, within a metre', () => {
    const named = snapped(branched(0.5).fitting({ type: 'wye', at: [10, 0.05], drain: 'branch' }));
    expect(named.branch).toMatchObject([{ owns: true, atEnd: 'end' }]);
    expect(named.main).toMatchObject([]);
    const far = snapped(main().fitting({ type: 'wye', at: [6, 3], drain: 'main' }));
    expect(far.issues).toMatchObject([{ code: 'fitting-off-line', distanceM: expect.closeTo(3, 3) }]);
  });

  it('is of no line where there is none near, and then no distance is told', () => {
    expect(snapped(main().fitting({ type: 'wye', at: [6, 30] })).issues).toMatchObject([{ distanceM: null }]);
  });

  it('is shared where it is a basin that a line passes', () => {
    const crossing = main().drain(line('other', [10, 8], [10, -8]));
    const basin = snapped(crossing.fitting({ type: 'basin', at: [10, 0] }));
    expect(basin.main).toMatchObject([{ pipes: 2 }]);
    expect(basin.branch).toMatchObject([{ pipes: 2 }]);
    const bend = main()
      .drain(line('other', [10, 8], [10, -8]))
      .fitting({ type: 'bend', at: [10, 0] });
    expect(snapped(bend).main.length + snapped(bend).branch.length).toBe(1);
  });
});

describe('lines near a place', () => {
  it('come the nearest first, and by their ids where none is nearer by a millimetre', () => {
    const of = ({ drains }: Site, at: number) => {
      const [lon, lat] = drains[0]?.path[0] ?? [0, 0];
      return linesNear(netOf(drains), [lon, lat + at / 111_132]).map(
        ({ line: number }) => drains[number]?.id,
      );
    };
    const three = scene()
      .drain(line('b', [0, 0], [9, 0]))
      .drain(line('c', [0, 0.6], [9, 0.6]))
      .drain(line('a', [0, 0], [-9, 0]))
      .site();
    expect(of(three, 0)).toEqual(['a', 'b', 'c']);
    expect(of(three, 0.5)).toEqual(['c', 'a', 'b']);
  });
});

describe('an end of a line', () => {
  it('joins another where it comes within 0.3 m of its middle', () => {
    const joins = (made: Scene, end: 'start' | 'end') => endJoinsAnother(netOf(made.site().drains), 1, end);
    expect(joins(branched(0.29), 'end')).toBe(true);
    expect(joins(branched(0.31), 'end')).toBe(false);
    expect(joins(branched(), 'start')).toBe(false);
    // end to end is not into the middle
    expect(joins(main().drain(line('next', [20, 0], [30, 0])), 'start')).toBe(false);
  });
});
