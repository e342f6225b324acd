import { type SeasonResult, seasonCsv, seasonIcs, seasonOf } from '@rootreach/core';
import type { Args } from '../args.js';
import { asAsked } from '../as-asked.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { scoringFrom, scoringOptions, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { learnedFrom, modelOption } from '../learned-from.js';
import { pageFor } from '../page.js';
import { plainIssues, reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { seasonTable } from '../print/season-table.js';
import { Progress } from '../progress.js';
import { type SeasonSites, seasonSites, sharedUnits } from '../season-sites.js';
import { intakeOptions } from '../taking-in.js';
import { workDays } from '../work-days.js';
import { outputPath, writeOutput } from '../write-output.js';

type Form = 'json' | 'csv' | 'ics' | 'table';

function formFrom(args: Args): Form {
  const asked = (['json', 'csv', 'ics'] as const).filter((form) => args.flag(form));
  if (asked.length > 1) throw new CannotDo(`choose one of --${asked.join(' and --')}`);
  return asked[0] ?? 'table';
}

async function planned(args: Args, io: Io, { sites }: SeasonSites): Promise<SeasonResult> {
  const scoring = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const [until, days] = [args.text('until'), args.text('days')];
  const looksPerDay = args.number('looks-a-day', { least: 1, most: 100, whole: true });
  return asAsked(() =>
    seasonOf(sites, {
      ...scoring,
      ...(until === undefined ? {} : { until }),
      ...(days === undefined ? {} : { days: workDays(days) }),
      ...(looksPerDay === undefined ? {} : { looksPerDay }),
    }),
  );
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const form = formFrom(args);
  const asked = args.choice('units', ['us', 'metric']);
  const out = outputPath(args);
  const progress = new Progress(io);
  const read = await seasonSites(args, io);
  const units = asked ?? sharedUnits(read.sites);
  progress.step(
    'Planning the season',
    read.sites.reduce((sum, { site }) => sum + site.drains.length, 0),
  );
  const result = await planned(args, io, read);
  const issues = [...read.issues, ...result.issues];
  reportIssues(issues, io, units);
  const texts: Record<Form, () => string> = {
    json: () => json({ ...result, issues: plainIssues(issues) }),
    csv: () => seasonCsv(result, asked ?? 'metric'),
    ics: () => seasonIcs(result, units),
    table: () => seasonTable(result, pageFor(units, out, io)),
  };
  await writeOutput(texts[form](), out, io);
  return exitCodeFor(issues);
}

/** Next looks of many sites as a table, a spreadsheet or a calendar. */
export const seasonCommand: Command = {
  summary: 'next camera looks of many sites, from which way in, how far, on which day',
  usage: 'rootreach season FILE... [options]',
  examples: [
    'rootreach season clients/*.geojson',
    'rootreach season clients/*.geojson --days 2027-04-05..2027-04-16 --ics --out season.ics',
    'rootreach season clients/*.geojson --until 2028-06 --csv --out season.csv',
  ],
  options: {
    until: { value: 'YYYY-MM', text: 'looks that fall due up to this month; a year ahead if not given' },
    days: {
      value: 'DATE,...',
      text: 'working days: dates, and spans such as 2027-04-05..2027-04-16 without their weekends',
    },
    'looks-a-day': {
      value: 'N',
      text: 'pushes of the camera that a crew gets done in a day; 6 if not given',
    },
    ...scoringOptions,
    ...modelOption,
    csv: { value: null, text: 'one row a push for a spreadsheet; metres unless --units us' },
    ics: { value: null, text: 'a calendar file; taking in a later one moves the events of an earlier one' },
    ...siteOptions,
    ...intakeOptions,
  },
  files:
    "Each FILE is one site; files that give their site the same name are read together; '-' reads standard input.",
  run,
};
