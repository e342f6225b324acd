import { guessMap } from '../columns/guess-map.js';
import { isArchive } from '../formats/archive.js';
import { columnsOf, rowOfFeature } from '../formats/features.js';
import { type SourceFile, textOf } from '../formats/open-table.js';

/** Endings of formats that the core does not read itself. */
const FOREIGN = /\.(?:csv|tsv|txt|kml|kmz|gpx|zip|shp|dbf|ndjson|jsonl|geojsonl|geojsons)$/i;
/** Features looked at to tell whose file it is. */
const LOOKED_AT = 200;
/** Names of the site file, as far as they could be taken for columns of another. */
const OWN_NAMES =
  /^(?:id|name|type|species|condition|planted|material|installed|height_(?:m|ft)|size_(?:mm|in)|(?:dbh|girth)_(?:cm|in|m)|canopy_radius_(?:m|ft))$/;

/** Whether a text is a site file already: GeoJSON whose features say what they are. */
export function isSiteFile(text: string): boolean {
  if (!/^[\s\uFEFF]*\{/.test(text.slice(0, 200))) return false;
  if (/"rootreach"\s*:/.test(text.slice(0, 5000))) return true;
  return /"kind"\s*:\s*"(?:tree|drain|fitting|finding|obstacle|barrier|level)"/.test(text.slice(0, 200_000));
}

/** GeoJSON whose columns are named otherwise than in a site file. */
function hasForeignColumns(text: string): boolean {
  let root: { features?: unknown };
  try {
    root = JSON.parse(text.replace('\uFEFF', ''));
  } catch {
    return false;
  }
  if (!Array.isArray(root?.features)) return false;
  const rows = root.features
    .slice(0, LOOKED_AT)
    .map(rowOfFeature)
    .filter((row) => row !== null);
  const { columns, crs } = guessMap(rows, columnsOf(rows), null).map;
  const used = Object.values(columns).map(({ column }) => column);
  return crs !== null || used.some((column) => !OWN_NAMES.test(column));
}

/** Whether a file has to be taken in before the core can read it. */
export function needsTakingIn({ name, bytes }: SourceFile): boolean {
  if (isArchive(bytes) || FOREIGN.test(name)) return true;
  const text = textOf(bytes);
  return !isSiteFile(text) && /^[\s\uFEFF]*\{/.test(text.slice(0, 200)) && hasForeignColumns(text);
}
