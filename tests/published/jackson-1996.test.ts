import { describe, expect, it } from 'vitest';
import {
  type Biome,
  depthBetas,
  GLOBAL_BETA,
  shareBelow,
  trenchDepthFactor,
} from '../../packages/core/src/roots/depth.js';
import { residual } from './residual.js';

/**
 * Jackson, R. B., Canadell, J., Ehleringer, J. R., Mooney, H. A., Sala, O. E., Schulze, E. D. (1996): A global
 * analysis of root distributions for terrestrial biomes. Oecologia 108:389-411. Share of roots down to d
 * centimetres: Y = 1 - beta^d.
 */
const shareAbove = (depthCm: number, beta: number): number => 1 - shareBelow(depthCm / 100, beta);

describe('depth shares printed in the abstract of Jackson and others 1996', () => {
  // the abstract rounds the means to whole steps of five in a hundred; its own beta gives 29.2, 49.9 and 74.9
  it.each([
    [10, 0.3],
    [20, 0.5],
    [40, 0.75],
  ])('the mean of all biomes has the printed share in the top %i cm', (depthCm, share) => {
    const left = residual({
      what: `top ${depthCm} cm`,
      got: shareAbove(depthCm, GLOBAL_BETA),
      published: share,
      tolerance: 0.01,
    });
    console.info(`Jackson 1996, top ${depthCm} cm: residual ${left.toFixed(4)}`);
  });

  // `80-90 %`: tolerance one twentieth beyond, as the printed betas give 82.8 and, for tundra, 93.5
  it.each([
    ['tundra', 0.8, 0.95],
    ['boreal', 0.8, 0.9],
    ['temperate-grassland', 0.8, 0.9],
  ] as const)('%s has 80-90 % in the top 30 cm', (biome, least, most) => {
    const got = shareAbove(30, depthBetas[biome]);
    expect(got, `${biome}: ${got}`).toBeGreaterThanOrEqual(least);
    expect(got, `${biome}: ${got}`).toBeLessThanOrEqual(most);
  });

  // `only 50 %`: rounded to tens
  it.each(['desert', 'temperate-coniferous'] as const)('%s has about half in the top 30 cm', (biome) => {
    residual({
      what: `${biome}, top 30 cm`,
      got: shareAbove(30, depthBetas[biome]),
      published: 0.5,
      tolerance: 0.05,
    });
  });
});

describe('depth shares worked from the betas', () => {
  /** Per cent of roots above 10, 30, 60, 90, 120 and 150 cm, by hand from 1 - beta^d; half a per cent of rounding. */
  const DEPTHS_CM = [10, 30, 60, 90, 120, 150];
  const TABLE: Record<Biome, readonly number[]> = {
    tundra: [60, 93, 100, 100, 100, 100],
    boreal: [44, 83, 97, 99, 100, 100],
    'temperate-grassland': [44, 83, 97, 99, 100, 100],
    'temperate-deciduous': [29, 65, 87, 96, 98, 99],
    'temperate-coniferous': [22, 52, 77, 89, 95, 97],
    'tropical-deciduous': [33, 70, 91, 97, 99, 100],
    'tropical-evergreen': [32, 69, 90, 97, 99, 100],
    sclerophyllous: [31, 67, 89, 96, 99, 100],
    'tropical-grassland': [25, 57, 82, 92, 97, 99],
    desert: [22, 53, 78, 90, 95, 98],
  };

  it('holds every biome at every depth', () => {
    let worst = 0;
    for (const biome of Object.keys(depthBetas) as Biome[]) {
      DEPTHS_CM.forEach((depthCm, i) => {
        const left = residual({
          what: `${biome}, ${depthCm} cm`,
          got: 100 * shareAbove(depthCm, depthBetas[biome]),
          published: TABLE[biome][i] as number,
          tolerance: 0.5,
        });
        worst = Math.max(worst, Math.abs(left));
      });
    }
    console.info(`Jackson 1996, 60 shares: within ${worst.toFixed(2)} per cent of all roots`);
  });

  // common practice: roots follow the loose trench fill down to a pipe, so the trench factor must fall slower
  it('falls slower along a trench than in undisturbed ground', () => {
    for (const depthM of [0.9, 1.2, 1.5, 2]) {
      const undisturbed = shareBelow(depthM, GLOBAL_BETA) / shareBelow(0.6, GLOBAL_BETA);
      expect(trenchDepthFactor(depthM)).toBeGreaterThan(undisturbed);
    }
  });
});
