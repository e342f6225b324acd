import { describe, expect, it } from 'vitest';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { scene } from '../../scenes/scene.js';

type Properties = Readonly<Record<string, unknown>>;

/** Bands and assumed fields of a line beside two trees. */
function ranked(drain: Properties, trees: readonly Properties[] = [{}, {}]) {
  const made = scene().drain({
    id: 'main',
    path: [
      [0, 0],
      [3, 0],
    ],
    ...drain,
  });
  trees.forEach((tree, i) => {
    made.tree({ at: [1 + i, 8], species: 'Quercus rubra', ...tree });
  });
  const { segments, totals } = rank(made.site(), { asOf: '2026-07-01', segmentM: 100 });
  const [segment] = segments;
  if (!segment) throw new Error('no segment');
  // the only segment is the only one of its band in the sums as well
  expect(totals.byBand[segment.band]).toEqual({ segments: 1, lengthM: segment.lengthM });
  const fields = segment.assumed
    .filter(({ path }) => path.startsWith('drains/'))
    .map(({ path, value }) => [path, value]);
  return { band: segment.band, fields: Object.fromEntries(fields) };
}

describe('too little is known to say', () => {
  it('where neither the line nor the trunks about it are', () => {
    expect(ranked({}).band).toBe('cannot-say');
  });

  it('not so where one thing is known of the line', () => {
    for (const drain of [{ material: 'clay' }, { installed: 1990 }, { depth_start_m: 0.9 }]) {
      expect(ranked(drain).band, JSON.stringify(drain)).not.toBe('cannot-say');
    }
  });

  it('not so where the trunks were measured that bring at least half', () => {
    expect(ranked({}, [{ dbh_cm: 60 }, { dbh_cm: 60 }]).band).not.toBe('cannot-say');
    expect(ranked({}, [{ dbh_cm: 90 }, {}]).band).not.toBe('cannot-say');
    expect(ranked({}, [{ dbh_cm: 10 }, {}]).band).toBe('cannot-say');
  });

  it('where nobody drew a tree, however well the line is known', () => {
    expect(ranked({ material: 'clay', installed: 1990 }, []).band).toBe('cannot-say');
  });
});

describe('what is taken as given about a line', () => {
  it('is each thing that is missing', () => {
    const { fields } = ranked({});
    expect(Object.keys(fields).map((path) => path.split('/')[2])).toEqual([
      'material',
      'installed',
      'depthM',
      'joint',
      'pieceM',
      'flow',
    ]);
    expect(fields['drains/main/flow']).toBe('as drawn');
  });

  it('is nothing where all is said', () => {
    const all = {
      material: 'clay',
      installed: 1990,
      depth_start_m: 1,
      joint: 'mortar',
      piece_m: 1,
      flow: 'as-drawn',
    };
    expect(ranked(all).fields).toEqual({});
  });

  it('is no length of pieces where there are none', () => {
    const { fields } = ranked({ material: 'clay', joint: 'none' });
    expect(fields).not.toHaveProperty('drains/main/pieceM');
    expect(fields).not.toHaveProperty('drains/main/joint');
  });
});
