import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
// inside node_modules, so that the packages' own dependencies are found by walking up
const scratch = join(root, 'node_modules', '.cache', 'installed');
const demo = join(root, 'data', 'sites', 'corner-lot.geojson');

/** Packs a workspace and unpacks it as an installer would. */
function install(folder: string, name: string): void {
  execFileSync('npm', ['pack', '--silent', '--pack-destination', scratch], { cwd: join(root, folder) });
  const archive = readdirSync(scratch).find((file) => file.startsWith(`rootreach-${name}-`));
  const target = join(scratch, 'node_modules', '@rootreach', name);
  mkdirSync(target, { recursive: true });
  execFileSync('tar', ['-xzf', join(scratch, archive ?? ''), '-C', target, '--strip-components=1']);
}

beforeAll(() => {
  rmSync(scratch, { recursive: true, force: true });
  mkdirSync(scratch, { recursive: true });
  install('packages/core', 'core');
  install('packages/intake', 'intake');
  install('packages/report', 'report');
  install('packages/cli', 'cli');
  install('apps/map', 'map');
});

describe('the packed packages in a project of their own', () => {
  it('rank two texts in ten lines of code', () => {
    const script = join(scratch, 'use.mjs');
    writeFileSync(
      script,
      `import { readFileSync } from 'node:fs';
       import { rank, readSite } from '@rootreach/core';
       const text = readFileSync(${JSON.stringify(demo)}, 'utf8');
       const { site } = readSite([{ name: 'demo', text }]);
       const worst = rank(site, { asOf: '2026-11-25' }).segments[0];
       console.log(JSON.stringify({ id: worst.id, rank: worst.rank, score: worst.score }));`,
    );
    const worst = JSON.parse(execFileSync(process.execPath, [script], { encoding: 'utf8' }));
    expect(worst.rank).toBe(1);
    expect(worst.score).toBeGreaterThan(20);
  });

  it('hold types for the public door', () => {
    const shipped = readdirSync(join(scratch, 'node_modules/@rootreach/core/dist'));
    expect(shipped).toContain('index.d.ts');
    expect(shipped).toContain('index.js');
  });

  it('link the command on a first install, when nothing has been built', () => {
    const { bin, files } = JSON.parse(readFileSync(join(root, 'packages/cli/package.json'), 'utf8'));
    // npm links a command only where its file is there: it must be committed, not built
    const tracked = execFileSync('git', ['ls-files', join('packages/cli', bin.rootreach)], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(tracked.trim()).toBe('packages/cli/bin/rootreach.mjs');
    expect(files).toContain('bin');
  });

  it('bring a command that ranks and a page to serve', () => {
    const command = join(scratch, 'node_modules/@rootreach/cli/bin/rootreach.mjs');
    const { status, stdout } = spawnSync(process.execPath, [command, 'rank', demo, '--json', '--top', '1'], {
      encoding: 'utf8',
    });
    expect(status).toBe(0);
    expect(JSON.parse(stdout).segments).toHaveLength(1);
    expect(readdirSync(join(scratch, 'node_modules/@rootreach/map/dist'))).toContain('index.html');
  });
});
