import { expect, it } from 'vitest';
import { rank } from '../../packages/core/src/risk/rank.js';
import { scene } from '../scenes/scene.js';

it('x', () => {
  const r = rank(
    scene()
      .tree({ at: [0, 2], species: 'Quercus rubra', dbh_cm: 40 })
      .drain({
        path: [
          [-10, 0],
          [10, 0],
        ],
        material: 'pvc-sdr35',
        installed: 2000,
      })
      .obstacle({
        type: 'paving',
        path: [
          [0, 1],
          [1, 1],
          [1, 1.5],
          [0, 1],
        ],
      })
      .site(),
    { asOf: '2026-11-25' },
  );
  console.info(
    r.segments.map((s) => [s.id, s.score, s.expectedEntries]),
    r.issues,
  );
});
