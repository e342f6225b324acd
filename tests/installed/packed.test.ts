import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import ts from 'typescript';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { codeBlocks } from './code-blocks.js';
import { newProject, type Packed, type Project, packed, root } from './project.js';

const demo = join(root, 'data', 'sites', 'corner-lot.geojson');
const LIBRARIES: readonly Packed[] = ['core', 'intake', 'report'];
let project: Project;

beforeAll(() => {
  project = newProject();
});
afterAll(() => project.remove());

const write = (name: string, text: string): string => {
  const file = join(project.folder, name);
  writeFileSync(file, text);
  return file;
};
const node = (file: string, cwd = project.folder): string =>
  execFileSync(process.execPath, [file], { encoding: 'utf8', cwd });

describe('a packed package', () => {
  it.each(packed)('%s: is described as installers and bundlers read it', async (name) => {
    const { messages, pkg } = await publint({
      pkgDir: project.packageFolder(name),
      pack: false,
      strict: true,
    });
    expect(messages.map((message) => formatMessage(message, pkg))).toEqual([]);
  });

  it.each(packed)('%s: brings its licence, its changes and what it is, and no test', (name) => {
    const files = readdirSync(project.packageFolder(name));
    expect(files).toEqual(expect.arrayContaining(['LICENSE', 'CHANGELOG.md', 'README.md', 'dist']));
    expect(files.filter((file) => /^(tests?|tsconfig.*|node_modules)$/.test(file))).toEqual([]);
  });
});

describe('the packed packages in a project of their own', () => {
  it('run the example of the README, which shows what comes of it', () => {
    const readme = readFileSync(join(root, 'README.md'), 'utf8');
    const [, ofPrograms = ''] = readme.split('## In a program\n');
    const [example, shown] = codeBlocks(ofPrograms);
    expect(example?.language).toBe('ts');
    expect(example?.code.trim().split('\n').length).toBeLessThanOrEqual(10);
    expect(node(write('example.mjs', example?.code ?? ''), root)).toBe(shown?.code);
  });

  it('run what the guide to own rates, weights and rules shows', () => {
    const blocks = codeBlocks(readFileSync(join(project.packageFolder('core'), 'README.md'), 'utf8'));
    const programs = blocks.flatMap(({ language, code }, i) =>
      language === 'js' ? [{ code, shown: blocks[i + 1]?.code }] : [],
    );
    expect(programs).toHaveLength(3);
    programs.forEach(({ code, shown }, i) => {
      expect(node(write(`guide-${i}.mjs`, code), root)).toBe(shown);
    });
  });

  it('hold types that a strict program compiles with, as the READMEs use them', () => {
    const given = 'declare const treesText: string, linesText: string, text: string, bytes: Uint8Array;\n';
    const files = LIBRARIES.flatMap((name) =>
      codeBlocks(readFileSync(join(project.packageFolder(name), 'README.md'), 'utf8'))
        .filter(({ language }) => language === 'ts')
        .map(({ code }, i) => write(`${name}-${i}.mts`, `${given}declare const console: Console;\n${code}`)),
    );
    expect(files.length).toBeGreaterThanOrEqual(LIBRARIES.length);
    const console = write('console.d.ts', 'interface Console { log(...what: unknown[]): void }\n');
    const program = ts.createProgram([...files, console], {
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
      lib: ['lib.es2023.d.ts'],
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      types: [],
    });
    const ours = program
      .getSourceFiles()
      .filter(({ fileName }) => /\/@rootreach\//.test(fileName) || files.includes(fileName));
    expect(ours.length).toBeGreaterThan(100);
    const wrong = ours
      .flatMap((file) => [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)])
      .map(({ file, messageText }) => {
        return `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, '\n')}`;
      });
    expect(wrong).toEqual([]);
  });

  it('go into an application that vite builds, and bring along only what is used', async () => {
    const bundle = async (name: string, code: string): Promise<string> => {
      const entry = write(`${name}.mjs`, code);
      await build({
        root: project.folder,
        configFile: false,
        logLevel: 'error',
        build: {
          outDir: `dist-${name}`,
          target: 'es2022',
          lib: { entry, formats: ['es'], fileName: () => `${name}.mjs` },
        },
      });
      return join(project.folder, `dist-${name}`, `${name}.mjs`);
    };
    const whole = await bundle(
      'app',
      `import { rank, readSite } from '@rootreach/core';
       const { site } = readSite([{ name: 'demo', text: globalThis.demo }]);
       export const worst = rank(site, { asOf: '2026-11-25', top: 1 }).segments[0];`,
    );
    const run = write(
      'run.mjs',
      `import { readFileSync } from 'node:fs';
       globalThis.demo = readFileSync(${JSON.stringify(demo)}, 'utf8');
       const { worst } = await import(${JSON.stringify(whole)});
       console.log(worst.id);`,
    );
    expect(node(run)).toBe('tail/3\n');
    const feet = await bundle(
      'feet',
      "import { fromFeet } from '@rootreach/core';\nexport const one = fromFeet(1);",
    );
    expect(readFileSync(feet, 'utf8').length).toBeLessThan(500);
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
    const command = join(project.packageFolder('cli'), 'bin', 'rootreach.mjs');
    const { status, stdout } = spawnSync(process.execPath, [command, 'rank', demo, '--json', '--top', '1'], {
      encoding: 'utf8',
    });
    expect(status).toBe(0);
    expect(JSON.parse(stdout).segments).toHaveLength(1);
    expect(readdirSync(join(project.packageFolder('map'), 'dist'))).toContain('index.html');
  });
});
