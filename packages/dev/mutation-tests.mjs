const published = [
  'tests/published/!(geos-turf-overlap|city-inventory-names|geojson-validity|route-known-answers).test.ts',
];

/**
 * The tests that mutants of each folder of the core are held against: its own, and published facts. A file with an
 * entry of its own is left out of its folder's run.
 */
export const testsOf = {
  roots: [
    'tests/core/roots/*.test.ts',
    'tests/core/explain/protection-sheet.test.ts',
    'tests/core/sources/*.test.ts',
    ...published,
  ],
  risk: [
    'tests/core/risk/!(worst-tenth).test.ts',
    'tests/properties/{monotone,quadrature,spread}.test.ts',
    'tests/published/{sadler-2001,ostberg-2012,pipe-stiffness,calendar}.test.ts',
  ],
  'risk/rescorer.ts': ['tests/properties/rescoring.test.ts'],
  line: [
    'tests/core/line/*.test.ts',
    'tests/core/water/water.test.ts',
    'tests/core/risk/{known,observed,load-by-hand,openings}.test.ts',
  ],
  water: [
    'tests/core/water/*.test.ts',
    'tests/core/explain/water-words.test.ts',
    'tests/properties/water.test.ts',
    'tests/published/{manning,rational-method,runoff-coefficients,plumbing-code-roof-areas}.test.ts',
  ],
  works: ['tests/core/works/*.test.ts', 'tests/published/{calendar,excavation,present-value}.test.ts'],
  learn: ['tests/core/learn/*.test.ts', 'tests/core/infer/*.test.ts'],
  infer: ['tests/core/infer/*.test.ts', 'tests/core/learn/*.test.ts'],
  route: ['tests/core/route/*.test.ts', 'tests/published/{route-known-answers,harm,clearances}.test.ts'],
};
