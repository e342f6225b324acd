import {
  type Choice,
  type DecideResult,
  decide,
  demoPrices,
  oddsOverYears,
  type RankResult,
  rank,
  type SegmentResult,
  type Site,
  workStretch,
} from '@rootreach/core';
import { crewSheet, homeownerPage } from '@rootreach/report';
import type { Args } from '../args.js';
import type { Command, ExitCode } from '../command.js';
import { type Scoring, scoringFrom, scoringOptions, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { learnedFrom, modelOption } from '../learned-from.js';
import { needLines } from '../need-lines.js';
import { unitsFor } from '../page.js';
import { photosBeside } from '../photos-beside.js';
import { type GivenPrices, pricesFrom, pricesOption } from '../prices-from.js';
import { reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { printable } from '../print/printable.js';
import { Progress } from '../progress.js';
import { readFiles } from '../read-files.js';
import { askedSegment } from '../segment-asked.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

/** Stretches drawn on the plan: more would be a map of a town. */
const MOST_DRAWN = 3000;

/** The ranking that the plan shows, with the stretch in question among it however calm it is. */
function drawnResult(site: Site, scoring: Scoring, own: RankResult, segment: SegmentResult): RankResult {
  const all = rank(site, { ...scoring, top: MOST_DRAWN });
  const add = <T>(list: readonly T[], more: readonly T[], key: (one: T) => string): T[] => [
    ...list,
    ...more.filter((one) => list.every((other) => key(other) !== key(one))),
  ];
  return {
    ...all,
    segments: add(all.segments, [segment], ({ id }) => id),
    lines: add(all.lines, own.lines, ({ drainId }) => drainId),
    trees: add(all.trees, own.trees, ({ id }) => id),
  };
}

/**
 * What can be done about the stretch. Without a price list there are no prices to show an owner, and an invented one
 * serves an invented site alone.
 */
function decided(
  site: Site,
  segment: SegmentResult,
  scoring: Scoring,
  prices: GivenPrices | null,
): DecideResult | null {
  if (prices === null && !site.invented) return null;
  const { asOf, segmentM, learned } = scoring;
  return decide(site, workStretch(site, segment.id, scoring), {
    asOf,
    prices: prices?.list ?? demoPrices(),
    ...(segmentM === undefined ? {} : { segmentM }),
    ...(learned === undefined ? {} : { learned }),
  });
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const scoring = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const asked = args.choice('units', ['us', 'metric']);
  const language = args.choice('lang', ['en', 'es']) ?? 'en';
  const by = args.text('by');
  const wanted = args.text('segment');
  const prices = await pricesFrom(args, io);
  const out = outputPath(args);
  const progress = new Progress(io);
  const { site: read, issues: found } = await readFiles(args, io);
  const units = unitsFor(asked, read);
  needLines(read, found, io, units);
  const { site, left } = await photosBeside(read);
  for (const name of left)
    io.stderr.write(`Photo ${printable(name)} was not taken: no image beside the file.\n`);
  progress.step('Scoring', site.trees.length + site.drains.length);
  const { result: own, segment } = askedSegment(site, scoring, wanted);
  const result = drawnResult(site, scoring, own, segment);
  const issues = [...found, ...result.issues];
  reportIssues(issues, io, units);
  const odds = oddsOverYears(site, segment.id, scoring) ?? [];
  const choices = decided(site, segment, scoring, prices);
  if (choices === null)
    io.stderr.write('No choices with prices on the page: give your list with --prices.\n');
  const common = { site, result, segment, language, units, ...(by === undefined ? {} : { by }) };
  const text = args.flag('json')
    ? json({ schema: result.schema, model: result.model, asOf: result.asOf, segment, odds, decided: choices })
    : args.flag('crew')
      ? crewSheet({ ...common, ...chosenOf(choices) })
      : homeownerPage({ ...common, odds, ...(choices === null ? {} : { decided: choices }) });
  await writeOutput(text, out, io);
  return exitCodeFor(issues);
}

/** What is advised, for the crew that does it. */
function chosenOf(choices: DecideResult | null): { readonly choice?: Choice } {
  const choice = choices?.choices.find(({ id }) => id === choices.recommended);
  return choice === undefined ? {} : { choice };
}

/** Writes the owner's page or the crew's sheet about one stretch. */
export const pageCommand: Command = {
  summary: 'one file for the owner of the lot, or for the crew: plan, odds, choices; prints on two sheets',
  usage: 'rootreach page FILE... [--segment ID] --out PAGE.html [options]',
  examples: [
    'rootreach page yard.geojson --out page.html',
    'rootreach page yard.geojson --segment main/4 --lang es --by "our firm" --out page.html',
    'rootreach page yard.geojson --segment main/4 --crew --out crew.html',
  ],
  options: {
    segment: { value: 'ID', text: 'which, as rank names it, such as main/4; the worst one if not given' },
    crew: { value: null, text: "the crew's sheet instead of the owner's page" },
    lang: { value: 'en|es', text: 'English or Spanish; English if not given' },
    by: { value: 'TEXT', text: 'whose estimate it is; a line to sign on if not given' },
    ...pricesOption,
    ...scoringOptions,
    ...modelOption,
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
