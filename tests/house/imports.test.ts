import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesUnder, importsOf, type SourceFile, withoutComments } from './source-files.js';

const CORE = 'packages/core/src';

/** A folder of the core imports only from those before it. */
const ORDER = [
  'units',
  'sources',
  'tables',
  'model',
  'names',
  'geometry',
  'infer',
  'roots',
  'read',
  'validate',
  'line',
  'risk',
  'town',
  'quantities',
  'prices',
  'learn',
  'route',
  'water',
  'works',
  'explain',
  'index.ts',
];

const core = filesUnder(CORE, ['.ts', '.tsx']);
const outside = [
  ...filesUnder('packages/intake', ['.ts']),
  ...filesUnder('packages/report', ['.ts']),
  ...filesUnder('packages/cli', ['.ts', '.tsx', '.mjs']),
  ...filesUnder('apps', ['.ts', '.tsx']),
];

const folderOf = (path: string): string => path.slice(CORE.length + 1).split('/')[0] ?? '';

/** Path from the root of a file named in an import, or null for a package. */
function target(file: SourceFile, from: string): string | null {
  if (!from.startsWith('.')) return null;
  return posix.join(posix.dirname(file.path), from);
}

interface Edge {
  readonly from: string;
  readonly to: string;
  readonly file: string;
  readonly typeOnly: boolean;
}

const edges: Edge[] = core.flatMap((file) =>
  importsOf(file.text).flatMap(({ from, typeOnly }) => {
    const to = target(file, from);
    return to === null
      ? []
      : [{ from: folderOf(file.path), to: folderOf(to), file: `${file.path} <- ${from}`, typeOnly }];
  }),
);

/** Types of the model name keys of the tables, and rows of the tables name types of the model. */
const typesBothWays = ({ from, to, typeOnly }: Edge): boolean =>
  typeOnly && [from, to].sort().join(' ') === 'model tables';

describe('the reader of imports', () => {
  it('sees plain, type-only, many-line, bare and called ones, and none in comments', () => {
    const text = [
      "import { a } from './a.js';",
      "import type { B } from './b.js';",
      "export {\n  c,\n  d,\n} from './c.js';",
      "export type * from './d.js';",
      "import './e.css';",
      "const f = await import('./f.js');",
      "type G = import('./g.js').G;",
      "// import { h } from './h.js';",
      "/* import { i } from './i.js'; */",
    ].join('\n');
    const seen = importsOf(text).map(({ from, typeOnly }) => `${from}${typeOnly ? ' type' : ''}`);
    expect(seen.sort()).toEqual([
      './a.js',
      './b.js type',
      './c.js',
      './d.js type',
      './e.css',
      './f.js',
      './g.js type',
    ]);
  });
});

describe('the core', () => {
  it('is found, and its folders are those of the order', () => {
    expect(core.length).toBeGreaterThan(80);
    expect(edges.length).toBeGreaterThan(200);
    const unknown = [...new Set(core.map((file) => folderOf(file.path)))].filter((f) => !ORDER.includes(f));
    expect(unknown).toEqual([]);
  });

  it('imports from its own folder and those before it', () => {
    const back = edges
      .filter((edge) => ORDER.indexOf(edge.to) > ORDER.indexOf(edge.from) && !typesBothWays(edge))
      .map((edge) => edge.file);
    expect(back).toEqual([]);
  });

  it('stays inside its package', () => {
    const gone = core.flatMap((file) =>
      importsOf(file.text)
        .map(({ from }) => target(file, from))
        .filter((to) => to !== null && !to.startsWith(`${CORE}/`))
        .map((to) => `${file.path} <- ${to}`),
    );
    expect(gone).toEqual([]);
  });

  it('names its own files with the ending that they have when built', () => {
    const odd = edges.filter((edge) => !edge.file.endsWith('.js')).map((edge) => edge.file);
    expect(odd).toEqual([]);
  });

  it.each([
    ['a module of Node', /['"]node:|from '(fs|path|url|os|process|crypto|buffer)'/],
    ['a process or a file', /\bprocess\.|\b__dirname\b|\bimport\.meta\b|\brequire\(/],
    ['the page', /\b(document|window|navigator|localStorage|HTMLElement|globalThis|self)\s*[.[]/],
    ['the network', /\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\b/],
    ['a map or page library', /from '(leaflet|preact|react|jsdom)/],
    ['the console', /\bconsole\b/],
    ['the clock', /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\./],
    ['chance without a seed', /\bMath\.random\b|\bcrypto\./],
    ['a timer', /\b(setTimeout|setInterval|queueMicrotask)\b/],
  ])('does without %s', (_, pattern) => {
    const users = core.filter((file) => pattern.test(withoutComments(file.text))).map((file) => file.path);
    expect(users).toEqual([]);
  });

  it('does not read the data folder', () => {
    const readers = core
      .filter((file) => /\/data\//.test(withoutComments(file.text)))
      .map((file) => file.path);
    expect(readers).toEqual([]);
  });
});

describe('the command line and the map page', () => {
  it('import the core by its one door', () => {
    const insiders = outside.flatMap((file) =>
      importsOf(file.text)
        .filter(({ from }) => /@rootreach\/core\/|packages\/core|core\/src/.test(from))
        .map(({ from }) => `${file.path} <- ${from}`),
    );
    expect(insiders).toEqual([]);
  });
});

describe('a source file', () => {
  it('holds no more than can be read at a sitting', () => {
    const long = [...core, ...outside]
      .map((file) => ({ path: file.path, lines: file.text.split('\n').length }))
      .filter(({ lines }) => lines > 350);
    expect(long).toEqual([]);
  });
});
