import { fileURLToPath } from 'node:url';
import type { Io } from '../../packages/cli/src/io.js';
import { run } from '../../packages/cli/src/run.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Path of a file of this repository. */
export const here = (path: string): string => `${root}${path}`;

export const CORNER_LOT = here('data/sites/corner-lot.geojson');
export const FRENCH_DRAIN = here('data/sites/french-drain-plan.geojson');
export const CAMPUS = here('data/sites/small-campus.geojson');

export interface Called {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command in this process, on the demo sites' own date, as if into a pipe. */
export async function call(argv: readonly string[], world: Partial<Io> = {}): Promise<Called> {
  let out = '';
  let err = '';
  const code = await run(argv, {
    stdout: {
      write: (text) => {
        out += text;
      },
    },
    stderr: {
      write: (text) => {
        err += text;
      },
    },
    stdin: () => Promise.resolve(''),
    now: new Date(2026, 10, 25, 9),
    columns: undefined,
    isTTY: false,
    stderrIsTTY: false,
    styled: false,
    stopped: () => Promise.resolve(),
    ...world,
  });
  return { code, out, err };
}

/** Runs the command on one text given as standard input. */
export const callOn = (text: string, command: string, ...options: string[]): Promise<Called> =>
  call([command, '-', ...options], { stdin: () => Promise.resolve(text) });
