import { describe, expect, it } from 'vitest';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import { Network } from '../../../packages/core/src/line/network.js';
import { type Direction, type Run, runAlong, runTo } from '../../../packages/core/src/line/run.js';
import { type Place, type Scene, scene } from '../../scenes/scene.js';

const networkOf = (drawn: Scene): Network => {
  const site = drawn.site();
  return new Network(site, layOutLines(site, 3));
};

// to the tenth of a millimetre: each line is measured in a plane of its own
const rounded = (m: number): number => Math.round(m * 1e4) / 1e4;
const drain = (id: string, ...path: Place[]) => ({ id, path, flow: 'as-drawn' });
const FAR = 1000;

/** Legs as [line, from, to, counter at its start]. */
function legs(network: Network, run: Run | null): [string, number, number, number][] | null {
  if (run === null) return null;
  return run.legs.map(({ line, fromM, toM, counterM }) => [
    network.nameOf(line),
    rounded(fromM),
    rounded(toM),
    rounded(counterM),
  ]);
}

function pushed(drawn: Scene, from: string, to: string, wantedM = FAR) {
  const network = networkOf(drawn);
  const spots = network.spotsOf(from) ?? [];
  return legs(network, runTo(network, spots, network.numberOf(to) as number, wantedM));
}

function along(drawn: Scene, line: string, stationM: number, direction: Direction, wantedM = FAR) {
  const network = networkOf(drawn);
  return runAlong(network, { line: network.numberOf(line) as number, stationM }, direction, wantedM);
}

/** A 30 m main down to the east; a branch of 8 m that comes in 18 m above the outlet, another 6 m above it. */
const branched = scene()
  .drain(drain('main', [0, 0], [30, 0]))
  .drain(drain('arm', [12, 8], [12, 0]))
  .drain(drain('leg', [24, -7], [24, 0]))
  .fitting({ id: 'B', type: 'basin', at: [0, 0] })
  .fitting({ id: 'D', type: 'downspout', at: [12, 8] })
  .fitting({ id: 'E', type: 'downspout', at: [24, -7] })
  .fitting({ id: 'T', type: 'tee', at: [12, 0] })
  .fitting({ id: 'C', type: 'cleanout', at: [27, 0] });

describe('a reel pushed downstream', () => {
  it('comes out of a branch into the main and on', () => {
    expect(pushed(branched, 'D', 'main')).toEqual([
      ['arm', 8, 0, 0],
      ['main', 18, 0, 8],
    ]);
  });

  it('counts what it has gone in a line that it leaves part-way', () => {
    // 12 m down the first line to a basin through which another one passes
    const crossed = scene()
      .drain(drain('main', [0, 0], [30, 0]))
      .drain(drain('other', [12, 8], [12, -9]))
      .fitting({ id: 'B', type: 'basin', at: [0, 0] })
      .fitting({ id: 'X', type: 'basin', at: [12, 0] });
    expect(pushed(crossed, 'B', 'other')).toEqual([
      ['main', 30, 18, 0],
      ['other', 9, 0, 12],
    ]);
  });

  it('does not turn up the main or into another branch', () => {
    expect(pushed(branched, 'D', 'leg')).toBeNull();
    expect(pushed(branched, 'B', 'arm')).toBeNull();
  });

  it('goes through three lines in a row', () => {
    const row = scene()
      .drain(drain('one', [0, 0], [10, 0]))
      .drain(drain('two', [10, 0], [22, 0]))
      .drain(drain('three', [22, 0], [30, 0]))
      .fitting({ id: 'C', type: 'cleanout', at: [6, 0] });
    expect(pushed(row, 'C', 'three')).toEqual([
      ['one', 4, 0, 0],
      ['two', 12, 0, 4],
      ['three', 8, 0, 16],
    ]);
  });

  it('follows whichever line leads on at a basin, and none where two do', () => {
    const basin = scene()
      .drain(drain('in', [0, 0], [10, 0]))
      .drain(drain('beside', [10, 9], [10, 0]))
      .drain(drain('out', [10, 0], [22, 0]))
      .fitting({ id: 'B', type: 'basin', at: [10, 0] });
    expect(along(basin, 'in', 7, 'downstream')).toMatchObject({
      parts: false,
      legs: [{ line: 0 }, { line: 2 }],
    });
    const parted = along(basin.drain(drain('spill', [10, 0], [10, -6])), 'in', 7, 'downstream');
    expect(parted).toMatchObject({ parts: true, legs: [{ line: 0 }] });
    expect(parted.lengthM).toBeCloseTo(7, 6);
  });
});

describe('a reel pushed upstream', () => {
  it('goes from the main into the branch that was looked at', () => {
    expect(pushed(branched, 'C', 'arm')).toEqual([
      ['main', 3, 18, 0],
      ['arm', 0, 8, 15],
    ]);
    expect(pushed(branched, 'C', 'leg')).toEqual([
      ['main', 3, 6, 0],
      ['leg', 0, 7, 3],
    ]);
  });

  it('goes straight on past branches in the line it is in', () => {
    const run = along(branched, 'main', 3, 'upstream');
    expect(run.legs).toHaveLength(1);
    expect(run.lengthM).toBeCloseTo(27, 6);
  });
});

describe('two lines drawn against each other', () => {
  const facing = scene()
    .drain(drain('a', [0, 0], [10, 0]))
    .drain(drain('b', [25, 0], [10, 0]));

  it('are one pipe to a reel where nothing else comes in', () => {
    const run = along(facing, 'a', 4, 'downstream');
    expect(run.legs.map((leg) => leg.direction)).toEqual(['downstream', 'upstream']);
    expect(run.lengthM).toBeCloseTo(19, 6);
  });

  it('are two branches where a third leads on', () => {
    const run = along(facing.drain(drain('c', [10, 0], [10, -6])), 'a', 4, 'downstream');
    expect(run.legs.map((leg) => leg.line)).toEqual([0, 2]);
  });
});

describe('a loop', () => {
  // from the basin two ways lead to the last line: 10 m straight, 22 m around
  const loop = scene()
    .drain(drain('in', [0, 0], [10, 0]))
    .drain(drain('round', [10, 0], [10, 6], [20, 6], [20, 0]))
    .drain(drain('straight', [10, 0], [20, 0]))
    .drain(drain('out', [20, 0], [30, 0]))
    .fitting({ id: 'C', type: 'cleanout', at: [5, 0] })
    .fitting({ id: 'B', type: 'basin', at: [10, 0] });

  it('is passed on the shorter side', () => {
    expect(pushed(loop, 'C', 'out')).toEqual([
      ['in', 5, 0, 0],
      ['straight', 10, 0, 5],
      ['out', 10, 0, 15],
    ]);
  });

  it('is passed on the longer side where that was looked at', () => {
    expect(pushed(loop, 'C', 'round')?.[1]).toEqual(['round', 22, 0, 5]);
  });

  it('ends: a ring of lines is gone around once', () => {
    const ring = scene()
      .drain(drain('a', [0, 0], [10, 0]))
      .drain(drain('b', [10, 0], [10, 10]))
      .drain(drain('c', [10, 10], [0, 0]));
    const run = along(ring, 'a', 10, 'downstream');
    expect(run.legs.map((leg) => leg.line)).toEqual([0, 1, 2]);
  });
});

describe('a run', () => {
  it('is followed no further than asked', () => {
    const row = scene()
      .drain(drain('one', [0, 0], [10, 0]))
      .drain(drain('two', [10, 0], [22, 0]));
    expect(along(row, 'one', 8, 'downstream', 7.9).legs).toHaveLength(1);
    expect(along(row, 'one', 8, 'downstream', 8.1).legs).toHaveLength(2);
    expect(along(row, 'one', 8, 'downstream', 7.9).parts).toBe(false);
  });

  it('is looked for no further than a cable is long', () => {
    const row = (lengthM: number): Scene =>
      scene()
        .drain(drain('one', [0, 0], [lengthM, 0]))
        .drain(drain('two', [lengthM, 0], [lengthM + 9, 0]))
        .fitting({ id: 'B', type: 'basin', at: [0, 0] });
    expect(pushed(row(499), 'B', 'two', 20)).toHaveLength(2);
    expect(pushed(row(501), 'B', 'two', 20)).toBeNull();
    expect(pushed(row(501), 'B', 'two', 505)).toHaveLength(2);
  });
});
