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
    'tests/core/risk/*.test.ts',
    'tests/core/explain/*.test.ts',
    'tests/properties/{bounds,monotone,quadrature}.test.ts',
    ...published,
  ],
  'risk/rescorer.ts': ['tests/properties/rescoring.test.ts'],
  line: ['tests/core/line/*.test.ts', 'tests/core/water/*.test.ts', 'tests/core/risk/!(worst-tenth).test.ts'],
  water: [
    'tests/core/water/*.test.ts',
    'tests/core/explain/water-words.test.ts',
    'tests/properties/water.test.ts',
    ...published,
  ],
  works: ['tests/core/works/*.test.ts', ...published],
  learn: ['tests/core/learn/*.test.ts', 'tests/core/infer/*.test.ts'],
  infer: ['tests/core/infer/*.test.ts', 'tests/core/learn/*.test.ts'],
  route: ['tests/core/route/*.test.ts', 'tests/published/{route-known-answers,harm,clearances}.test.ts'],
};
