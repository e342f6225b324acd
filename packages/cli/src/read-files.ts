import { readSite, type SiteReading } from '@rootreach/core';
import type { IntakeReport } from '@rootreach/intake';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { gather, intakeOptionsFrom, sayTaken } from './taking-in.js';

/** A site, and what was made of files in other formats. */
export interface FilesReading extends SiteReading {
  readonly reports: readonly IntakeReport[];
}

/** Reads the site from the files named, all together; says on stderr what was taken in. */
export async function readFiles(args: Args, io: Io): Promise<FilesReading> {
  if (args.files.length === 0) {
    throw new CannotDo(
      "name one or more site files (GeoJSON, CSV, zipped shapefile ...), or '-' for standard input",
    );
  }
  const { inputs, reports, issues } = await gather(args.files, await intakeOptionsFrom(args), io);
  sayTaken(reports, io);
  const reading = readSite(inputs);
  return { ...reading, issues: [...issues, ...reading.issues], reports };
}
