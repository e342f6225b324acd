import { runoffTable, type SurfaceKey, waterOf } from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { asOfFrom, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { needLines } from '../need-lines.js';
import { pageFor, unitsFor } from '../page.js';
import { plainIssues, reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { waterCsv } from '../print/water-csv.js';
import { waterTable } from '../print/water-table.js';
import { Progress } from '../progress.js';
import { rainFrom, rainOptions } from '../rain-from.js';
import { readFiles } from '../read-files.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

const surfaces = runoffTable.map(({ key }) => key);

function optionsFrom(args: Args, io: Io) {
  const rainMmPerHour = rainFrom(args);
  const percent = args.number('slope', { least: 0.01, most: 100 });
  const surface = args.choice<SurfaceKey>('surface', surfaces);
  return {
    asOf: asOfFrom(args, io),
    ...(rainMmPerHour === undefined ? {} : { rainMmPerHour }),
    ...(percent === undefined ? {} : { slopeRatio: percent / 100 }),
    ...(surface === undefined ? {} : { surface }),
  };
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  if (args.flag('json') && args.flag('csv')) throw new CannotDo('choose one of --json and --csv');
  const options = optionsFrom(args, io);
  const asked = args.choice('units', ['us', 'metric']);
  const out = outputPath(args);
  const progress = new Progress(io);
  const { site, issues: found } = await readFiles(args, io);
  const units = unitsFor(asked, site);
  needLines(site, found, io, units);
  progress.step('Following the water', site.drains.length);
  const result = waterOf(site, options);
  const issues = [...found, ...result.issues];
  reportIssues(issues, io, units);
  const text = args.flag('json')
    ? json({ ...result, issues: plainIssues(issues) })
    : args.flag('csv')
      ? waterCsv(result, asked ?? 'metric')
      : waterTable(result, pageFor(units, out, io));
  await writeOutput(text, out, io);
  return exitCodeFor(issues);
}

/** What every line carries, and what the rain brings. */
export const waterCommand: Command = {
  summary: 'what each line carries, clear and with roots, against the rain it has to carry',
  usage: 'rootreach water FILE... [options]',
  examples: [
    'rootreach water yard.geojson --rain-in-h 4.2',
    'rootreach water lines.geojson --rain-mm-h 110 --slope 1 --csv --out water.csv',
  ],
  options: {
    ...rainOptions,
    slope: { value: 'PERCENT', text: 'fall of lines whose depths and levels do not tell it' },
    surface: {
      value: 'KIND',
      text: 'what the rain falls on: roof, asphalt, lawn-heavy-flat and so on; roof-or-paving if not given',
    },
    csv: { value: null, text: 'one row a line for a spreadsheet; metric unless --units us' },
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
