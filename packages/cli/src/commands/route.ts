import { demoPrices, planRoute, planSharedRoute } from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { asOfFrom, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { pageFor, unitsFor } from '../page.js';
import { pricesFrom, pricesOption } from '../prices-from.js';
import { plainIssues, reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { reportPriceIssues } from '../print/price-issues.js';
import { routeGeojson, sharedGeojson } from '../print/route-geojson.js';
import { sharedRouteText } from '../print/route-shared.js';
import { routeTable } from '../print/route-table.js';
import { Progress } from '../progress.js';
import { readFiles } from '../read-files.js';
import { routeAsked, routeOptions } from '../route-asked.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

/** Nodes of a lot's lattice: a search takes longer than reading. */
const MUCH = 20_000;

type Form = 'json' | 'geojson' | 'text';

function formFrom(args: Args): Form {
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
  const { request, sources } = routeAsked(args, site, asOf, prices?.list ?? null);
  progress.step('Looking for ways', MUCH);
  const page = pageFor(units, out, io);
  const { dated } = prices?.list ?? demoPrices();
  const plain = plainIssues(issues);
  let text: string;
  let none: boolean;
  if (sources.length > 1) {
    const { via: _via, from: _from, ...rest } = request;
    const from = sources.map((place) => ({ place, servesM2: 0 }));
    const result = planSharedRoute(site, { ...rest, from });
    none = result.none !== null;
    if (form === 'json') text = json({ ...result, issues: plain });
    else text = form === 'geojson' ? sharedGeojson(result) : sharedRouteText(result, site, dated, page);
  } else {
    const result = planRoute(site, request);
    none = result.none !== null;
    if (form === 'json') text = json({ ...result, issues: plain });
    else
      text =
        form === 'geojson' ? routeGeojson(result) : routeTable(result, site, dated, request.pipe.sizeM, page);
  }
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
  ],
  options: {
    ...routeOptions,
    ...pricesOption,
    years: { value: 'N', text: 'years over which root repairs are counted; 25 if not given' },
    geojson: { value: null, text: 'one line feature a way, for a map program' },
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
