import { z } from 'zod';
import type { ColumnMap } from './column-map.js';

const use = z.strictObject({ column: z.string(), unit: z.enum(['mm', 'cm', 'm', 'in', 'ft']).optional() });
const FIELDS = [
  'id',
  'genus',
  'species',
  'common',
  'code',
  'trunk',
  'girth',
  'canopyDiameter',
  'canopyRadius',
  'height',
  'condition',
  'planted',
  'name',
  'material',
  'size',
  'installed',
  'depth',
  'carries',
  'street',
] as const;

const schema = z.strictObject({
  schema: z.literal(1),
  kind: z.literal('rootreach-columns'),
  what: z.enum(['tree', 'drain']),
  position: z.discriminatedUnion('from', [
    z.strictObject({ from: z.literal('geometry') }),
    z.strictObject({ from: z.literal('columns'), x: z.string(), y: z.string() }),
    z.strictObject({ from: z.enum(['geojson-cell', 'wkb-cell']), column: z.string() }),
    z.strictObject({ from: z.literal('none') }),
  ]),
  crs: z.string().nullable(),
  latitudeFirst: z.boolean(),
  columns: z.partialRecord(z.enum(FIELDS), use),
});

/** A column map from a file's text, or what is wrong with it. */
export function readColumnMap(text: string): ColumnMap | { readonly wrong: string } {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { wrong: 'not JSON' };
  }
  const read = schema.safeParse(value);
  if (read.success) return read.data as ColumnMap;
  const first = read.error.issues[0];
  const words = first?.code === 'invalid_type' ? `must be a ${first.expected}` : first?.message;
  return { wrong: `${first?.path.join('.') || 'the file'}: ${words ?? 'not a column map'}` };
}
