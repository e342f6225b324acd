import type { GeoTIFFImage } from 'geotiff';
import {
  type ElevationOptions,
  type ElevationReading,
  faulty,
  type HeightUnit,
} from './elevation-reading.js';
import { placeGrid, type RawGrid } from './place-grid.js';

/** Units of length in the EPSG dataset, as GeoTIFF writes them. */
const UNITS: Readonly<Record<number, HeightUnit>> = { 9001: 'm', 9002: 'ft', 9003: 'us-ft' };
/** Raster type: a cell's coordinates are those of its middle (GeoTIFF 1.1, section 7.1.3). */
const PIXEL_IS_POINT = 2;
/** Code for a reference system that the file itself spells out. */
const USER_DEFINED = 32767;

/** Whether bytes begin as TIFF does: `II` or `MM`, then 42, or 43 for large files. */
export function looksLikeTiff(bytes: Uint8Array): boolean {
  const [a, b, c, d] = bytes;
  const little = a === 0x49 && b === 0x49 && (c === 42 || c === 43) && d === 0;
  const big = a === 0x4d && b === 0x4d && c === 0 && (d === 42 || d === 43);
  return little || big;
}

type Place = (column: number, row: number) => readonly [number, number];

/** From columns and rows to coordinates: a corner and a step, or a whole matrix. Null where the file has neither. */
function placeOf(image: GeoTIFFImage, atMiddle: boolean): Place | null {
  const shift = atMiddle ? 0 : 0.5;
  const directory = image.getFileDirectory();
  const matrix = directory.getValue('ModelTransformation') as ArrayLike<number> | undefined;
  if (matrix && matrix.length >= 8) {
    const [a, b, , d, e, f, , h] = Array.from(matrix) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    return (column, row) => {
      const [u, v] = [column + shift, row + shift];
      return [a * u + b * v + d, e * u + f * v + h];
    };
  }
  const tie = directory.getValue('ModelTiepoint') as ArrayLike<number> | undefined;
  const scale = directory.getValue('ModelPixelScale') as ArrayLike<number> | undefined;
  if (!tie || tie.length < 6 || !scale || scale.length < 2) return null;
  const [i, j, , x, y] = Array.from(tie) as [number, number, number, number, number];
  const [sx, sy] = Array.from(scale) as [number, number];
  return (column, row) => [x + (column + shift - i) * sx, y - (row + shift - j) * sy];
}

function referenceOf(keys: Readonly<Record<string, unknown>>): string | null {
  for (const key of ['ProjectedCSTypeGeoKey', 'GeographicTypeGeoKey']) {
    const code = keys[key];
    if (typeof code === 'number' && code > 0 && code !== USER_DEFINED) return `EPSG:${code}`;
  }
  return null;
}

async function rawOf(image: GeoTIFFImage): Promise<RawGrid | null> {
  const keys: Readonly<Record<string, unknown>> = image.getGeoKeys() ?? {};
  const place = placeOf(image, keys.GTRasterTypeGeoKey === PIXEL_IS_POINT);
  if (place === null) return null;
  return {
    columns: image.getWidth(),
    rows: image.getHeight(),
    placeOf: place,
    reference: referenceOf(keys),
    heightUnit: UNITS[Number(keys.VerticalUnitsGeoKey)] ?? null,
    format: 'geotiff',
  };
}

/**
 * The first band of a GeoTIFF as ground heights, in degrees or any grid whose EPSG code is known here. The reader of
 * the format is loaded only when a file is.
 */
export async function readGeoTiff(
  bytes: Uint8Array,
  options: ElevationOptions = {},
): Promise<ElevationReading> {
  if (!looksLikeTiff(bytes)) return faulty('not-a-grid', `${bytes.length} bytes`);
  try {
    const { fromArrayBuffer } = await import('geotiff');
    const buffer = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
    const image = await (await fromArrayBuffer(buffer)).getImage();
    const raw = await rawOf(image);
    if (raw === null) return faulty('no-reference', 'a picture without a place');
    const none = image.getGDALNoData();
    return await placeGrid(raw, options, async ({ left, top, right, bottom }) => {
      const band = await image.readRasters({
        window: [left, top, right, bottom],
        samples: [0],
        interleave: true,
      });
      return Array.from(band as ArrayLike<number>, (height) => (height === none ? null : height));
    });
  } catch (error) {
    return faulty('not-a-grid', error instanceof Error ? error.message : String(error));
  }
}
