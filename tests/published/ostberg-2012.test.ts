import { describe, expect, it } from 'vitest';
import { rank } from '../../packages/core/src/risk/rank.js';
import { scene } from '../scenes/scene.js';
import { seeded } from '../scenes/seeded.js';

/**
 * Östberg, J., Martinsson, M., Stål, Ö., Fransson, A.-M. (2012): Risk of root intrusion by tree and shrub species
 * into sewer pipes in Swedish urban areas. Urban Forestry & Urban Greening 11:65-71. Abstract: 2,180 intrusions in
 * 33.7 km of sewers known to have roots, plants counted within 20 m. With old concrete pipes of one metre that is
 * 0.065 intrusions a joint.
 *
 * What is laid out here besides: depth of 2 m, foul water, forty years of age, a plant to each 8 m of line at any
 * distance up to 20 m on either side, the usual town species in turn. The rate of entry was chosen by such an
 * estimate (done by hand, with means), so this checks that the whole model, with its trees that grow, its curve, its
 * clock and its age factor, still comes out there.
 */
const INTRUSIONS_PER_JOINT = 2180 / 33_700;

const TOWN_SPECIES = [
  'Tilia cordata',
  'Acer platanoides',
  'Betula pendula',
  'Sorbus aucuparia',
  'Malus domestica',
  'Populus x canadensis',
  'Ulmus glabra',
  'Aesculus hippocastanum',
  'Prunus avium',
  'Crataegus monogyna',
  'Quercus robur',
  'Fraxinus excelsior',
];
const LENGTH_M = 800;
const PLANT_EVERY_M = 8;
const WITHIN_M = 20;
const AGE_YEARS = 40;

/** Entries a joint over the life of the line, with plants of a given age or size when it was laid. */
function entriesPerJoint(plants: Readonly<Record<string, number>>): number {
  const random = seeded(7);
  const street = scene([13, 55.6]).drain({
    path: [
      [0, 0],
      [LENGTH_M, 0],
    ],
    material: 'concrete',
    piece_m: 1,
    depth_start_m: 2,
    depth_end_m: 2,
    carries: 'foul',
    installed: '1970-07-01',
  });
  for (let i = 0; i < LENGTH_M / PLANT_EVERY_M; i++) {
    const side = random() < 0.5 ? -1 : 1;
    const at = [PLANT_EVERY_M * (i + random()), side * WITHIN_M * random()] as const;
    street.tree({ at, species: TOWN_SPECIES[i % TOWN_SPECIES.length], ...plants });
  }
  const { segments } = rank(street.site(), {
    asOf: '1970-07-01',
    horizonYears: AGE_YEARS,
    segmentM: 100,
  });
  const joints = segments.reduce((sum, s) => sum + s.joints.count, 0);
  expect(joints).toBe(LENGTH_M - 1);
  return segments.reduce((sum, s) => sum + s.expectedEntries.joints, 0) / joints;
}

describe('old foul mains under town trees (Östberg and others 2012)', () => {
  // tolerance: a factor of two either way. Neither the plants' sizes nor the depth, age and piece length of the pipes
  // stand in the abstract, and pipes without roots are not in the count.
  it('have about 0.065 intrusions a joint where the trees were planted with the line', () => {
    const got = entriesPerJoint({ planted: 1970 });
    const factor = got / INTRUSIONS_PER_JOINT;
    console.info(
      `Östberg 2012: ${got.toFixed(4)} a joint, found ${INTRUSIONS_PER_JOINT.toFixed(4)}, factor ${factor.toFixed(2)}`,
    );
    expect(factor, `factor ${factor}`).toBeGreaterThan(1 / 2);
    expect(factor, `factor ${factor}`).toBeLessThan(2);
  });

  // had the trees been there before, all grown, the same count would need a lower rate: a factor of three bounds
  // what the unknown sizes can do
  it.each([
    ['planted ten years before', { planted: 1960 }],
    ['with stems of 30 cm when the line was laid', { dbh_cm: 30 }],
    ['with stems of 50 cm when the line was laid', { dbh_cm: 50 }],
  ])('stay within a factor of three with trees %s', (trees, plants) => {
    const got = entriesPerJoint(plants);
    const factor = got / INTRUSIONS_PER_JOINT;
    console.info(`Östberg 2012, trees ${trees}: ${got.toFixed(4)} a joint, factor ${factor.toFixed(2)}`);
    expect(factor, `factor ${factor}`).toBeGreaterThan(1 / 3);
    expect(factor, `factor ${factor}`).toBeLessThan(3);
  });
});
