import { describe, expect, it } from 'vitest';
import { clearanceOf } from '../../packages/core/src/roots/clearance.js';
import { drainClearance } from '../../packages/core/src/tables/drain-clearance.js';
import { speciesRow } from '../../packages/core/src/tables/species.js';
import { residual } from './residual.js';

/**
 * Tile drains and tree roots: guidance of Ontario (factsheet 12-055), Indiana and Ohio. Willow, soft maple (silver and
 * red), elm and poplar at least 100 ft from perforated drains, other trees 50 ft; pipe without holes within 50 ft.
 *
 * Tolerance: a centimetre, half of the last place of the metres below.
 */
const CENTIMETRE = 0.005;
const HUNDRED_FEET_M = 30.48;
const FIFTY_FEET_M = 15.24;

const ROWS = [
  ['salix-babylonica', HUNDRED_FEET_M],
  ['salix-nigra', HUNDRED_FEET_M],
  ['acer-saccharinum', HUNDRED_FEET_M],
  ['acer-rubrum', HUNDRED_FEET_M],
  ['ulmus-americana', HUNDRED_FEET_M],
  ['populus-deltoides', HUNDRED_FEET_M],
  ['populus-tremuloides', HUNDRED_FEET_M],
  ['fraxinus-pennsylvanica', FIFTY_FEET_M],
  ['fraxinus-excelsior', FIFTY_FEET_M],
  ['acer-saccharum', FIFTY_FEET_M],
  ['quercus-alba', FIFTY_FEET_M],
  ['betula-pendula', FIFTY_FEET_M],
] as const;

describe('clearance of perforated drains (tile drain guidance)', () => {
  it.each(ROWS)('keeps them from %s by %f m', (key, published) => {
    residual({ what: key, got: clearanceOf(speciesRow(key)), published, tolerance: CENTIMETRE });
  });

  it('asks for pipe without holes within 50 ft of any tree', () => {
    residual({
      what: 'solid',
      got: drainClearance.solidWithinM.value,
      published: FIFTY_FEET_M,
      tolerance: CENTIMETRE,
    });
    expect(drainClearance.solidWithinM.known).toBe('read');
  });
});
