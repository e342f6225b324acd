import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { Case } from './case.js';
import type { Outcome, Written } from './faults.js';

/** The command in this process: `run` of the sources or of what was built. */
export type Run = (argv: readonly string[], io: never) => Promise<number>;

const SHARED = [Object, Array, String, Number, Boolean, Function, Map, Set, Promise, RegExp, Date, Error].map(
  ({ prototype, name }) => ({
    prototype: prototype as object,
    name,
    names: Object.getOwnPropertyNames(prototype),
  }),
);

const pollution = (): string[] =>
  SHARED.flatMap(({ prototype, name, names }) =>
    Object.getOwnPropertyNames(prototype)
      .filter((own) => !names.includes(own))
      .map((own) => {
        Reflect.deleteProperty(prototype, own);
        return `${name}.prototype.${own}`;
      }),
  );

/** Places of numbers that JSON cannot hold and would write as null. */
function notFiniteIn(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => notFiniteIn(part, `${path}/${name}`));
}

const FORMS: Readonly<Record<string, Written['form']>> = {
  '.json': 'json',
  '.geojson': 'json',
  '.csv': 'csv',
  '.ics': 'ics',
  '.html': 'html',
  '.svg': 'svg',
};

function formOf(argv: readonly string[]): Written['form'] {
  const [command] = argv;
  if (argv.includes('--json') || argv.includes('--geojson')) return 'json';
  if (argv.includes('--csv')) return 'csv';
  if (argv.includes('--ics')) return 'ics';
  if (command === 'page') return 'html';
  if (command === 'convert') return 'json';
  return 'text';
}

const asText = (content: string | Uint8Array): string =>
  typeof content === 'string' ? content : Buffer.from(content).toString('utf8');

/** Runs a case in a folder that is kept for it; what the case brought and made is gone afterwards. */
export async function runCase(run: Run, { argv, files }: Case, folder: string): Promise<Outcome> {
  const out = join(folder, 'out');
  mkdirSync(out, { recursive: true });
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  const told = { out: '', err: '' };
  const take = (where: 'out' | 'err') => (text: string) => {
    told[where] += text;
  };
  const notFinite: string[] = [];
  const { stringify } = JSON;
  JSON.stringify = ((value: unknown, ...more: []) => {
    // what is printed is laid out; texts between parts of the command are not
    if ((more as unknown[])[1] === 2) notFinite.push(...notFiniteIn(value).slice(0, 3));
    return stringify(value, ...more);
  }) as typeof stringify;
  const said: string[] = [];
  const { warn, error, log } = console;
  console.warn = console.error = console.log = (...words: unknown[]) => void said.push(words.join(' '));
  try {
    const code = await run(
      argv.map((word) => word.replace('@/', `${folder}/`)),
      {
        stdout: { write: take('out') },
        stderr: { write: take('err') },
        stdin: () => Promise.resolve(''),
        now: new Date(2026, 10, 25, 9),
        columns: undefined,
        isTTY: false,
        stderrIsTTY: false,
        styled: false,
        stopped: () => Promise.resolve(),
      } as never,
    );
    const made = readdirSync(out).map(
      (name): Written => ({
        form: FORMS[extname(name)] ?? 'text',
        name,
        text: readFileSync(join(out, name), 'utf8'),
      }),
    );
    const printed: Written[] =
      told.out === '' ? [] : [{ form: formOf(argv), name: 'stdout', text: told.out }];
    const given = [...argv, ...Object.values(files).map(asText)].join('\n');
    return {
      code,
      err: told.err,
      written: [...printed, ...made],
      notFinite,
      polluted: pollution(),
      console: said,
      given,
    };
  } finally {
    JSON.stringify = stringify;
    Object.assign(console, { warn, error, log });
    for (const name of Object.keys(files)) rmSync(join(folder, name));
    for (const name of readdirSync(out)) rmSync(join(out, name));
  }
}
