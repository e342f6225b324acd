import { demoPrices } from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { asOfFrom, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import { groundFrom, groundOptions } from '../ground-from.js';
import type { Io } from '../io.js';
import { pageFor, unitsFor } from '../page.js';
import { pricesFrom, pricesOption } from '../prices-from.js';
import { plainIssues, reportIssues } from '../print/issues.js';
import { reportPriceIssues } from '../print/price-issues.js';
import { Progress } from '../progress.js';
import { rainOptions } from '../rain-from.js';
import { readFiles } from '../read-files.js';
import { type RouteForm, type RouteQuestion, sharedAnswer, singleAnswer } from '../route-answer.js';
import { routeAsked, routeOptions } from '../route-asked.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

/** Nodes of a lot's lattice: a search takes longer than reading. */
const MUCH = 20_000;

function formFrom(args: Args): RouteForm {
  if (args.flag('crew') && args.flag('geojson')) throw new CannotDo('choose one of --crew and --geojson');
  if (args.text('choose') !== undefined && !args.flag('crew'))
    throw new CannotDo('--choose goes with --crew');
  if (args.flag('json') && args.flag('geojson')) throw new CannotDo('choose one of --json and --geojson');
  return args.flag('json') ? 'json' : args.flag('geojson') ? 'geojson' : 'text';
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const form = formFrom(args);
  const asOf = asOfFrom(args, io);
  const asked = args.choice('units', ['us', 'metric']);
  const out = outputPath(args);
  const prices = await pricesFrom(args, io);
  const progress = new Progress(io);
  const { site, issues } = await readFiles(args, io);
  const units = unitsFor(asked, site);
  reportIssues(issues, io, units);
  if (prices !== null) reportPriceIssues(prices.issues, args.text('prices') ?? '', io);
  const planned = routeAsked(args, site, asOf, prices?.list ?? null);
  const ground = await groundFrom(args, site, [...planned.sources, ...planned.request.to], io);
  const request = ground === null ? planned.request : { ...planned.request, grid: ground.grid };
  progress.step('Looking for ways', MUCH);
  const question: RouteQuestion = {
    args,
    site,
    asked: { ...planned, request },
    ground,
    dated: (prices?.list ?? demoPrices()).dated,
    form,
    page: pageFor(units, out, io),
    issues: plainIssues(issues),
  };
  const { text, none } = planned.sources.length > 1 ? sharedAnswer(question) : singleAnswer(question);
  await writeOutput(text, out, io);
  return none || (prices?.issues.length ?? 0) > 0 ? 1 : exitCodeFor(issues);
}

/** Ways for a new line, side by side. */
export const routeCommand: Command = {
  summary: 'ways for a new line around the trees, with fall, side by side',
  usage: 'rootreach route FILE... --from ID --to ID [options]',
  examples: [
    'rootreach route yard.geojson --from downspout-nw --to outlet --prices ours.csv',
    'rootreach route yard.geojson --from D1 --from D2 --to O1 --pipe corrugated --size-in 4',
    'rootreach route yard.geojson --from D1 --to=-71.2,40.6 --cover 18in --geojson --out ways.geojson',
    'rootreach route yard.geojson --from D1 --from D2 --to O1 --serves 600ft2 --serves 450ft2 --rain-in-h 6',
    'rootreach route yard.geojson --from D1 --to O1 --ground heights.asc --crs EPSG:32618 --ground-unit m',
    'rootreach route yard.geojson --from D1 --to O1 --crew --choose b --out sheet.txt',
  ],
  options: {
    ...routeOptions,
    ...pricesOption,
    years: { value: 'N', text: 'years over which root repairs are counted; 25 if not given' },
    serves: {
      value: 'AREA',
      many: true,
      text: 'what drains to each --from, in the same order: 110 (m2) or 1200ft2; else as the site says of its line',
    },
    ...rainOptions,
    ...groundOptions,
    crew: { value: null, text: 'the tree protection sheet for the crew, of the best way over the years' },
    choose: { value: 'ID', text: 'with --crew: of this way instead, by its letter: a, b ...' },
    geojson: { value: null, text: 'one line feature a way, for a map program' },
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
