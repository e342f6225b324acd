import { readFile } from 'node:fs/promises';
import type { Issue, TextInput } from '@rootreach/core';
import {
  type ColumnMap,
  type IntakeReport,
  needsTakingIn,
  projectionOf,
  readColumnMap,
  type TakeInOptions,
  takeIn,
  textOf,
  Unreadable,
  wordIntake,
} from '@rootreach/intake';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import type { Io } from './io.js';
import { printable } from './print/printable.js';
import { bytesOf, checkStdinOnce, nameOf } from './read-inputs.js';

/** Options of commands that take other people's files. */
export const intakeOptions: OptionSpecs = {
  map: { value: 'FILE', text: 'how to read the columns of a table (see `rootreach convert --help`)' },
  crs: { value: 'EPSG:n', text: 'grid of the positions, where a file does not name it' },
};

/** Files as the core reads them, what was made of those of other formats, and what could not be read. */
export interface Gathered {
  readonly inputs: readonly TextInput[];
  readonly reports: readonly IntakeReport[];
  readonly maps: readonly ColumnMap[];
  readonly issues: readonly Issue[];
}

async function mapFrom(path: string): Promise<ColumnMap | null> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw new CannotDo(`cannot read ${path}: ${(error as Error).message}`);
  }
  const map = readColumnMap(text);
  if ('wrong' in map) throw new CannotDo(`${path} is no column map: ${map.wrong}`);
  return map;
}

/** @param mayBeNew The map may name a file that is still to be written. */
export async function intakeOptionsFrom(args: Args, mayBeNew = false): Promise<TakeInOptions> {
  const path = args.text('map');
  const map = path === undefined ? null : await mapFrom(path);
  if (path !== undefined && map === null && !mayBeNew) {
    throw new CannotDo(`there is no ${path}: \`rootreach convert FILE --map ${path}\` writes one to edit`);
  }
  const crs = args.text('crs');
  if (crs !== undefined && projectionOf(crs) === null) {
    throw new CannotDo(
      `the grid '${crs}' is not known here: give a code such as EPSG:2263, or a PROJ string`,
    );
  }
  return { ...(map === null ? {} : { map }), ...(crs === undefined ? {} : { crs }) };
}

function unreadable(file: string, error: unknown): Issue {
  const reason =
    error instanceof Unreadable || error instanceof RangeError ? error.message : 'the file is damaged';
  return {
    code: 'not-json',
    severity: 'error',
    reason,
    place: { file, index: null, feature: null, path: '' },
  };
}

/** A table of which no row could be used: the report says why. */
export const nothingTaken = (file: string): Issue => ({
  code: 'missing-value',
  severity: 'warning',
  expected: 'any row that can be used',
  place: { file, index: null, feature: null, path: '' },
});

/** Reads the named files; what is no site file is taken in. */
export async function gather(paths: readonly string[], options: TakeInOptions, io: Io): Promise<Gathered> {
  checkStdinOnce(paths);
  const inputs: TextInput[] = [];
  const reports: IntakeReport[] = [];
  const maps: ColumnMap[] = [];
  const issues: Issue[] = [];
  for (const path of paths) {
    const source = { name: nameOf(path), bytes: await bytesOf(path, io) };
    if (options.map === undefined && !needsTakingIn(source)) {
      inputs.push({ name: source.name, text: textOf(source.bytes) });
      continue;
    }
    try {
      for (const { input, report, map } of await takeIn(source, options)) {
        inputs.push(input);
        reports.push(report);
        maps.push(map);
        if (report.features === 0) issues.push(nothingTaken(report.file));
      }
    } catch (error) {
      issues.push(unreadable(source.name, error));
    }
  }
  return { inputs, reports, maps, issues };
}

/** Says in one line each how many rows of other people's files were taken. */
export function sayTaken(reports: readonly IntakeReport[], io: Io): void {
  for (const report of reports) {
    io.stderr.write(`${printable(wordIntake(report))}; \`rootreach check\` says how it was read.\n`);
  }
}
