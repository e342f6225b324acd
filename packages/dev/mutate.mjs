// Mutation testing of one part or file of the core's science: are its tests able to fail?
// npm run mutate -- roots            npm run mutate -- risk --share 0.1 --seed 2
// npm run mutate -- roots/reach.ts   npm run mutate -- roots --fresh (forget what earlier runs found)
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import { targetOf, targets } from './mutation-targets.mjs';
import { wilson } from './wilson.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    share: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
    fresh: { type: 'boolean', default: false },
    // what is worked out once and kept is counted as covered only by the first test that asks for it
    'every-test': { type: 'boolean', default: false },
  },
});
const [asked = ''] = positionals;
const target = targetOf(asked);
if (target === undefined || !(Number(values.share) > 0)) {
  console.error('npm run mutate -- <part or file> [--share 0..1] [--seed n] [--fresh] [--every-test]');
  console.error(`parts: ${Object.keys(targets).join(', ')}`);
  process.exit(2);
}
process.chdir(root);
process.env['ROOTREACH_MUTATE_TESTS'] = target.tests.join(' ');
process.env['ROOTREACH_MUTATE_SHARE'] = values.share;
process.env['ROOTREACH_MUTATE_SEED'] = values.seed;

const mode = values['every-test'] ? '-every' : '';
const name = `${asked.replaceAll('/', '-')}-${values.share}-${values.seed}${mode}`;
const incrementalFile = `reports/mutation/${name}.json`;
if (values.fresh) rmSync(incrementalFile, { force: true });

const mutants = await new Stryker({
  mutate: target.files.map((file) => file.replace(/^!?/, '$&packages/core/src/')),
  // texts are checked by the tests of explain and of the page; a changed word is no changed science
  mutator: { excludedMutations: ['StringLiteral'] },
  // which mutants run only while a file is loaded is known only where each test's way is
  ignoreStatic: !values['every-test'],
  ignorePatterns: ['apps', 'coverage', 'reports', 'dist', '.types', '*.tsbuildinfo'],
  testRunner: 'vitest',
  vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
  coverageAnalysis: values['every-test'] ? 'all' : 'perTest',
  plugins: [
    import.meta.resolve('@stryker-mutator/vitest-runner'),
    import.meta.resolve('./mutation-sample.mjs'),
  ],
  checkers: ['sample'],
  concurrency: 1,
  // loops without end are counted and stopped; the clock is for what no counter sees, on a busy machine
  timeoutMS: 120_000,
  dryRunTimeoutMinutes: 20,
  incremental: true,
  incrementalFile,
  reporters: ['progress-append-only'],
  allowConsoleColors: false,
  logLevel: 'warn',
  tempDirName: '.stryker-tmp',
}).runMutationTest();

const isText = ({ mutatorName }) => mutatorName === 'StringLiteral';
const atLoad = mutants.filter((mutant) => mutant.status === 'Ignored' && !isText(mutant)).length;
const drawn = mutants.filter(({ status }) => !['CompileError', 'Ignored', 'RuntimeError'].includes(status));
const killed = drawn.filter(({ status }) => status === 'Killed' || status === 'Timeout').length;
const alive = drawn.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
// a time-out without a count of loops may be a busy machine: to be looked at too
const late = drawn.filter(({ status }) => status === 'Timeout');
for (const { fileName, location, mutatorName, replacement, status } of [...alive, ...late]) {
  const place = `${fileName.replace(`${root}packages/core/src/`, '')}:${location.start.line}:${location.start.column}`;
  console.log(`${status} ${place} ${mutatorName} -> ${replacement.replaceAll(/\s+/g, ' ')}`);
}
const [low, high] = wilson(killed, drawn.length).map((p) => (100 * p).toFixed(1));
console.log(
  `${asked}: ${mutants.length} mutants, ${mutants.filter(isText).length} of them texts and ${atLoad} run at loading, ` +
    `both left out; ${drawn.length} tried, ${killed} killed, ${alive.length} alive; ` +
    `score ${((100 * killed) / drawn.length).toFixed(1)} % (95 % interval ${low}-${high})`,
);
