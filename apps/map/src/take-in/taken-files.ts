import { signal } from '@preact/signals';
import type { ColumnMap, IntakeReport, TakeInOptions } from '@rootreach/intake';
import type { Input, InputFile } from '../tasks.js';

/** One table that was taken in: what was made of it, and the file, to be read again another way. */
export interface TakenFile {
  readonly file: File;
  readonly report: IntakeReport;
  readonly map: ColumnMap;
  readonly columns: readonly string[];
}

/** Tables that a site was made of, and the site files that came beside them. */
export interface Tables {
  readonly taken: readonly TakenFile[];
  readonly beside: readonly Input[];
}

/** Tables of the site that is open; null for one that came as a site file. */
export const tables = signal<Tables | null>(null);

/** Endings of formats that the page does not read itself. */
const FOREIGN = /\.(?:csv|tsv|txt|kml|kmz|gpx|zip|shp|dbf|ndjson|jsonl|geojsonl|geojsons)$/i;

export const isForeign = ({ name }: File): boolean => FOREIGN.test(name);

/** Makes site files of tables; each may be read as a map of its columns says. */
export async function takeFiles(
  files: readonly File[],
  options: ReadonlyMap<string, TakeInOptions> = new Map(),
): Promise<{ readonly inputs: readonly InputFile[]; readonly taken: readonly TakenFile[] }> {
  const { columnsIn, takeIn } = await import('@rootreach/intake');
  const inputs: InputFile[] = [];
  const taken: TakenFile[] = [];
  for (const file of files) {
    const source = { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
    const columns = await columnsIn(source);
    for (const { input, report, map } of await takeIn(source, options.get(file.name))) {
      inputs.push(input);
      taken.push({ file, report, map, columns });
    }
  }
  return { inputs, taken };
}
