// Long run of the simulated towns: recovery of known multipliers, coverage of intervals, gain in ranking.
// node packages/dev/simulate.mjs [towns]
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const towns = process.argv[2] ?? '300';
if (!(Number(towns) >= 12)) {
  console.error(`the number of towns must be 12 or more, got '${towns}'`);
  process.exit(2);
}
const args = [
  'vitest',
  'run',
  '-c',
  'tests/vitest.config.ts',
  '--project',
  'unit',
  'tests/simulation/recovery.test.ts',
];
const { status } = spawnSync('npx', args, {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, ROOTREACH_TOWNS: towns },
  shell: process.platform === 'win32',
});
process.exit(status ?? 1);
