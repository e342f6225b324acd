import initGeosJs from 'geos-wasm';

type Geos = Awaited<ReturnType<typeof initGeosJs>>;
type Point = readonly [x: number, y: number];

/** Disc and trenches as GEOS sees them: polygons inside the true shapes, or outside them. */
export interface Sides {
  readonly disc: 'inside' | 'outside';
  readonly trench: 'inside' | 'outside';
}

const CORNERS = 512;
const QUARTER = 64;

/** GEOS (C++, as geos-wasm): what is left of a disc about the origin, connected to it, once trenches are taken out. */
export class GeosWitness {
  private constructor(private readonly geos: Geos) {}

  static async start(): Promise<GeosWitness> {
    return new GeosWitness(await initGeosJs());
  }

  private read(wkt: string): number {
    const { geos } = this;
    const reader = geos.GEOSWKTReader_create();
    const bytes = wkt.length + 1;
    const text = geos.Module._malloc(bytes);
    geos.Module.stringToUTF8(wkt, text, bytes);
    const geometry = geos.GEOSWKTReader_read(reader, text);
    geos.Module._free(text);
    geos.GEOSWKTReader_destroy(reader);
    return geometry;
  }

  private area(geometry: number): number {
    const value = this.geos.Module._malloc(8);
    this.geos.GEOSArea(geometry, value);
    const area = this.geos.Module.getValue(value, 'double');
    this.geos.Module._free(value);
    return area;
  }

  private disc(radius: number, side: Sides['disc']): number {
    const r = side === 'inside' ? radius : radius / Math.cos(Math.PI / CORNERS);
    const points = Array.from({ length: CORNERS + 1 }, (_, i) => {
      const angle = (2 * Math.PI * (i % CORNERS)) / CORNERS;
      return `${r * Math.cos(angle)} ${r * Math.sin(angle)}`;
    });
    return this.read(`POLYGON ((${points.join(', ')}))`);
  }

  private trench(path: readonly Point[], halfWidth: number, side: Sides['trench']): number {
    const line = this.read(`LINESTRING (${path.map(([x, y]) => `${x} ${y}`).join(', ')})`);
    // GEOS sets the corners of a round on it: its chords lie inside
    const w = side === 'inside' ? halfWidth : halfWidth / Math.cos(Math.PI / (4 * QUARTER));
    const strip = this.geos.GEOSBuffer(line, w, QUARTER);
    this.geos.GEOSGeom_destroy(line);
    return strip;
  }

  /** Area of the part that holds the origin; 0 where a trench covers it. */
  left(radius: number, paths: readonly (readonly Point[])[], halfWidth: number, sides: Sides): number {
    const { geos } = this;
    let rest = this.disc(radius, sides.disc);
    for (const path of paths) {
      const strip = this.trench(path, halfWidth, sides.trench);
      const next = geos.GEOSDifference(rest, strip);
      geos.GEOSGeom_destroy(rest);
      geos.GEOSGeom_destroy(strip);
      rest = next;
    }
    const stem = this.read('POINT (0 0)');
    let found = 0;
    for (let i = 0; i < geos.GEOSGetNumGeometries(rest); i++) {
      const part = geos.GEOSGetGeometryN(rest, i);
      if (geos.GEOSIntersects(part, stem) === 1) found = this.area(part);
    }
    geos.GEOSGeom_destroy(stem);
    geos.GEOSGeom_destroy(rest);
    return found;
  }
}
