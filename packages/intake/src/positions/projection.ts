import proj4 from 'proj4';
import { knownCodes } from './known-codes.js';

/** Turns grid coordinates into longitude and latitude, WGS 84, degrees. */
export type ToLonLat = (x: number, y: number) => readonly [lon: number, lat: number];

/** A grid of positions, and the way back from it. */
export interface Projection {
  /** `EPSG:2263`. */
  readonly code: string;
  readonly name: string;
  readonly toLonLat: ToLonLat;
}

/** Zones of the universal transverse Mercator grid: EPSG numbers them on WGS 84, NAD83 and ETRS89. */
function zone(code: number): { readonly name: string; readonly proj: string } | null {
  const number = code % 100;
  const south = Math.floor(code / 100) === 327 ? ' +south' : '';
  const datum = { 326: '+datum=WGS84', 327: '+datum=WGS84', 269: '+datum=NAD83', 258: '+ellps=GRS80' }[
    Math.floor(code / 100)
  ];
  if (datum === undefined || number < 1 || number > 60) return null;
  return {
    name: `UTM zone ${number}${south ? 'S' : 'N'}`,
    proj: `+proj=utm +zone=${number}${south} ${datum}`,
  };
}

let table: ReadonlyMap<number, { readonly name: string; readonly proj: string }> | undefined;

function rowOf(code: number): { readonly name: string; readonly proj: string } | null {
  table ??= new Map(
    knownCodes
      .trim()
      .split('\n')
      .map((line) => {
        const [number, name = '', proj = ''] = line.split('|');
        return [Number(number), { name, proj }] as const;
      }),
  );
  return table.get(code) ?? zone(code);
}

/** Number of `EPSG:2263`, `epsg 2263`, `urn:ogc:def:crs:EPSG::2263` or `2263`; null where it is none. */
export function epsgNumber(text: string): number | null {
  if (/CRS:?84$/i.test(text.trim())) return 4326;
  const found = /(?:^|EPSG\D*?)(?:\d+\.\d+:)?(\d{4,5})\s*$/i.exec(text.trim());
  return found ? Number(found[1]) : null;
}

/** The grid of an EPSG code or a PROJ string; null where it is not known here. */
export function projectionOf(text: string): Projection | null {
  const code = epsgNumber(text);
  const row = code === null ? null : rowOf(code);
  const proj = text.trim().startsWith('+proj=') ? text.trim() : row?.proj;
  if (proj === undefined) return null;
  try {
    const grid = proj4(`${proj} +no_defs`, 'WGS84');
    return {
      code: code === null ? proj : `EPSG:${code}`,
      name: row?.name ?? proj,
      toLonLat: (x, y) => grid.forward([x, y]) as [number, number],
    };
  } catch {
    return null;
  }
}
