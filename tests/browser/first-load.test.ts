import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';

const dist = fileURLToPath(new URL('../../apps/map/dist/', import.meta.url));

/** What a phone takes in before the first answer: at most this much script, gzipped. */
const MOST_KB = 200;

/** Scripts that a script cannot start without: its static imports, and theirs. */
function withImports(name: string, found = new Set<string>()): Set<string> {
  if (found.has(name)) return found;
  found.add(name);
  const text = readFileSync(`${dist}assets/${name}`, 'utf8');
  for (const [, one] of text.matchAll(/(?:from|import)\s*["']\.\/([\w.-]+\.js)["']/g))
    withImports(one as string, found);
  return found;
}

describe('the first load of the page', () => {
  it('brings less than 200 kB of script, the worker included and the editing tools left out', () => {
    const html = readFileSync(`${dist}index.html`, 'utf8');
    const first = new Set<string>();
    for (const [, name] of html.matchAll(/(?:src|href)="\.\/assets\/([\w.-]+\.js)"/g))
      withImports(name as string, first);
    expect([...first].some((name) => name.startsWith('index-'))).toBe(true);
    const workers = readdirSync(`${dist}assets`).filter((name) => /^worker-.*\.js$/.test(name));
    expect(workers).toHaveLength(1);
    for (const worker of workers) withImports(worker, first);
    const sizes = [...first].map(
      (name) => [name, gzipSync(readFileSync(`${dist}assets/${name}`)).length] as const,
    );
    const bytes = sizes.reduce((sum, [, size]) => sum + size, 0);
    console.log(`first load: ${(bytes / 1000).toFixed(1)} kB gzip`, Object.fromEntries(sizes));
    expect(bytes).toBeLessThan(MOST_KB * 1000);
    // the table of species is for typing names: it comes with the editing tools
    const page = sizes.find(([name]) => name.startsWith('index-'))?.[0];
    expect(readFileSync(`${dist}assets/${page}`, 'utf8')).not.toContain('Gleditsia triacanthos');
  });
});
