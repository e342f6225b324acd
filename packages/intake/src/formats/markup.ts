import { gpx, kml } from '@tmcw/togeojson';
import type { RawTable } from '../take/raw-table.js';
import { featureTable } from './features.js';

/** More elements inside each other than any map has. */
const MOST_BYTES = 200_000_000;

async function parse(text: string): Promise<Document> {
  if (text.length > MOST_BYTES) throw new RangeError('the file is too large for this format');
  if (/<!ENTITY/i.test(text.slice(0, 10_000))) throw new RangeError('it defines entities of its own');
  if (typeof DOMParser !== 'undefined') return new DOMParser().parseFromString(text, 'application/xml');
  const { DOMParser: Parser } = await import('@xmldom/xmldom');
  return new Parser({ onError: () => undefined }).parseFromString(text, 'text/xml') as unknown as Document;
}

/** Placemarks of KML. */
export async function kmlTable(file: string, text: string): Promise<RawTable> {
  return featureTable(file, 'kml', kml(await parse(text)));
}

/** Waypoints and tracks of GPX. */
export async function gpxTable(file: string, text: string): Promise<RawTable> {
  return featureTable(file, 'gpx', gpx(await parse(text)));
}
