import { readSite, type TextInput } from '@rootreach/core';
import type { Feature } from 'geojson';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { siteOptions } from '../common-options.js';
import { exitCodeFor } from '../exit-code.js';
import type { Io } from '../io.js';
import { pageFor } from '../page.js';
import { intakeLines } from '../print/intake-lines.js';
import { reportIssues } from '../print/issues.js';
import { json } from '../print/json.js';
import { gather, intakeOptions, intakeOptionsFrom } from '../taking-in.js';
import { outputPath, writeOutput } from '../write-output.js';

/** Features of a text that was taken in, or was a site file before. */
function featuresOf(text: string): Feature[] {
  const root = JSON.parse(text) as { type?: unknown; features?: unknown } | null;
  if (Array.isArray(root?.features)) return root.features as Feature[];
  return root?.type === 'Feature' ? [root as Feature] : [];
}

/** All that was taken in as one site file. */
function siteFile(inputs: readonly TextInput[]): string {
  const lines = inputs.flatMap(({ text }) => featuresOf(text)).map((feature) => JSON.stringify(feature));
  return `{"type":"FeatureCollection","features":[\n${lines.join(',\n')}\n]}\n`;
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  if (args.files.length === 0) throw new CannotDo('name one or more files to convert');
  const out = outputPath(args);
  const mapPath = outputPath(args, 'map');
  const options = await intakeOptionsFrom(args, true);
  const gathered = await gather(args.files, options, io);
  const { reports, maps } = gathered;
  const unread = gathered.inputs.flatMap((input) =>
    readSite([input]).issues.filter(({ code }) => code === 'not-json'),
  );
  const issues = [...gathered.issues, ...unread];
  reportIssues(issues, io, 'metric');
  // an empty file over one that was good would be a loss
  if (reports.length === 0)
    throw new CannotDo('there is nothing to convert: no table, and no file of another kind');
  const inputs = gathered.inputs.filter(({ name }) => unread.every(({ place }) => place.file !== name));
  if (args.flag('json')) {
    await writeOutput(
      json({ schema: 1, files: reports.map((report, i) => ({ ...report, map: maps[i] })) }),
      out,
      io,
    );
  } else {
    for (const report of reports)
      io.stderr.write(`${intakeLines(report, pageFor('metric', undefined, io).width).join('\n')}\n\n`);
    await writeOutput(siteFile(inputs), out, io);
  }
  if (mapPath !== undefined && options.map === undefined) {
    if (maps.length !== 1)
      throw new CannotDo('--map writes the columns of one table: convert one file at a time');
    await writeOutput(json(maps[0]), mapPath, io);
  }
  return exitCodeFor(issues);
}

/** Other people's files to a site file. */
export const convertCommand: Command = {
  summary: 'turn a table, shapefile, KML or GPX into a site file, and say what became of every row',
  usage: 'rootreach convert FILE... [options]',
  examples: [
    'rootreach convert street-trees.csv --out trees.geojson',
    'rootreach convert street-trees.csv --map columns.json --out trees.geojson',
    'rootreach convert pipes.zip --crs EPSG:2263 --out lines.geojson',
  ],
  files: 'CSV, GeoJSON, one feature a line, zipped shapefile, KML, KMZ or GPX',
  options: {
    map: {
      value: 'FILE',
      text: 'how to read the columns; where there is no such file, the guess is written there to be edited',
    },
    crs: intakeOptions['crs'] as (typeof intakeOptions)[string],
    json: { value: null, text: 'print what became of the rows as JSON instead of the site file' },
    out: siteOptions['out'] as (typeof siteOptions)[string],
    help: siteOptions['help'] as (typeof siteOptions)[string],
  },
  run,
};
