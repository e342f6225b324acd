import { rank } from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { scoringFrom, scoringOptions, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { learnedFrom, modelOption } from '../learned-from.js';
import { needLines } from '../need-lines.js';
import { pageFor, unitsFor } from '../page.js';
import { plainIssues, reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { rankTable } from '../print/rank-table.js';
import { segmentCsv } from '../print/segment-csv.js';
import { segmentGeojson } from '../print/segment-geojson.js';
import { Progress } from '../progress.js';
import { readFiles } from '../read-files.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

/** Segments that fit a screen or two and a tired head. */
const TABLE_TOP = 15;

type Form = 'json' | 'csv' | 'geojson' | 'table';

function formFrom(args: Args): Form {
  const asked = (['json', 'csv', 'geojson'] as const).filter((form) => args.flag(form));
  if (asked.length > 1) throw new CannotDo(`choose one of --${asked.join(' and --')}`);
  return asked[0] ?? 'table';
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const form = formFrom(args);
  const scoring = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const asked = args.choice('units', ['us', 'metric']);
  const top = args.number('top', { least: 1, whole: true }) ?? (form === 'table' ? TABLE_TOP : undefined);
  const out = outputPath(args);
  const progress = new Progress(io);
  const { site, issues: found } = await readFiles(args, io);
  const units = unitsFor(asked, site);
  needLines(site, found, io, units);
  progress.step('Scoring', site.trees.length + site.drains.length);
  const result = rank(site, { ...scoring, ...(top === undefined ? {} : { top }) });
  const issues = [...found, ...result.issues];
  reportIssues(issues, io, units);
  const forScripts = { ...result, issues: plainIssues(issues) };
  const texts: Record<Form, () => string> = {
    json: () => json(forScripts),
    geojson: () => segmentGeojson(forScripts),
    csv: () => segmentCsv(result, asked ?? 'metric'),
    table: () => rankTable(result, pageFor(units, out, io)),
  };
  await writeOutput(texts[form](), out, io);
  return exitCodeFor(issues);
}

/** Scores every segment, worst first. */
export const rankCommand: Command = {
  summary: 'score every stretch of line, worst first',
  usage: 'rootreach rank FILE... [options]',
  examples: [
    'rootreach rank yard.geojson',
    'rootreach rank trees.geojson lines.geojson --csv --out worst.csv',
    'rootreach rank yard.geojson --as-of 2031 --years 5 --units us',
  ],
  options: {
    top: { value: 'N', text: `how many to list; ${TABLE_TOP} in the table, else all` },
    ...scoringOptions,
    ...modelOption,
    csv: { value: null, text: 'one row a segment for a spreadsheet; metres unless --units us' },
    geojson: { value: null, text: 'one line feature a segment, for a map program' },
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
