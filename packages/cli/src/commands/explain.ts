import { factorsOf, type LineResult, type Site } from '@rootreach/core';
import type { Args } from '../args.js';
import type { Command, ExitCode } from '../command.js';
import { type Scoring, scoringFrom, scoringOptions, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { learnedFrom, modelOption } from '../learned-from.js';
import { needLines } from '../need-lines.js';
import { pageFor, unitsFor } from '../page.js';
import { type Explained, explanation } from '../print/explanation.js';
import { reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { plainSources, sourcesBehind } from '../print/source-list.js';
import { Progress } from '../progress.js';
import { readFiles } from '../read-files.js';
import { type AskedSegment, askedSegment } from '../segment-asked.js';
import { intakeOptions } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

/** @param all with the numbers of every tree, else of the one that brings most. */
function explain({ result, segment }: AskedSegment, site: Site, scoring: Scoring, all: boolean): Explained {
  const ids = segment.trees.map(({ id }) => id);
  const factors = factorsOf(site, scoring, segment.id, all ? ids : ids.slice(0, 1));
  return {
    site: result.site,
    asOf: result.asOf,
    horizonYears: result.horizonYears,
    segments: result.totals.segments,
    segment,
    line: result.lines.find(({ drainId }) => drainId === segment.drainId) as LineResult,
    trees: result.trees.filter(({ id }) => ids.includes(id)),
    factors,
    sources: sourcesBehind(factors),
    cautions: result.cautions,
  };
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const scoring = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const asked = args.choice('units', ['us', 'metric']);
  const wanted = args.text('segment');
  const out = outputPath(args);
  const progress = new Progress(io);
  const { site, issues: found } = await readFiles(args, io);
  const units = unitsFor(asked, site);
  needLines(site, found, io, units);
  progress.step('Scoring', site.trees.length + site.drains.length);
  const answer = askedSegment(site, scoring, wanted);
  const issues = [...found, ...answer.result.issues];
  reportIssues(issues, io, units);
  const { schema, model } = answer.result;
  const explained = explain(answer, site, scoring, args.flag('json'));
  const { segments: _all, ...parts } = explained;
  const text = args.flag('json')
    ? json({ schema, model, ...parts, sources: plainSources(explained.sources) })
    : explanation(explained, pageFor(units, out, io));
  await writeOutput(text, out, io);
  return exitCodeFor(issues);
}

/** Says why one segment stands where it does. */
export const explainCommand: Command = {
  summary: 'one stretch: why there, which trees, what would change it, where that is known from',
  usage: 'rootreach explain FILE... [--segment ID] [options]',
  examples: ['rootreach explain yard.geojson --segment main/4', 'rootreach explain yard.geojson'],
  options: {
    segment: {
      value: 'ID',
      text: 'which, as rank names it, such as main/4, or a line for its worst; the worst of all if not given',
    },
    ...scoringOptions,
    ...modelOption,
    ...siteOptions,
    ...intakeOptions,
  },
  run,
};
