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
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { type Scoring, scoringFrom, scoringOptions, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { learnedFrom, modelOption } from '../learned-from.js';
import { namedChoice } from '../named-choice.js';
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

/** What can be done about the stretch. */
function decided(
  site: Site,
  segment: SegmentResult,
  scoring: Scoring,
  prices: GivenPrices | null,
): DecideResult {
  const { asOf, segmentM, learned } = scoring;
  return decide(site, workStretch(site, segment.id, scoring), {
    asOf,
    prices: prices?.list ?? demoPrices(),
    ...(segmentM === undefined ? {} : { segmentM }),
    ...(learned === undefined ? {} : { learned }),
  });
}

/** What is advised, if anything. */
const advised = ({ choices, recommended }: DecideResult): Choice | undefined =>
  choices.find(({ id }) => id === recommended);

async function run(args: Args, io: Io): Promise<ExitCode> {
  const scoring = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const asked = args.choice('units', ['us', 'metric']);
  const language = args.choice('lang', ['en', 'es']) ?? 'en';
  const by = args.text('by');
  const wanted = args.text('segment');
  const [crew, named] = [args.flag('crew'), args.text('choice')];
  if (named !== undefined && !crew) throw new CannotDo('--choice is for the sheet of the crew: add --crew');
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
  const all = decided(site, segment, scoring, prices);
  // an owner is shown no invented prices, but for an invented lot; the crew's sheet shows none at all
  const choices = crew || prices !== null || site.invented ? all : null;
  const choice = named === undefined ? advised(all) : namedChoice(all, named);
  if (choices === null)
    io.stderr.write('No choices with prices on the page: give your list with --prices.\n');
  if (crew && named === undefined && prices === null && !site.invented) {
    io.stderr.write(
      `What to do was weighed with invented prices: ${choice?.id ?? 'nothing'}. Give --prices, or name it with --choice.\n`,
    );
  }
  const common = { site, result, segment, language, units, ...(by === undefined ? {} : { by }) };
  const text = args.flag('json')
    ? json({ schema: result.schema, model: result.model, asOf: result.asOf, segment, odds, decided: choices })
    : crew
      ? crewSheet({ ...common, ...(choice === undefined ? {} : { choice }) })
      : homeownerPage({ ...common, odds, ...(choices === null ? {} : { decided: choices }) });
  await writeOutput(text, out, io);
  return exitCodeFor(issues);
}

/** Writes the owner's page or the crew's sheet about one stretch. */
export const pageCommand: Command = {
  summary: 'one file for the owner of the lot, or for the crew: plan, odds, choices; prints on two sheets',
  usage: 'rootreach page FILE... [--segment ID] --out PAGE.html [options]',
  examples: [
    'rootreach page yard.geojson --out page.html',
    'rootreach page yard.geojson --segment main/4 --lang es --by "our firm" --out page.html',
    'rootreach page yard.geojson --segment main/4 --crew --choice replace-heavier --out crew.html',
  ],
  options: {
    segment: {
      value: 'ID',
      text: 'which, as rank names it, such as main/4, or a line for its worst; the worst of all if not given',
    },
    crew: { value: null, text: "the crew's sheet instead of the owner's page" },
    choice: {
      value: 'ID',
      text: 'what the crew is to do, as decide --json names it; what is advised if not given',
    },
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
