// Builds the core, the command and the map page: what `npm start` and the tests need.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** @returns true when the build went through; its output is shown only when it did not. */
export function build() {
  const { status, stdout, stderr } = spawnSync('npm', ['run', 'build', '--silent'], {
    cwd: root,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.stderr.write(`${stdout}${stderr}`);
  return status === 0;
}
