import { readSite, type SiteReading } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { readInputs } from './read-inputs.js';

/** Reads the site from the files named, all together. */
export async function readFiles(args: Args, io: Io): Promise<SiteReading> {
  if (args.files.length === 0) {
    throw new CannotDo("name one or more GeoJSON files, or '-' for standard input");
  }
  return readSite(await readInputs(args.files, io));
}
