/// <reference path="./shpjs.d.ts" />
import type { RawTable } from '../take/raw-table.js';
import type { Packed } from './archive.js';
import { featureTable } from './features.js';

const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
const view = ({ bytes }: Packed): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** Shapes with their table, turned into longitude and latitude by the projection file beside them. */
export async function shapeTables(file: string, packed: readonly Packed[]): Promise<RawTable[]> {
  const { combine, parseDbf, parseShp } = await import('shpjs');
  const beside = (shape: Packed, ending: string) =>
    packed.find(({ name }) => name.toLowerCase() === shape.name.toLowerCase().replace(/\.shp$/, ending));
  return packed
    .filter(({ name }) => name.toLowerCase().endsWith('.shp'))
    .map((shape) => {
      const projection = beside(shape, '.prj');
      const table = beside(shape, '.dbf');
      const encoding = beside(shape, '.cpg');
      const shapes = parseShp(view(shape), projection ? text(projection.bytes) : undefined);
      const rows = table
        ? parseDbf(view(table), encoding ? view(encoding) : undefined)
        : shapes.map(() => ({}));
      const name = shape.name.split('/').at(-1) ?? shape.name;
      return featureTable(`${file}/${name}`, 'shapefile', combine([shapes, rows]));
    });
}
