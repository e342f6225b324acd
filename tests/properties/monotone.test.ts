import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { genusFactor } from '../../packages/core/src/roots/genus-factor.js';
import { jointTable } from '../../packages/core/src/tables/joints.js';
import { speciesTable } from '../../packages/core/src/tables/species.js';
import {
  type Expected,
  expectedOf,
  expectedOfYard,
  sceneOf,
  type Yard,
  type YardTree,
  yards,
} from './yard.js';

const RUNS = { seed: 20_261_125, numRuns: 200 };
/** Sums of the same terms in another order differ in the last digits only. */
const ROUNDING = 1e-12;

function notLower(before: Expected, after: Expected): void {
  expect(after.all).toBeGreaterThanOrEqual(before.all * (1 - ROUNDING));
  expect(after.worst).toBeGreaterThanOrEqual(before.worst * (1 - ROUNDING));
}

const withFirstTree = (yard: Yard, change: (tree: YardTree) => YardTree): Yard => ({
  ...yard,
  trees: yard.trees.map((tree, i) => (i === 0 ? change(tree) : tree)),
});

const withLine = (yard: Yard, change: Partial<Yard['line']>): Yard => ({
  ...yard,
  line: { ...yard.line, ...change },
});

describe('never lowers the expected entries of a line or of its worst segment:', () => {
  it('a tree closer to a straight line', () => {
    fc.assert(
      fc.property(yards(), fc.double({ min: 0, max: 1, noNaN: true }), (yard, share) => {
        const closer = withFirstTree(yard, (tree) => ({ ...tree, northM: tree.northM * share }));
        notLower(expectedOfYard(yard), expectedOfYard(closer));
      }),
      RUNS,
    );
  });

  it('a thicker trunk, the canopy following it', () => {
    fc.assert(
      fc.property(yards('missing'), fc.double({ min: 1, max: 3, noNaN: true }), (yard, times) => {
        const thicker = withFirstTree(yard, (tree) => ({ ...tree, dbhCm: tree.dbhCm * times }));
        notLower(expectedOfYard(yard), expectedOfYard(thicker));
      }),
      RUNS,
    );
  });

  // in the year ahead only: over ten years the thin stem grows by the larger share, its crown follows in proportion,
  // and a sapling under a wide crown may overtake a grown trunk under the same one
  it('a thicker trunk under the same canopy, in the year ahead', () => {
    fc.assert(
      fc.property(yards('measured'), fc.double({ min: 1, max: 3, noNaN: true }), (yard, times) => {
        const thicker = withFirstTree(yard, (tree) => ({ ...tree, dbhCm: tree.dbhCm * times }));
        const look = { segmentM: yard.segmentM, horizonYears: 1 };
        notLower(expectedOf(sceneOf(yard), look), expectedOf(sceneOf(thicker), look));
      }),
      RUNS,
    );
  });

  it('a wider canopy on the same trunk', () => {
    fc.assert(
      fc.property(yards('measured'), fc.double({ min: 1, max: 2, noNaN: true }), (yard, times) => {
        const wider = withFirstTree(yard, (tree) => ({ ...tree, canopyM: (tree.canopyM ?? 1) * times }));
        notLower(expectedOfYard(yard), expectedOfYard(wider));
      }),
      RUNS,
    );
  });

  // full-grown trees, so that the two kinds do not differ in what they will still grow
  it('a more vigorous kind of the same size that roots no less far', () => {
    const kinds = [...speciesTable.values()].filter(
      (row) => row.rank === 'species' && row.form === 'broadleaf',
    );
    const pairs = kinds.flatMap((milder) =>
      kinds
        .filter((k) => k.vigour.value > milder.vigour.value && genusFactor(k) >= genusFactor(milder))
        .map((stronger) => [milder.botanical, stronger.botanical] as const),
    );
    expect(pairs.length).toBeGreaterThan(100);
    fc.assert(
      fc.property(yards('measured'), fc.constantFrom(...pairs), (yard, [milder, stronger]) => {
        const grown = (species: string) =>
          withFirstTree(yard, (tree) => ({ ...tree, species, dbhCm: 170, canopyM: 9 }));
        notLower(expectedOfYard(grown(milder)), expectedOfYard(grown(stronger)));
      }),
      RUNS,
    );
  });

  // cutting each piece into equal parts keeps the joints that were there; pieces of any other length move them
  it('more joints: each piece cut into equal parts', () => {
    fc.assert(
      fc.property(yards(), fc.integer({ min: 2, max: 5 }), (yard, parts) => {
        const shorter = withLine(yard, { pieceM: yard.line.pieceM / parts });
        notLower(expectedOfYard(yard), expectedOfYard(shorter));
      }),
      RUNS,
    );
  });

  it('a weaker kind of joint', () => {
    const byFactor = jointTable.filter((row) => row.key !== 'none');
    const one = fc.integer({ min: 0, max: byFactor.length - 1 });
    fc.assert(
      fc.property(yards(), one, one, (yard, a, b) => {
        const [tighter, weaker] = [Math.min(a, b), Math.max(a, b)].map((i) => byFactor[i]?.key ?? '');
        notLower(
          expectedOfYard(withLine(yard, { joint: tighter ?? '' })),
          expectedOfYard(withLine(yard, { joint: weaker ?? '' })),
        );
      }),
      RUNS,
    );
  });

  it('an older line', () => {
    fc.assert(
      fc.property(yards(), fc.integer({ min: 0, max: 60 }), (yard, earlier) => {
        const older = withLine(yard, { installed: yard.line.installed - earlier });
        notLower(expectedOfYard(yard), expectedOfYard(older));
      }),
      RUNS,
    );
  });

  it.each(['dug', 'cut'])('more years since the line was %s', (done) => {
    fc.assert(
      fc.property(yards(), fc.tuple(fc.nat(20), fc.nat(20)), (yard, [now, earlier]) => {
        const old = withLine(yard, { installed: 1960 });
        notLower(
          expectedOfYard(old, { [done]: 2026 - now }),
          expectedOfYard(old, { [done]: 2026 - now - earlier }),
        );
      }),
      RUNS,
    );
  });

  it('a longer look ahead', () => {
    const ahead = fc.double({ min: 0.5, max: 40, noNaN: true });
    fc.assert(
      fc.property(yards(), ahead, ahead, (yard, a, b) => {
        const made = sceneOf(yard);
        const look = (horizonYears: number) => expectedOf(made, { segmentM: yard.segmentM, horizonYears });
        notLower(look(Math.min(a, b)), look(Math.max(a, b)));
      }),
      RUNS,
    );
  });
});
