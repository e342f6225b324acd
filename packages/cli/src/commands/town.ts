import { mkdir } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import {
  type RankOptions,
  type RankResult,
  scoredTown,
  townByCell,
  townByMaterial,
  townBySpecies,
  townByStreet,
  townLift,
} from '@rootreach/core';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { scoringFrom, scoringOptions, siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { learnedFrom, modelOption } from '../learned-from.js';
import { pageFor, unitsFor } from '../page.js';
import { townLiftPicture } from '../picture/town-lift.js';
import { plainIssues, reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { segmentCsv } from '../print/segment-csv.js';
import { segmentGeojson } from '../print/segment-geojson.js';
import { halfWords, type TownSummary, townReport } from '../print/town-report.js';
import { TABLES, townTables } from '../print/town-tables.js';
import { sameFile } from '../same-file.js';
import { intakeOptions, sayTaken } from '../taking-in.js';
import { lineFeatures } from '../town/line-features.js';
import { openPool } from '../town/pool.js';
import { scoredFrom } from '../town/scored-from.js';
import { segmentRows } from '../town/segment-rows.js';
import { keepInputs, type Parts, writeAllWhole } from '../write-output.js';

/** Rows of the worst list: more than anybody works through in a season. */
const TOP = 1000;
/** Side of a square of the summary: a few streets. */
const CELL_M = 500;

/** Files that are written to the folder asked for. */
const WRITTEN = [
  'worst.csv',
  'worst.geojson',
  'lines.geojson',
  'summary.json',
  'lift.svg',
  'segments.csv',
  ...TABLES,
] as const;

type Files = Partial<Readonly<Record<(typeof WRITTEN)[number], Parts>>>;

/** @throws CannotDo where a file to be written is one of those that are read. */
function keepTown(args: Args): void {
  const [folder, cache] = [args.text('out'), args.text('cache')];
  if (cache !== undefined) keepInputs(args, cache, 'cache');
  if (folder === undefined) return;
  for (const name of WRITTEN) {
    const path = join(folder, name);
    keepInputs(args, path, 'out');
    if (cache !== undefined && sameFile(path, cache))
      throw new CannotDo(`--out and --cache name the same file: ${path}`);
  }
}

async function writeFiles(folder: string, files: Files, io: Io) {
  await mkdir(folder, { recursive: true }).catch((error: Error) => {
    throw new CannotDo(`cannot make the folder ${folder}: ${error.message}`);
  });
  const paths = Object.entries(files).map(([name, parts]) => ({
    path: join(folder, name),
    parts: parts as Parts,
  }));
  await writeAllWhole(paths);
  for (const { path } of paths) io.stderr.write(`Wrote ${path}.\n`);
}

function summaryOf({ result, lift, materials, cells, cellM, streets, species }: TownSummary) {
  const { segments: _, lines: _l, trees: _t, issues: _i, cautions: _c, ...about } = result;
  return {
    ...about,
    lift,
    byMaterial: materials,
    bySquare: cells,
    squareM: cellM,
    ...(streets === null ? {} : { byStreet: streets.parts, linesNamedByTree: streets.linesNamedByTree }),
    bySpecies: species,
  };
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  if (args.files.length === 0) throw new CannotDo('name the files of the town: trees and lines');
  const scoring: RankOptions = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const asked = args.choice('units', ['us', 'metric']);
  const top = args.number('top', { least: 1, whole: true }) ?? TOP;
  const cellM = args.number('square-m', { least: 20, most: 100_000 }) ?? CELL_M;
  const threads =
    args.number('threads', { least: 0, most: 64, whole: true }) ?? Math.min(8, availableParallelism());
  const folder = args.text('out');
  keepTown(args);
  const pool = openPool(threads);
  try {
    const { town, block, issues: found, reports } = await scoredFrom(args, scoring, pool, io);
    await pool.close();
    sayTaken(reports, io);
    const units = unitsFor(asked, { ...town.few, trees: [], drains: [] });
    const scored = scoredTown(town, scoring, block);
    const result: RankResult = scored.result({ top });
    const issues = [...found, ...result.issues];
    const summary: TownSummary = {
      result,
      lift: townLift(scored),
      materials: townByMaterial(scored, town.drains),
      cells: townByCell(scored, town.drains, cellM),
      cellM,
      streets: townByStreet(scored, town),
      species: townBySpecies(town, block),
    };
    reportIssues(issues, io, units);
    io.stdout.write(
      args.flag('json') ? json(summaryOf(summary)) : townReport(summary, pageFor(units, undefined, io)),
    );
    if (folder !== undefined) {
      const files: Files = {
        'worst.csv': segmentCsv(result, units),
        'worst.geojson': segmentGeojson({ ...result, issues: plainIssues(issues) }),
        'lines.geojson': lineFeatures(scored, town.drains),
        'summary.json': json(summaryOf(summary)),
        ...townTables(summary),
        'lift.svg': townLiftPicture(summary.lift, halfWords(summary.lift, units)),
        ...(args.flag('segments') ? { 'segments.csv': segmentRows(scored) } : {}),
      };
      await writeFiles(folder, files, io);
    }
    return exitCodeFor(issues);
  } finally {
    await pool.close();
  }
}

/** A whole town: read in pieces, scored by several threads. */
export const townCommand: Command = {
  summary:
    'score a whole town, several threads at once: worst stretches, sums by square, street, material and species',
  usage: 'rootreach town FILE... [options]',
  examples: [
    'rootreach town trees.geojson lines.geojson --out results/',
    'rootreach town trees.geojson lines.geojson --cache town.cache --segments --out results/',
  ],
  options: {
    out: {
      value: 'FOLDER',
      text: 'write the worst stretches, the lines, the sums (CSV, JSON) and the lift curve there',
    },
    top: { value: 'N', text: `how many of the worst stretches to write in full; ${TOP} if not given` },
    segments: { value: null, text: 'write every stretch to segments.csv as well' },
    'square-m': { value: 'N', text: `side of the squares of the summary, in metres; ${CELL_M} if not given` },
    threads: {
      value: 'N',
      text: 'threads to work with; as many as the machine has (8 at most) if not given',
    },
    cache: { value: 'FILE', text: 'keep what was read and scored there, and start from it the next time' },
    ...scoringOptions,
    ...modelOption,
    ...intakeOptions,
    'as-of': siteOptions['as-of'] as (typeof siteOptions)[string],
    units: siteOptions['units'] as (typeof siteOptions)[string],
    json: { value: null, text: 'print the summary as JSON' },
    help: siteOptions['help'] as (typeof siteOptions)[string],
  },
  run,
};
