import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { scoringOptions, siteOptions } from '../common-options.js';
import { decidedFrom } from '../decided.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { modelOption } from '../learned-from.js';
import { pageFor } from '../page.js';
import { pricesOption } from '../prices-from.js';
import { decideCsv } from '../print/decide-csv.js';
import { decideTable } from '../print/decide-table.js';
import { plainIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { intakeOptions } from '../taking-in.js';
import { comparisonOptions, movingOptions, stretchOptions, termsOptions } from '../work-asked.js';
import { outputPath, writeOutput } from '../write-output.js';

async function run(args: Args, io: Io): Promise<ExitCode> {
  if (args.flag('json') && args.flag('csv')) throw new CannotDo('choose one of --json and --csv');
  const out = outputPath(args);
  const { result, units, issues, priceIssues } = await decidedFrom(args, io);
  const text = args.flag('json')
    ? json({ ...result, issues: plainIssues(issues), priceIssues })
    : args.flag('csv')
      ? decideCsv(result)
      : decideTable(result, pageFor(units, out, io));
  await writeOutput(text, out, io);
  return priceIssues.length > 0 ? 1 : exitCodeFor(issues);
}

const { years: _horizonOfRanking, ...lengths } = scoringOptions;

/** What can be done about a stretch, and which costs least over the years. */
export const decideCommand: Command = {
  summary:
    'what can be done about a stretch: price now, over the years, odds, what it does to tree and garden',
  usage: 'rootreach decide FILE... [--line ID] [options]',
  examples: [
    'rootreach decide yard.geojson --line tail --prices ours.csv',
    'rootreach decide yard.geojson --line main --between 17,26 --budget 4000',
    'rootreach decide yard.geojson --line tail --from B1 --to O2',
    'rootreach decide yard.geojson --segment main/4 --horizon 10 --assume stoppages-fine=0.3',
  ],
  options: {
    ...stretchOptions,
    ...movingOptions,
    ...pricesOption,
    ...termsOptions,
    ...comparisonOptions,
    ...lengths,
    ...modelOption,
    csv: { value: null, text: 'one row a choice for a spreadsheet' },
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
