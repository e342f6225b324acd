import { describe, expect, it } from 'vitest';
import { wordMisplaced } from '../../../packages/core/src/explain/misplaced-words.js';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import { placeFindings } from '../../../packages/core/src/risk/known.js';
import { type Scene, scene } from '../../scenes/scene.js';

const metres = (lengthM: number) => `${lengthM.toFixed(1)} m`;

/** 30 m from a basin at the upper end down to an outlet; a wye 12 m above the outlet. */
const drawn = (flow: string): Scene =>
  scene()
    .drain({
      id: 'main',
      path: [
        [0, 0],
        [30, 0],
      ],
      flow,
    })
    .fitting({ id: 'B1', type: 'basin', at: [0, 0] })
    .fitting({ id: 'W1', type: 'wye', at: [18, 0] });

type Properties = Readonly<Record<string, unknown>>;

function placed(properties: Properties, flow = 'as-drawn') {
  const site = drawn(flow)
    .finding({ id: 'seen', drain: 'main', seen: 'mass', ...properties })
    .site();
  const { byLine, issues } = placeFindings(site, layOutLines(site, 3));
  return { stretches: byLine.get(0) ?? [], issues };
}

function onlyPiece(properties: Properties, flow?: string) {
  const { stretches, issues } = placed(properties, flow);
  expect(issues).toEqual([]);
  expect(stretches).toHaveLength(1);
  return stretches[0];
}

function stretch(properties: Properties, flow?: string): number[] {
  const { stretches, issues } = placed(properties, flow);
  expect(issues).toEqual([]);
  return stretches.flatMap(({ fromM, toM }) => [fromM, toM]).map((m) => Math.round(m * 1e6) / 1e6);
}

function reasonAgainst(properties: Properties): string {
  const { stretches, issues } = placed(properties);
  expect(stretches).toEqual([]);
  const [issue] = issues;
  return issue?.code === 'finding-misplaced' ? wordMisplaced(issue.reason, metres) : 'no such issue';
}

// stations count from the outlet end, which is the last point as drawn here
describe('what a reel saw', () => {
  it('lies as far from the first point as drawn as the counter says', () => {
    expect(stretch({ from: 'start', at_m: 4, to_m: 6 })).toEqual([24, 26]);
    expect(stretch({ at_m: 4, to_m: 6 })).toEqual([24, 26]);
  });

  it('lies as far from the last point as drawn', () => {
    expect(stretch({ from: 'end', at_m: 4, to_m: 6 })).toEqual([4, 6]);
  });

  it('keeps to the ends as drawn where the water runs the other way', () => {
    expect(stretch({ from: 'start', at_m: 4, to_m: 6 }, 'reversed')).toEqual([4, 6]);
    expect(stretch({ from: 'end', at_m: 4, to_m: 6 }, 'reversed')).toEqual([24, 26]);
  });

  it('lies upstream of a fitting part-way, or downstream where there is no room upstream', () => {
    expect(stretch({ from: 'W1', at_m: 2, to_m: 5 })).toEqual([14, 17]);
    expect(stretch({ from: 'B1', at_m: 2, to_m: 5 })).toEqual([25, 28]);
  });

  it('goes the way it is said to go, room or not', () => {
    expect(stretch({ from: 'W1', direction: 'downstream', at_m: 2, to_m: 5 })).toEqual([7, 10]);
    expect(stretch({ from: 'W1', direction: 'upstream', at_m: 2, to_m: 5 })).toEqual([14, 17]);
    expect(reasonAgainst({ from: 'W1', direction: 'downstream', at_m: 15 })).toBe(
      "the reel ran 3.0 m past the end of line 'main'",
    );
  });

  it('goes into the line from either end, however little of it', () => {
    expect(stretch({ from: 'start', at_m: 0.3 })).toEqual([29.7, 29.7]);
    expect(stretch({ from: 'end', at_m: 0.3 })).toEqual([0.3, 0.3]);
    expect(onlyPiece({ from: 'start', at_m: 0 })?.direction).toBe('downstream');
    expect(onlyPiece({ from: 'end', at_m: 0 })?.direction).toBe('upstream');
  });

  it('keeps the way in which the reel went', () => {
    expect(onlyPiece({ from: 'start', at_m: 4 })?.direction).toBe('downstream');
    expect(onlyPiece({ from: 'start', at_m: 4 }, 'reversed')?.direction).toBe('upstream');
    expect(onlyPiece({ from: 'W1', at_m: 2 })?.direction).toBe('upstream');
    expect(onlyPiece({ from: 'W1', at_m: 15 }, 'reversed')?.direction).toBe('downstream');
  });

  it('was come to from the end that the reel went in at, at reading 0 too', () => {
    expect(onlyPiece({ from: 'start', at_m: 0 })?.direction).toBe('downstream');
    expect(onlyPiece({ from: 'end', at_m: 0 })?.direction).toBe('upstream');
  });

  it('keeps the entries counted on it', () => {
    expect(onlyPiece({ at_m: 4, to_m: 9, entries: 3 })?.entries).toBe(3);
    expect(onlyPiece({ at_m: 4, to_m: 9 })?.entries).toBeNull();
  });

  it('is a place where only one reading was taken', () => {
    expect(stretch({ from: 'end', at_m: 7.5 })).toEqual([7.5, 7.5]);
  });

  it('is the same stretch with its readings in either order', () => {
    expect(stretch({ from: 'end', at_m: 6, to_m: 4 })).toEqual([4, 6]);
  });

  it('may overrun the end by what a counter is off, and then stops at the end', () => {
    expect(stretch({ from: 'end', at_m: 28, to_m: 30.4 })).toEqual([28, 30]);
    expect(stretch({ from: 'end', at_m: 30.4 })).toEqual([30, 30]);
    expect(stretch({ from: 'start', at_m: 30.4 }, 'reversed')).toEqual([30, 30]);
  });

  it('is an issue where the reel ran past the end', () => {
    expect(reasonAgainst({ from: 'end', at_m: 33 })).toBe("the reel ran 3.0 m past the end of line 'main'");
    expect(reasonAgainst({ from: 'end', at_m: 3, to_m: 31.5 })).toBe(
      "the reel ran 1.5 m past the end of line 'main'",
    );
  });

  it('is an issue where nothing is known of the place it started from', () => {
    expect(reasonAgainst({ from: 'B9', at_m: 1 })).toBe("there is no fitting 'B9'");
  });

  it('is measured in feet where the crew reads feet', () => {
    expect(stretch({ from: 'end', at_ft: 10 })).toEqual([3.048, 3.048]);
  });
});
