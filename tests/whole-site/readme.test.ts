import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { call, callOn, here } from '../cli/call.js';

const readme = readFileSync(here('README.md'), 'utf8');
/** What the README shows: a command and what it prints, `...` for what is left out. */
const shown = [...readme.matchAll(/^```\n\$ npx rootreach (.*)\n([\s\S]*?)^```$/gm)].map(
  ([, command = '', output = '']) => ({ command, output }),
);

const written = mkdtempSync(join(tmpdir(), 'rootreach-readme-'));
afterAll(() => rmSync(written, { recursive: true, force: true }));

/** A word of a command as a shell gives it on, with files that a command writes put out of the way. */
function wordsOf(word: string): string[] {
  if (/^(model\.json|learned\.svg)$/.test(word)) return [join(written, word)];
  if (!word.startsWith('data/')) return [word];
  if (!word.endsWith('*.geojson')) return [here(word)];
  const folder = here(dirname(word));
  return readdirSync(folder)
    .filter((name) => name.endsWith('.geojson'))
    .sort()
    .map((name) => join(folder, name));
}

const plain = (text: string): string =>
  text
    .split('\n')
    .map((line) => line.trimEnd())
    .join('\n')
    .trim();

describe('the README', () => {
  it('shows what commands print', () => {
    expect(shown.length).toBeGreaterThanOrEqual(8);
  });

  // in the order of the README: one command reads what another has written
  it.each(shown)('$command', async ({ command, output }) => {
    // sources have no thread to start: one is as good as many
    const alone = command.startsWith('town ') ? ['--threads', '0'] : [];
    const { out, err } = await call([...command.split(' ').flatMap(wordsOf), ...alone]);
    const printed = plain(`${out}\n${err}`);
    let from = 0;
    for (const part of output.split(/^\.\.\.$/m).map(plain)) {
      const at = printed.indexOf(part, from);
      expect(at, `not printed:\n${part}\n\nbut:\n${printed.slice(from)}`).toBeGreaterThanOrEqual(0);
      from = at + part.length;
    }
  });

  it('has a whole site file, small, that reads without an issue', async () => {
    const [, site = ''] = /^```json\n([\s\S]*?)^```$/m.exec(readme) ?? [];
    const { code, out } = await callOn(site, 'check');
    expect(out).toContain('Nothing wrong was found.');
    expect(code).toBe(0);
  });
});
