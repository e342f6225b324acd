// Installs the workspace when it has not been, or when the lockfile is newer than what is installed.
// Plain Node without imports from the registry: it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const installed = join(root, 'node_modules', '.package-lock.json');
const wanted = join(root, 'package-lock.json');

const fresh = existsSync(installed) && statSync(installed).mtimeMs >= statSync(wanted).mtimeMs;
if (!fresh) {
  console.error('Installing what is needed (once) ...');
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
}
