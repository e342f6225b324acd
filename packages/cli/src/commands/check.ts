import { assumptionsOf, rank } from '@rootreach/core';
import type { Args } from '../args.js';
import type { Command, ExitCode } from '../command.js';
import { asOfFrom, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { pageFor, unitsFor } from '../page.js';
import { checkReport } from '../print/check-report.js';
import { plainIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { Progress } from '../progress.js';
import { readFiles } from '../read-files.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

async function run(args: Args, io: Io): Promise<ExitCode> {
  const asOf = asOfFrom(args, io);
  const asked = args.choice('units', ['us', 'metric']);
  const out = outputPath(args);
  const progress = new Progress(io);
  const reading = await readFiles(args, io);
  const { site, counts } = reading;
  progress.step('Laying out the lines', site.trees.length + site.drains.length);
  // nothing is reported of the segments: only what laying out lines and findings brings up
  const issues = [...reading.issues, ...rank(site, { asOf, top: 0 }).issues];
  const assumed = assumptionsOf(site, { asOf });
  const text = args.flag('json')
    ? json({ schema: 1, ...counts, issues: plainIssues(issues), assumed, takenIn: reading.reports })
    : checkReport(reading, issues, assumed, pageFor(unitsFor(asked, site), out, io));
  await writeOutput(text, out, io);
  const unreadable = issues.filter(({ code }) => code === 'not-json').length;
  return unreadable === args.files.length ? 2 : exitCodeFor(issues);
}

/** Reads and validates. */
export const checkCommand: Command = {
  summary: 'read the files, say what is wrong with them and what has to be assumed',
  usage: 'rootreach check FILE... [options]',
  examples: ['rootreach check yard.geojson', 'rootreach check trees.geojson lines.geojson --json'],
  options: { ...siteOptions, ...intakeOptions },
  run,
};
