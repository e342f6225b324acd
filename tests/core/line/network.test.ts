import { describe, expect, it } from 'vitest';
import { layOutLines } from '../../../packages/core/src/line/line-model.js';
import { Network, type Spot } from '../../../packages/core/src/line/network.js';
import { type Place, type Scene, scene } from '../../scenes/scene.js';

const networkOf = (drawn: Scene): Network => {
  const site = drawn.site();
  return new Network(site, layOutLines(site, 3));
};

// to the tenth of a millimetre: each line is measured in a plane of its own
const rounded = (m: number): number => Math.round(m * 1e4) / 1e4;
const named = (network: Network, { line, stationM }: Spot): [string, number] => [
  network.nameOf(line),
  rounded(stationM),
];

/** Joins of a line as [own station, other line, station there]. */
function joins(network: Network, drain: string): [number, string, number][] {
  const found = network.joinsOf(network.numberOf(drain) as number);
  return found.map(({ stationM, into }): [number, string, number] => [
    rounded(stationM),
    ...named(network, into),
  ]);
}

const spots = (network: Network, fitting: string): [string, number][] | undefined =>
  network.spotsOf(fitting)?.map((spot) => named(network, spot));

const drain = (id: string, ...path: Place[]) => ({ id, path, flow: 'as-drawn' });

describe('lines of a site', () => {
  it('meet where a branch runs into the middle of its main', () => {
    const network = networkOf(
      scene()
        .drain(drain('main', [0, 0], [30, 0]))
        .drain(drain('arm', [12, 8], [12, 0.2])),
    );
    expect(joins(network, 'arm')).toEqual([[0, 'main', 18]]);
    expect(joins(network, 'main')).toEqual([[18, 'arm', 0]]);
  });

  it('meet end to end within a hand of each other, and no further off', () => {
    const pair = (gapM: number): Network =>
      networkOf(
        scene()
          .drain(drain('up', [0, 0], [10, 0]))
          .drain(drain('down', [10 + gapM, 0], [25, 0])),
      );
    expect(joins(pair(0.25), 'up')).toEqual([[0, 'down', 14.75]]);
    expect(joins(pair(0.35), 'up')).toEqual([]);
  });

  it('do not meet where they only cross', () => {
    const network = networkOf(
      scene()
        .drain(drain('a', [0, 0], [20, 0]))
        .drain(drain('b', [10, -9], [10, 9])),
    );
    expect(joins(network, 'a')).toEqual([]);
  });

  it('meet where they cross at a basin', () => {
    const network = networkOf(
      scene()
        .drain(drain('a', [0, 0], [20, 0]))
        .drain(drain('b', [10, -9], [10, 9]))
        .fitting({ id: 'B', type: 'basin', at: [10, 0] }),
    );
    expect(joins(network, 'a')).toEqual([[10, 'b', 9]]);
  });

  it('meet at a basin whose middle they do not reach, but not at a coupling', () => {
    const at = (type: string): Network =>
      networkOf(
        scene()
          .drain(drain('up', [0, 0], [9.4, 0]))
          .drain(drain('down', [10.6, 0], [25, 0]))
          .fitting({ id: 'F', type, at: [10, 0] }),
      );
    expect(joins(at('basin'), 'up')).toEqual([[0, 'down', 14.4]]);
    expect(joins(at('basin'), 'down')).toEqual([[14.4, 'up', 0]]);
    expect(joins(at('coupling'), 'up')).toEqual([]);
  });

  it('do not meet at a cleanout beside an end that has a fitting of its own', () => {
    const network = networkOf(
      scene()
        .drain(drain('main', [0, 0], [20, 0]))
        .drain(drain('other', [10, 0.8], [10, 9]))
        .fitting({ id: 'C', type: 'cleanout', at: [10, 0] })
        .fitting({ id: 'D', type: 'downspout', at: [10, 0.8], drain: 'other' }),
    );
    expect(joins(network, 'main')).toEqual([]);
  });

  it('meet once at a place where both a pipe end and a basin tell so', () => {
    const network = networkOf(
      scene()
        .drain(drain('up', [0, 0], [10, 0]))
        .drain(drain('down', [10, 0], [25, 0]))
        .fitting({ id: 'B', type: 'basin', at: [10, 0] }),
    );
    expect(joins(network, 'up')).toEqual([[0, 'down', 15]]);
    expect(joins(network, 'down')).toEqual([[15, 'up', 0]]);
  });

  it('lie end to end only where nothing else comes in', () => {
    const pair = scene()
      .drain(drain('a', [0, 0], [10, 0]))
      .drain(drain('b', [20, 0], [10, 0]));
    const alone = networkOf(pair);
    const [join] = alone.joinsOf(0);
    expect(join && alone.isEndToEnd(0, join)).toBe(true);
    const three = networkOf(pair.drain(drain('c', [10, 0], [10, -9])));
    expect(three.joinsOf(0).map((j) => three.isEndToEnd(0, j))).toEqual([false, false]);
  });
});

describe('a fitting', () => {
  const network = networkOf(
    scene()
      .drain(drain('main', [0, 0], [30, 0]))
      .drain(drain('arm', [12, 8], [12, 0]))
      .fitting({ id: 'T', type: 'tee', at: [12, 0] })
      .fitting({ id: 'C', type: 'cleanout', at: [5, 0.4] }),
  );

  it('opens into the line that runs through it and into the one that ends there', () => {
    expect(spots(network, 'T')).toHaveLength(2);
    expect(spots(network, 'T')).toEqual(
      expect.arrayContaining([
        ['main', 18],
        ['arm', 0],
      ]),
    );
  });

  it('opens into the one line it lies beside', () => {
    expect(spots(network, 'C')).toEqual([['main', 25]]);
  });

  it('is not there by another name', () => {
    expect(network.spotsOf('t')).toBeNull();
  });
});

describe('an end as drawn', () => {
  it('is the lower or the upper one by the flow', () => {
    const network = networkOf(
      scene()
        .drain(drain('a', [0, 0], [10, 0]))
        .drain({ ...drain('b', [0, 50], [10, 50]), flow: 'reversed' }),
    );
    expect(rounded(network.endOf(0, 'start').stationM)).toBe(10);
    expect(network.endOf(0, 'end').stationM).toBe(0);
    expect(network.endOf(1, 'start').stationM).toBe(0);
  });
});
