import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  folderOf,
  licenceOf,
  locked,
  named,
  neededToRun,
  withTheirNeeds,
  workspaces,
} from './installed-packages.js';
import { filesUnder, root } from './source-files.js';

/** Licences that ask for no more than a notice. */
const FREE = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  '0BSD',
  'BlueOak-1.0.0',
  'Zlib',
  'CC0-1.0',
  'Unlicense',
  // the Eclipse Distribution License: the words of BSD-3-Clause
  'EDL-1.0',
  // as splaytree-ts spells it
  'BDS-3-Clause',
]);
/** The one that asks for more: it must stay a file that anyone can replace. */
const LGPL = 'geojson-validation';

/** `(A OR B)`: one will do; `(A AND B)`: both must. */
const isFree = (licence: string): boolean =>
  licence
    .replace(/[()]/g, '')
    .split(' OR ')
    .some((choice) => choice.split(' AND ').every((one) => FREE.has(one)));

const readme = readFileSync(join(root, 'README.md'), 'utf8');
const developers = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');

const running = workspaces.flatMap((workspace) =>
  neededToRun(workspace).map((name) => folderOf(name, workspace)),
);
const installed = Object.entries(locked).filter(([at, { link }]) => at.includes('node_modules/') && !link);

/** Rows of the table of dependencies: names, licences, reason. */
const rows = (developers.split('## Dependencies')[1]?.split('\n## ')[0] ?? '')
  .split('\n')
  .filter((line) => line.startsWith('| ') && !line.startsWith('| package'))
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .map(([, names = '', licences = '', why = '']) => ({ names: names.split(/,\s*/), licences, why }));

/** `BSD-2-Clause` as the table has it: `BSD-2`. */
const shortOf = (licence: string): string => licence.replace(/-Clause|\.0(-or-later)?$/g, '');

describe('what the packages need to run', () => {
  const all = withTheirNeeds(running);

  it('is all under licences that ask for no more than a notice, but for the one that is named', () => {
    expect(all.length).toBeGreaterThan(20);
    const others = all.filter((folder) => !isFree(licenceOf(folder)));
    expect(others).toEqual([`node_modules/${LGPL}`]);
    expect(licenceOf(`node_modules/${LGPL}`)).toMatch(/^LGPL-3/);
  });

  it('is little: only the geometry library comes along by the dozen', () => {
    const turf = new Set(withTheirNeeds([folderOf('@turf/turf', 'packages/core')]));
    const others = all.filter((folder) => !turf.has(folder));
    console.log(
      `needed to run: ${new Set(running).size} packages, ${others.length} with theirs, Turf's apart`,
    );
    expect(others.length).toBeLessThanOrEqual(40);
  });

  it('says in the README which one is not, and that it can be replaced', () => {
    const paragraph = readme.split('\n\n').find((text) => text.includes('LGPL')) ?? '';
    expect(paragraph).toContain(LGPL);
    expect(paragraph).toMatch(/can\s+be\s+replaced/);
  });
});

describe('what is installed', () => {
  it('runs nothing of its own while it is installed, and is held to its checksum', () => {
    expect(installed.length).toBeGreaterThan(200);
    expect(installed.filter(([, { hasInstallScript }]) => hasInstallScript).map(([at]) => at)).toEqual([]);
    expect(installed.filter(([, { integrity }]) => !integrity).map(([at]) => at)).toEqual([]);
  });

  it('comes from the registry alone: no address and no folder stands in for a version', () => {
    const odd = workspaces.flatMap((workspace) => {
      const { dependencies = {}, devDependencies = {} } = locked[workspace] ?? {};
      return Object.entries({ ...dependencies, ...devDependencies }).filter(
        ([, range]) => !/^[\^~]?\d+\.\d+\.\d+$/.test(range),
      );
    });
    expect(odd).toEqual([]);
  });
});

describe('the table of dependencies', () => {
  const used = new Map(workspaces.flatMap((at) => named(at).map((name) => [name, folderOf(name, at)])));

  it('has every package that is named anywhere, and none that is not', () => {
    const inTable = rows.flatMap(({ names }) => names).sort();
    // types of a package come with it
    const wanted = [...used.keys()].filter((name) => !name.startsWith('@types/')).sort();
    expect(inTable).toEqual(wanted);
  });

  it('gives each its licence and a reason', () => {
    const wrong = rows.flatMap(({ names, licences, why }) =>
      names.filter((name) => {
        const own = shortOf(licenceOf(used.get(name) ?? ''));
        return why.length < 8 || !own.split(' OR ').some((one) => licences.includes(shortOf(one)));
      }),
    );
    expect(wrong).toEqual([]);
  });
});

describe('each package', () => {
  it('carries the licence of the whole', () => {
    const licence = readFileSync(join(root, 'LICENSE'), 'utf8');
    for (const workspace of workspaces.slice(1))
      expect(readFileSync(join(root, workspace, 'LICENSE'), 'utf8')).toBe(licence);
  });

  it('imports no package that it does not name', () => {
    const missing = workspaces.slice(1).flatMap((workspace) => {
      const { dependencies = {}, devDependencies = {} } = locked[workspace] ?? {};
      const own = new Set(Object.keys({ ...dependencies, ...devDependencies }));
      return filesUnder(`${workspace}/src`, ['.ts', '.tsx']).flatMap(({ path, text }) =>
        [...text.matchAll(/\bfrom '([^.'][^']*)'/g)]
          .map(([, from = '']) => /^(@[^/]+\/)?[^/]+/.exec(from)?.[0] ?? from)
          .filter((name) => !name.startsWith('node:') && !own.has(name) && !own.has(`@types/${name}`))
          .map((name) => `${path}: ${name}`),
      );
    });
    expect(missing).toEqual([]);
  });
});
