// Finds a Chromium for the browser tests: one that is named, the one that comes as a package, or the system's.
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const SYSTEM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium that can be started, or null. */
export async function findBrowser() {
  const named = process.env.ROOTREACH_BROWSER;
  if (named) return named;
  if (process.platform === 'linux' && process.arch === 'x64') {
    // the package unpacks into the temporary folder and would take any older copy it finds there
    const folder = join(root, 'node_modules', '.cache', 'chromium');
    mkdirSync(folder, { recursive: true });
    const before = process.env.TMPDIR;
    process.env.TMPDIR = folder;
    try {
      const { default: chromium } = await import('@sparticuz/chromium');
      return await chromium.executablePath();
    } catch {
      // fall through to the system's
    } finally {
      if (before === undefined) delete process.env.TMPDIR;
      else process.env.TMPDIR = before;
    }
  }
  return SYSTEM.find((path) => existsSync(path)) ?? null;
}
