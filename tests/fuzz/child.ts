import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Case } from './case.js';

const COMMAND = fileURLToPath(new URL('../../packages/cli/dist/main.js', import.meta.url));
/** Of the clock, not of the processor: on a busy machine a start alone can take a minute. */
const HANG_MS = 300_000;
const STACK = /^\s+at .*:\d+/m;

/** What a process of its own said and ended with; a code of null where it had to be ended. */
export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The built command as a process of its own. */
export function inProcess(argv: readonly string[], input: string | Uint8Array = ''): Ended {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...argv], {
    input,
    encoding: 'utf8',
    timeout: HANG_MS,
    maxBuffer: 1 << 28,
  });
  return { code: status, out: stdout, err: stderr };
}

/** The same case by the built command, its site from standard input; what is otherwise than in this process. */
export function faultsAsProcess({ argv, files }: Case, code: number, folder: string): string[] {
  const out = join(folder, 'out');
  mkdirSync(out, { recursive: true });
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  const site = files['site.geojson'];
  const fromInput = site !== undefined && argv.includes('@/site.geojson') && argv[0] !== 'town';
  const words = argv.map((word) =>
    fromInput && word === '@/site.geojson' ? '-' : word.replace('@/', `${folder}/`),
  );
  // the test's day, where a day is asked for
  const dated = argv[0] === 'convert' || argv.some((word) => word.startsWith('--as-of'));
  const ended = inProcess([...words, ...(dated ? [] : ['--as-of=2026-11-25'])], fromInput ? site : '');
  return [
    ...(ended.code === code ? [] : [`as a process it ends with ${ended.code}, not ${code}`]),
    ...(STACK.test(ended.err) ? ['as a process it shows a stack trace'] : []),
  ];
}
