import fc from 'fast-check';
import { contextOf, type RankOptions } from '../../packages/core/src/risk/context.js';
import { scoreAll } from '../../packages/core/src/risk/score-all.js';
import { type Scene, scene } from '../scenes/scene.js';

/** A tree of a drawn yard, metres from the middle of its line. */
export interface YardTree {
  readonly eastM: number;
  readonly northM: number;
  readonly species: string;
  readonly dbhCm: number;
  /** Null where it was not measured. */
  readonly canopyM: number | null;
}

/** One straight line that runs west to east through the middle, and trees about it. */
export interface Yard {
  readonly lengthM: number;
  readonly line: {
    readonly material: string;
    readonly joint: string;
    readonly pieceM: number;
    readonly perforated: boolean;
    readonly depthStartM: number;
    readonly depthEndM: number;
    readonly installed: number;
    readonly wet: string;
  };
  readonly trees: readonly YardTree[];
  readonly segmentM: number;
}

/** Off the round values by a hair, so that no joint falls on the border of two segments by chance. */
const measure = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((n) => n / 100 + 0.00371);

export const SPECIES = [
  'Betula nigra',
  'Ulmus americana',
  'Populus deltoides',
  'Acer rubrum',
  'Quercus alba',
  'Malus domestica',
  'Pinus strobus',
  'Salix babylonica',
];

export const treeOf = (canopy: 'measured' | 'missing' | 'either'): fc.Arbitrary<YardTree> =>
  fc.record({
    eastM: measure(-20, 20),
    northM: measure(-12, 12),
    species: fc.constantFrom(...SPECIES),
    dbhCm: measure(5, 110),
    canopyM:
      canopy === 'missing'
        ? fc.constant(null)
        : canopy === 'measured'
          ? measure(1, 11)
          : fc.option(measure(1, 11), { nil: null }),
  });

/** Any yard with one to four trees. */
export const yards = (canopy: 'measured' | 'missing' | 'either' = 'either'): fc.Arbitrary<Yard> =>
  fc.record({
    lengthM: measure(6, 45),
    line: fc.record({
      material: fc.constantFrom(
        'hdpe-corrugated',
        'pvc-sdr35',
        'pvc-thin-wall',
        'clay',
        'cast-iron',
        'unknown',
      ),
      joint: fc.constantFrom('welded', 'solvent', 'gasket', 'band', 'taped', 'snap', 'mortar', 'open'),
      pieceM: measure(0.6, 6.1),
      perforated: fc.boolean(),
      depthStartM: measure(0.2, 1.6),
      depthEndM: measure(0.2, 1.6),
      installed: fc.integer({ min: 1940, max: 2025 }),
      wet: fc.constantFrom('dry', 'often', 'standing'),
    }),
    trees: fc.array(treeOf(canopy), { minLength: 1, maxLength: 4 }),
    segmentM: measure(0.9, 7),
  });

/** A square metre of invented ground at mid latitude. */
export const ORIGIN: readonly [lon: number, lat: number] = [-93, 45];

/** The yard as a site file; `more` goes on the line. */
export function sceneOf(yard: Yard, more: Readonly<Record<string, unknown>> = {}, origin = ORIGIN): Scene {
  const { line, lengthM } = yard;
  const made = scene(origin).drain({
    id: 'line',
    path: [
      [-lengthM / 2, 0],
      [lengthM / 2, 0],
    ],
    flow: 'as-drawn',
    material: line.material,
    joint: line.joint,
    piece_m: line.pieceM,
    perforated: line.perforated,
    depth_start_m: line.depthStartM,
    depth_end_m: line.depthEndM,
    installed: line.installed,
    wet: line.wet,
    ...more,
  });
  return yard.trees.reduce(
    (grown, tree, i) =>
      grown.tree({
        id: `t${i + 1}`,
        at: [tree.eastM, tree.northM],
        species: tree.species,
        dbh_cm: tree.dbhCm,
        ...(tree.canopyM === null ? {} : { canopy_radius_m: tree.canopyM }),
      }),
    made,
  );
}

export const AS_OF = '2026-11-25';

/** Expected entries of all segments, and of the worst of them. */
export interface Expected {
  readonly all: number;
  readonly worst: number;
}

export function expectedOf(made: Scene, options: Omit<RankOptions, 'asOf'>): Expected {
  const { expected } = scoreAll(contextOf(made.site(), { asOf: AS_OF, ...options }));
  return { all: expected.reduce((sum, e) => sum + e, 0), worst: Math.max(...expected) };
}

export const expectedOfYard = (yard: Yard, more: Readonly<Record<string, unknown>> = {}): Expected =>
  expectedOf(sceneOf(yard, more), { segmentM: yard.segmentM });
