import { textOf } from '../formats/open-table.js';
import { looksLikeAsciiGrid, readAsciiGrid } from './ascii-grid.js';
import { type ElevationOptions, type ElevationReading, faulty } from './elevation-reading.js';
import { looksLikeTiff, readGeoTiff } from './geotiff-grid.js';

/**
 * A grid of ground heights from a GeoTIFF or an ASCII grid; what is wrong with it comes back as a value.
 * @param bytes the whole file.
 * @param options what the file does not say itself.
 */
export async function readElevation(
  bytes: Uint8Array,
  options: ElevationOptions = {},
): Promise<ElevationReading> {
  if (looksLikeTiff(bytes)) return readGeoTiff(bytes, options);
  const text = textOf(bytes);
  return looksLikeAsciiGrid(text)
    ? readAsciiGrid(text, options)
    : faulty('not-a-grid', text.slice(0, 20).trim());
}
