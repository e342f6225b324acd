import type { Units } from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { asOfFrom, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { type Learning, learnFrom } from '../learning.js';
import { pageFor } from '../page.js';
import { learnPicture } from '../picture/learn-picture.js';
import { reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { learnedJson } from '../print/learned-json.js';
import { learnedReport } from '../print/learned-report.js';
import { sameFile } from '../same-file.js';
import { outputPath, writeOutput } from '../write-output.js';

/** Units asked for, else those that all sites share, else metric. */
function unitsOf(asked: Units | undefined, { sites }: Learning): Units {
  const [first, ...others] = new Set(sites.map(({ units }) => units));
  return asked ?? (others.length === 0 ? first : null) ?? 'metric';
}

function pictureOf(learning: Learning): string {
  if (learning.bySite === null) {
    throw new CannotDo('there is nothing to draw: a back-test needs roots found on at least two sites');
  }
  return learnPicture(learning, learning.bySite);
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const asOf = asOfFrom(args, io);
  const asked = args.choice('units', ['us', 'metric']);
  const out = outputPath(args);
  const drawing = outputPath(args, 'picture');
  if (out !== undefined && drawing !== undefined && sameFile(out, drawing))
    throw new CannotDo('--out and --picture name the same file');
  const learning = await learnFrom(args.files, asOf, io);
  const { model, issues } = learning;
  const units = unitsOf(asked, learning);
  // what could not be placed is listed whole: every lost finding is a lesson lost
  const most = Math.max(10, issues.filter(({ severity }) => severity !== 'notice').length);
  reportIssues(issues, io, units, most);
  if (model.groups.length === 0) {
    throw new CannotDo('there is no dated finding to learn from in what was read');
  }
  const picture = drawing === undefined ? null : pictureOf(learning);
  const text = args.flag('json')
    ? json(learnedJson(learning))
    : learnedReport(learning, out, pageFor(units, undefined, io));
  if (out !== undefined) await writeOutput(json(model), out, io);
  if (picture !== null) await writeOutput(picture, drawing, io);
  io.stdout.write(text);
  return exitCodeFor(issues);
}

const { out: _result, ...commonOptions } = siteOptions;

/** Learns how often roots really get in from what cameras found. */
export const learnCommand: Command = {
  summary: 'learn from camera findings of many sites how often roots really get in',
  usage: 'rootreach learn FILE... [--out MODEL.json] [options]',
  examples: [
    'rootreach learn clients/*.geojson --out model.json --picture learned.svg',
    'rootreach rank yard.geojson --model model.json',
  ],
  options: {
    out: { value: 'MODEL.json', text: 'keep what was learned in a file, for --model of rank and explain' },
    picture: { value: 'FILE.svg', text: 'draw how soon roots would have been found, and the odds' },
    ...commonOptions,
  },
  files: "Each FILE is one whole site in GeoJSON: its trees, lines and findings; '-' reads standard input.",
  run,
};
