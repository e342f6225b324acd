import {
  type ChoiceId,
  demoPrices,
  offersOfChoices,
  type QuoteResult,
  quoteCsv,
  quoteOf,
  writePriceList,
} from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { scoringOptions, siteOptions } from '../common-options.js';
import { type Decided, decidedFrom } from '../decided.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { modelOption } from '../learned-from.js';
import { namedChoice } from '../named-choice.js';
import { pageFor } from '../page.js';
import { routeIsAsked } from '../planned-route.js';
import { pricesOption } from '../prices-from.js';
import { json } from '../print/json.js';
import { quoteTable } from '../print/quote-table.js';
import { type Quoted, quotedRoutes } from '../quoted-routes.js';
import { intakeOptions } from '../taking-in.js';
import { movingOptions, stretchOptions, termsFrom, termsOptions } from '../work-asked.js';
import { outputPath, writeOutput } from '../write-output.js';

/** The choices asked for by name, checked against those that are possible. */
function chosenFrom(args: Args, { result }: Decided): readonly ChoiceId[] | undefined {
  const text = args.text('choices');
  if (text === undefined) return undefined;
  return text.split(',').map((part) => {
    const { id, quantities } = namedChoice(result, part.trim());
    if (quantities.length === 0) throw new CannotDo(`${id} takes no quote`);
    return id;
  });
}

function quoted(args: Args, decided: Decided): QuoteResult {
  const { result, prices } = decided;
  const offers = offersOfChoices(result, chosenFrom(args, decided));
  if (offers.length === 0)
    throw new CannotDo('there is nothing to quote: no repair is possible within the limits');
  const { site, asOf, cautions } = result;
  return quoteOf(offers, { asOf, site, cautions, prices: prices.list, terms: termsFrom(args) });
}

/** Routes side by side, where no line to repair is named; else repairs, the new route among them. */
async function quoteAsked(args: Args, io: Io): Promise<Quoted> {
  const ofRoutes =
    routeIsAsked(args) && args.text('line') === undefined && args.text('segment') === undefined;
  if (ofRoutes) return quotedRoutes(args, io);
  const decided = await decidedFrom(args, io);
  return { ...decided, result: quoted(args, decided) };
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  if (args.flag('json') && args.flag('csv')) throw new CannotDo('choose one of --json and --csv');
  const out = outputPath(args);
  if (args.flag('list-to-fill-in')) {
    await writeOutput(writePriceList(demoPrices()), out, io);
    return 0;
  }
  const { site, pricesGiven, units, issues, priceIssues, result } = await quoteAsked(args, io);
  if (!pricesGiven && !site.invented) {
    throw new CannotDo(
      "a quote takes your own prices: --prices FILE ('rootreach quote --list-to-fill-in --out prices.csv' writes one to fill in; --prices demo tries it out)",
    );
  }
  const text = args.flag('json')
    ? json(result)
    : args.flag('csv')
      ? quoteCsv(result)
      : quoteTable(result, pageFor(units, out, io));
  await writeOutput(text, out, io);
  return priceIssues.length > 0 || result.options.some(({ missing }) => missing.length > 0)
    ? 1
    : exitCodeFor(issues);
}

const { years: _horizonOfRanking, ...lengths } = scoringOptions;

/** Quantity lists and prices of up to three repairs. */
export const quoteCommand: Command = {
  summary: 'quantity list and price of a repair or a new route, up to three options side by side',
  usage: 'rootreach quote FILE... [--line ID] --prices FILE [options]',
  examples: [
    'rootreach quote --list-to-fill-in --out prices.csv',
    'rootreach quote yard.geojson --line tail --prices prices.csv --margin 15 --tax 8.25 --tax-on materials',
    'rootreach quote yard.geojson --line tail --prices prices.csv --choices replace-heavier,spot-repair --csv --out quote.csv',
    'rootreach quote yard.geojson --from B1 --to O2 --prices prices.csv',
  ],
  options: {
    ...stretchOptions,
    choices: {
      value: 'ID,...',
      text: 'which repairs, as decide --json names them; the three best if not given',
    },
    ...movingOptions,
    ...pricesOption,
    'list-to-fill-in': {
      value: null,
      text: 'write a price list with all codes, its prices invented, and stop',
    },
    ...termsOptions,
    ...lengths,
    ...modelOption,
    csv: { value: null, text: 'one row an item for a spreadsheet' },
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
