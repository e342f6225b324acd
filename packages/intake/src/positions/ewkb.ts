import type { Geometry, Position } from 'geojson';

/** Flags of extended well-known binary: has z, has m, has a reference system. */
const Z = 0x80000000;
const M = 0x40000000;
const SRID = 0x20000000;

export interface BinaryGeometry {
  readonly geometry: Geometry;
  /** EPSG code that the bytes name. */
  readonly srid: number | null;
}

class Reader {
  private at = 0;
  private little = true;

  constructor(private readonly view: DataView) {}

  byteOrder(): void {
    this.little = this.view.getUint8(this.at) === 1;
    this.at += 1;
  }

  whole(): number {
    const value = this.view.getUint32(this.at, this.little);
    this.at += 4;
    return value;
  }

  /** A count, never more than there are bytes for. */
  count(leastBytes: number): number {
    const value = this.whole();
    if (value * leastBytes > this.view.byteLength - this.at) throw new RangeError('more parts than bytes');
    return value;
  }

  position(extra: number): Position {
    const x = this.view.getFloat64(this.at, this.little);
    const y = this.view.getFloat64(this.at + 8, this.little);
    this.at += 16 + 8 * extra;
    return [x, y];
  }
}

const many = <T>(n: number, one: () => T): T[] => Array.from({ length: n }, one);

function read(reader: Reader, depth = 0): BinaryGeometry {
  if (depth > 2) throw new RangeError('nested too deep');
  reader.byteOrder();
  const head = reader.whole();
  const srid = head & SRID ? reader.whole() : null;
  // ISO writes 1000, 2000, 3000 for z, m and both; the extended form has flags
  const plain = (head & 0x0fffffff) >>> 0;
  const iso = Math.floor(plain / 1000);
  const extra = (head & Z ? 1 : 0) + (head & M ? 1 : 0) + (iso === 3 ? 2 : iso > 0 ? 1 : 0);
  const path = () => many(reader.count(16), () => reader.position(extra));
  const parts = <T>(pick: (geometry: Geometry) => T) =>
    many(reader.count(9), () => pick(read(reader, depth + 1).geometry));
  const coordinates = (geometry: Geometry) => ('coordinates' in geometry ? geometry.coordinates : []);
  switch (plain % 1000) {
    case 1:
      return { srid, geometry: { type: 'Point', coordinates: reader.position(extra) } };
    case 2:
      return { srid, geometry: { type: 'LineString', coordinates: path() } };
    case 3:
      return { srid, geometry: { type: 'Polygon', coordinates: many(reader.count(4), path) } };
    case 4:
      return { srid, geometry: { type: 'MultiPoint', coordinates: parts(coordinates) as Position[] } };
    case 5:
      return { srid, geometry: { type: 'MultiLineString', coordinates: parts(coordinates) as Position[][] } };
    case 6:
      return { srid, geometry: { type: 'MultiPolygon', coordinates: parts(coordinates) as Position[][][] } };
    default:
      throw new RangeError(`geometry type ${plain}`);
  }
}

/** Whether a text could be well-known binary written in hex. */
export const looksLikeWkb = (text: string): boolean => /^0[01][0-9a-fA-F]{40,}$/.test(text);

/** Geometry of well-known binary in hex, plain, ISO or extended; null where the bytes are no geometry. */
export function fromHexWkb(hex: string): BinaryGeometry | null {
  if (!looksLikeWkb(hex) || hex.length % 2 === 1) return null;
  const bytes = new Uint8Array(hex.length / 2);
  for (let i = 0; i < bytes.length; i++) bytes[i] = Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16);
  try {
    return read(new Reader(new DataView(bytes.buffer)));
  } catch {
    return null;
  }
}
