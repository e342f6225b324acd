const published = (...names) => `tests/published/{${names.join(',')}}.test.ts`;

/** What a site that is edited or looked at is scored with, line by line; its properties are slow: apart from risk. */
const RESCORING = '{rescorer,same-value,scored-line,scored-site,site-view}.ts';

/**
 * Parts of the core's science, each with the tests that its mutants are held against: its own, and published facts.
 * Slow tests that others make up for are left out.
 */
export const targets = {
  roots: {
    files: ['roots/**/*.ts'],
    tests: [
      'tests/core/roots/*.test.ts',
      'tests/core/sources/*.test.ts',
      'tests/core/explain/protection-sheet.test.ts',
      'tests/published/!(geos-turf-overlap|city-inventory-names|geojson-validity|route-known-answers).test.ts',
    ],
  },
  risk: {
    files: ['risk/**/*.ts', `!risk/${RESCORING}`],
    tests: [
      'tests/core/risk/*.test.ts',
      'tests/core/learn/learn.test.ts',
      'tests/properties/{monotone,quadrature,spread}.test.ts',
      published('sadler-2001', 'ostberg-2012', 'pipe-stiffness', 'calendar'),
    ],
  },
  rescoring: {
    files: [`risk/${RESCORING}`],
    tests: [
      'tests/core/risk/{rescorer,same-value,site-view,order,odds-over-years}.test.ts',
      'tests/properties/rescoring.test.ts',
    ],
  },
  line: {
    files: ['line/**/*.ts'],
    tests: [
      'tests/core/line/*.test.ts',
      'tests/core/water/water.test.ts',
      'tests/core/risk/{known,observed,load-by-hand,openings}.test.ts',
    ],
  },
  water: {
    files: ['water/**/*.ts'],
    tests: [
      'tests/core/water/*.test.ts',
      'tests/core/explain/water-words.test.ts',
      'tests/properties/water.test.ts',
      published('manning', 'rational-method', 'runoff-coefficients', 'plumbing-code-roof-areas'),
    ],
  },
  works: {
    files: ['works/**/*.ts'],
    tests: ['tests/core/works/*.test.ts', published('calendar', 'excavation', 'present-value')],
  },
  learn: {
    files: ['learn/**/*.ts'],
    tests: ['tests/core/{learn,infer}/*.test.ts', 'tests/core/risk/observed.test.ts'],
  },
  infer: { files: ['infer/**/*.ts'], tests: ['tests/core/{learn,infer}/*.test.ts'] },
  route: {
    files: ['route/**/*.ts'],
    tests: ['tests/core/route/*.test.ts', published('route-known-answers', 'harm', 'clearances')],
  },
};

/** Target of a name, or of one file: `roots/reach.ts` goes with `roots`. */
export function targetOf(name) {
  const known = targets[name];
  if (known !== undefined || !name.endsWith('.ts')) return known;
  const folder = name.split('/')[0];
  const edited = folder === 'risk' && RESCORING.slice(1, -4).split(',').includes(name.slice(5, -3));
  const { tests } = targets[edited ? 'rescoring' : folder] ?? {};
  return tests && { files: [name], tests };
}
