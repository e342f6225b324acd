import { type ElevationOptions, type ElevationReading, faulty } from './elevation-reading.js';
import { placeGrid, type RawGrid } from './place-grid.js';

const HEADER_WORDS = [
  'ncols',
  'nrows',
  'xllcorner',
  'xllcenter',
  'yllcorner',
  'yllcenter',
  'cellsize',
  'dx',
  'dy',
  'nodata_value',
];

/** Words and numbers of a header, and where the heights begin. */
function headerOf(text: string): { readonly words: ReadonlyMap<string, number>; readonly end: number } {
  const words = new Map<string, number>();
  const line = /[ \t]*([A-Za-z_]+)[ \t]+(\S+)[ \t]*\r?\n/y;
  for (;;) {
    const at = line.lastIndex;
    const found = line.exec(text);
    const name = found?.[1]?.toLowerCase();
    if (name === undefined || !HEADER_WORDS.includes(name)) return { words, end: at };
    words.set(name, Number(found?.[2]));
  }
}

/** Whether a text begins as an ASCII grid does. */
export const looksLikeAsciiGrid = (text: string): boolean =>
  /^\s*ncols\s+\d+\s*\r?\n/i.test(text.slice(0, 200));

/**
 * An ASCII grid (the common text format: ncols, nrows, xllcorner or xllcenter, yllcorner or yllcenter, cellsize,
 * NODATA_value, then heights row by row from the north). It does not say where on earth its numbers are counted from:
 * that is an option, or degrees where they can be nothing else.
 */
export async function readAsciiGrid(text: string, options: ElevationOptions = {}): Promise<ElevationReading> {
  if (!looksLikeAsciiGrid(text)) return faulty('not-a-grid', text.slice(0, 20).trim());
  const { words, end } = headerOf(text.replace(/^\s+/, ''));
  const body = text.replace(/^\s+/, '').slice(end);
  const [columns, rows] = [words.get('ncols'), words.get('nrows')];
  const [dx, dy] = [words.get('dx') ?? words.get('cellsize'), words.get('dy') ?? words.get('cellsize')];
  const given = { ncols: columns, nrows: rows, 'cellsize x': dx, 'cellsize y': dy };
  for (const [name, value] of Object.entries(given)) {
    if (value === undefined || !(value > 0)) {
      return faulty(
        'odd-header',
        `${name}: ${value === undefined || Number.isNaN(value) ? 'missing' : value}`,
      );
    }
  }
  const step = { x: dx as number, y: dy as number };
  const half = (name: 'x' | 'y'): number | undefined => {
    const corner = words.get(`${name}llcorner`);
    return words.get(`${name}llcenter`) ?? (corner === undefined ? undefined : corner + step[name] / 2);
  };
  const [west, south] = [half('x'), half('y')];
  if (west === undefined || south === undefined || !Number.isFinite(west + south)) {
    return faulty('odd-header', 'xllcorner and yllcorner');
  }
  const [wide, high] = [columns as number, rows as number];
  if (!Number.isInteger(wide) || !Number.isInteger(high))
    return faulty('odd-header', `${wide} x ${high} cells`);
  const raw: RawGrid = {
    columns: wide,
    rows: high,
    placeOf: (column, row) => [west + column * step.x, south + (high - 1 - row) * step.y],
    reference: null,
    heightUnit: null,
    format: 'ascii-grid',
  };
  const none = words.get('nodata_value') ?? -9999;
  const all = body.split(/\s+/).filter((word) => word !== '');
  if (all.length < wide * high) return faulty('too-few-heights', `${all.length} of ${wide * high}`);
  const odd = all.findIndex((word) => word.toLowerCase() !== 'nan' && !Number.isFinite(Number(word)));
  if (odd !== -1) return faulty('not-a-grid', all[odd] as string);
  return placeGrid(raw, options, async ({ left, top, right, bottom }) => {
    const kept: (number | null)[] = [];
    for (let row = top; row < bottom; row++) {
      for (const word of all.slice(row * wide + left, row * wide + right)) {
        kept.push(Number(word) === none ? null : Number(word));
      }
    }
    return kept;
  });
}
