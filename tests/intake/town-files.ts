import { zipSync } from 'fflate';
import { type TakeInOptions, type TakenIn, takeIn } from '../../packages/intake/src/take/take-in.js';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The one table in a file. */
export async function taken(
  name: string,
  content: string | Uint8Array,
  options: TakeInOptions = {},
): Promise<TakenIn> {
  const source = { name, bytes: typeof content === 'string' ? bytes(content) : content };
  const [first] = await takeIn(source, options);
  if (!first) throw new Error('no table in it');
  return first;
}

export const featuresOf = ({ input }: TakenIn) =>
  (
    JSON.parse(input.text) as {
      features: { properties: Record<string, unknown>; geometry: { type: string; coordinates: unknown } }[];
    }
  ).features;

export const countOf = ({ report }: TakenIn, reason: string): number =>
  report.entries.find((entry) => entry.reason === reason)?.count ?? 0;

export const guessOf = ({ report }: TakenIn, what: string): string =>
  report.guesses.find((guess) => guess.what === what)?.taken ?? '';

/** Trees of an invented street: trunks as a street has them, in the unit asked for. */
export function street(unitCm: number, header = 'DBH'): string {
  const rows = Array.from({ length: 200 }, (_, i) => {
    const cm = 8 + ((i * 37) % 83);
    return `${i + 1},Acer platanoides,${Math.round(cm / unitCm)},${(-71.2 + i * 1e-4).toFixed(6)},40.6`;
  });
  return `id,species_latin,${header},longitude,latitude\n${rows.join('\n')}\n`.replace(
    'species_latin',
    'Botanical Name',
  );
}

/** ESRI Shapefile Technical Description (July 1998): main file with points; table in dBASE III. */
export function zippedPoints(
  points: readonly (readonly [number, number])[],
  names: readonly string[],
  prj: string,
): Uint8Array {
  const shp = new DataView(new ArrayBuffer(100 + 28 * points.length));
  shp.setInt32(0, 9994);
  shp.setInt32(24, shp.byteLength / 2);
  shp.setInt32(28, 1000, true);
  shp.setInt32(32, 1, true);
  points.forEach(([x, y], i) => {
    const at = 100 + 28 * i;
    shp.setInt32(at, i + 1);
    shp.setInt32(at + 4, 10);
    shp.setInt32(at + 8, 1, true);
    shp.setFloat64(at + 12, x, true);
    shp.setFloat64(at + 20, y, true);
  });
  const width = 20;
  const dbf = new Uint8Array(32 + 32 + 1 + names.length * (1 + width) + 1).fill(32);
  const head = new DataView(dbf.buffer);
  dbf.fill(0, 0, 64);
  head.setUint8(0, 3);
  head.setUint32(4, names.length, true);
  head.setUint16(8, 65, true);
  head.setUint16(10, 1 + width, true);
  dbf.set(bytes('SPECIES'), 32);
  dbf.set(bytes('C'), 32 + 11);
  head.setUint8(32 + 16, width);
  head.setUint8(64, 0x0d);
  names.forEach((name, i) => {
    dbf.set(bytes(name), 65 + i * (1 + width) + 1);
  });
  dbf[dbf.length - 1] = 0x1a;
  return zipSync({
    'town/trees.shp': new Uint8Array(shp.buffer),
    'town/trees.dbf': dbf,
    'town/trees.prj': bytes(prj),
  });
}
