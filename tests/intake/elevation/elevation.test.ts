import { describe, expect, it } from 'vitest';
import { planeAt } from '../../../packages/core/src/geometry/plane.js';
import { groundFromGrid } from '../../../packages/core/src/route/ground-grid.js';
import type {
  ElevationFault,
  ElevationOptions,
  ElevationReading,
} from '../../../packages/intake/src/elevation/elevation-reading.js';
import {
  type CellWindow,
  placeGrid,
  type RawGrid,
} from '../../../packages/intake/src/elevation/place-grid.js';
import { readElevation } from '../../../packages/intake/src/elevation/read-elevation.js';
import { wordElevationFault } from '../../../packages/intake/src/words/elevation-words.js';
import { type LittleTiff, littleTiff } from './little-tiff.js';

type Read = Extract<ElevationReading, { kind: 'grid' }>;

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

async function grid(bytes: Uint8Array, options?: ElevationOptions): Promise<Read> {
  const reading = await readElevation(bytes, options);
  expect(reading).toMatchObject({ kind: 'grid' });
  return reading as Read;
}

async function fault(bytes: Uint8Array, options?: ElevationOptions): Promise<ElevationFault> {
  const reading = await readElevation(bytes, options);
  if (reading.kind !== 'fault') throw new Error('read');
  expect(wordElevationFault(reading)).toContain(reading.found);
  return reading.fault;
}

const UTM = `ncols 3
nrows 2
xllcorner 499999
yllcorner 4982949.4
cellsize 2
NODATA_value -9999
10 11 12
20 -9999 22
`;

describe('an ASCII grid', () => {
  it('is put where its EPSG code says: on 45 degrees north, by the meridian arc of 4,984,944.378 m times 0.9996', async () => {
    const { grid: found, ...about } = await grid(bytesOf(UTM), { reference: 'EPSG:32615' });
    expect(about).toEqual({
      kind: 'grid',
      format: 'ascii-grid',
      reference: 'UTM zone 15N',
      heightUnit: 'm',
      heightUnitFrom: 'assumed',
      unknownCells: 1,
    });
    expect(found.elevationsM).toEqual([10, 11, 12, 20, null, 22]);
    const [lon, lat] = found.corners.southWest;
    expect(lon).toBeCloseTo(-93, 9);
    expect(lat).toBeCloseTo(45, 7);
    const plane = planeAt(-93, 45);
    // the cells are 2 m apart on the map, 0.9996 of that on the ground
    expect((found.corners.southEast[0] - lon) * plane.metresPerDegreeLon).toBeCloseTo(4 / 0.9996, 3);
    expect((found.corners.northWest[1] - lat) * plane.metresPerDegreeLat).toBeCloseTo(2 / 0.9996, 3);
    const ground = groundFromGrid(found, plane);
    expect(ground.elevationAt(0, 0)).toBeCloseTo(20, 2);
    expect(ground.elevationAt(2, 0)).toBeNull();
  });

  it('takes middles as well as corners, in degrees without a code', async () => {
    const text =
      'NCOLS 2\r\nNROWS 2\r\nXLLCENTER -93.5\r\nYLLCENTER 45.1\r\nCELLSIZE 0.001\r\n1 2\r\n3 nan\r\n';
    const { grid: found, reference } = await grid(bytesOf(text));
    expect(found.corners.southWest).toEqual([-93.5, 45.1]);
    expect(found.corners.northEast[0]).toBeCloseTo(-93.499, 12);
    expect(found.corners.northEast[1]).toBeCloseTo(45.101, 12);
    expect(found.elevationsM).toEqual([1, 2, 3, null]);
    expect(reference).toBe('degrees, taken as WGS 84');
  });

  it('lies about a given place where its metres are its own', async () => {
    const text = 'ncols 2\nnrows 2\nxllcenter 0\nyllcenter 0\ncellsize 10\n1 2\n3 4\n';
    const { grid: found } = await grid(bytesOf(text), { originAt: [-93, 45] });
    const ground = groundFromGrid(found, planeAt(-93, 45));
    expect(ground.elevationAt(0, 0)).toBeCloseTo(3, 6);
    expect(ground.elevationAt(10, 10)).toBeCloseTo(2, 6);
  });

  it('takes feet for feet', async () => {
    const { grid: found, heightUnitFrom } = await grid(bytesOf(UTM), {
      reference: '32615',
      heightUnit: 'ft',
    });
    expect(found.elevationsM[0]).toBeCloseTo(3.048, 12);
    expect(heightUnitFrom).toBe('given');
  });

  it('gives the part about a box', async () => {
    const rows = Array.from({ length: 60 }, (_, row) =>
      Array.from({ length: 80 }, (_, column) => row * 100 + column).join(' '),
    ).join('\n');
    const text = `ncols 80\nnrows 60\nxllcenter 500000\nyllcenter 4982950.4\ncellsize 1\n${rows}\n`;
    const whole = await grid(bytesOf(text), { reference: 'EPSG:32615' });
    const plane = planeAt(-93, 45);
    const [west, south] = [-93 + 30 / plane.metresPerDegreeLon, 45 + 20 / plane.metresPerDegreeLat];
    const [east, north] = [-93 + 36 / plane.metresPerDegreeLon, 45 + 25 / plane.metresPerDegreeLat];
    const part = await grid(bytesOf(text), { reference: 'EPSG:32615', around: { west, south, east, north } });
    expect(part.grid.columns).toBeLessThan(16);
    expect(part.grid.rows).toBeLessThan(15);
    for (const [x, y] of [
      [30.2, 20.1],
      [33, 22.5],
      [35.9, 24.9],
    ] as const) {
      const [a, b] = [whole, part].map(({ grid: each }) => groundFromGrid(each, plane).elevationAt(x, y));
      // heights rise by 100 a metre here: half a millimetre
      expect(b).toBeCloseTo(a as number, 1);
    }
  });

  it.each<[string, string, ElevationOptions, ElevationFault]>([
    ['another text', 'id,name\n1,2\n', {}, 'not-a-grid'],
    ['words among its heights', UTM.replace('11', 'high'), { reference: '32615' }, 'not-a-grid'],
    ['no size of cells', UTM.replace(/cellsize.*\n/, ''), { reference: '32615' }, 'odd-header'],
    ['no corner', UTM.replace(/xll.*\n/, ''), { reference: '32615' }, 'odd-header'],
    ['half a column', UTM.replace('ncols 3', 'ncols 2.5'), { reference: '32615' }, 'not-a-grid'],
    ['a row short', UTM.replace(/20.*\n/, ''), { reference: '32615' }, 'too-few-heights'],
    ['a single row', UTM.replace('nrows 2', 'nrows 1'), { reference: '32615' }, 'odd-header'],
    ['no code', UTM, {}, 'no-reference'],
    ['a code that is unknown here', UTM, { reference: 'EPSG:99999' }, 'unknown-reference'],
    ['nothing known', UTM.replace(/\b(1\d|2\d)\b(?=[ \n])/g, '-9999'), { reference: '32615' }, 'no-heights'],
    [
      'a box elsewhere',
      UTM,
      { reference: '32615', around: { west: 8, south: 47, east: 8.1, north: 47.1 } },
      'elsewhere',
    ],
  ])('with %s comes back as a fault', async (_, text, options, expected) => {
    expect(await fault(bytesOf(text), options)).toBe(expected);
  });
});

describe('a grid too large to hold', () => {
  const raw: RawGrid = {
    columns: 3000,
    rows: 3000,
    placeOf: (column, row) => [-93 + column / 1e5, 45 - row / 1e5],
    reference: 'EPSG:4326',
    heightUnit: null,
    format: 'geotiff',
  };
  const flat = async (window: CellWindow): Promise<number[]> =>
    new Array<number>((window.right - window.left) * (window.bottom - window.top)).fill(7);

  it('is not read whole, but about a box', async () => {
    expect(await placeGrid(raw, {}, flat)).toMatchObject({ kind: 'fault', fault: 'too-many-cells' });
    const around = { west: -92.999, south: 44.998, east: -92.998, north: 44.999 };
    const part = await placeGrid(raw, { around }, flat);
    expect(part).toMatchObject({ kind: 'grid', unknownCells: 0 });
  });
});

/** A GeoTIFF of 4 x 3 heights: column + 10 x row, one of them not known. */
const tiff = (more: Pick<LittleTiff, 'scale' | 'tie' | 'keys'> & Partial<LittleTiff>): Uint8Array =>
  littleTiff({
    width: 4,
    heights: Array.from({ length: 12 }, (_, i) => (i === 5 ? -32768 : (i % 4) + 10 * Math.floor(i / 4))),
    noData: '-32768',
    ...more,
  });

/** Keys: model type, raster type, geographic and projected system, unit of heights. */
const [MODEL, RASTER, DEGREES, GRID, HEIGHTS] = [1024, 1025, 2048, 3072, 4099] as const;

describe('a GeoTIFF', () => {
  it('in degrees lies by the middles of its cells', async () => {
    const bytes = tiff({
      scale: [0.0001, 0.0002],
      tie: [0, 0, -93, 45],
      keys: { [MODEL]: 2, [RASTER]: 1, [DEGREES]: 4326 },
    });
    const { grid: found, reference, unknownCells } = await grid(bytes);
    expect(found.corners.northWest[0]).toBeCloseTo(-92.99995, 9);
    expect(found.corners.northWest[1]).toBeCloseTo(44.9999, 9);
    expect(found.corners.southEast[0]).toBeCloseTo(-92.99965, 9);
    expect(found.corners.southEast[1]).toBeCloseTo(44.9995, 9);
    expect(found.elevationsM).toEqual([0, 1, 2, 3, 10, null, 12, 13, 20, 21, 22, 23]);
    expect(reference).toBe('WGS 84');
    expect(unknownCells).toBe(1);
  });

  it('in a zone of UTM lies where its code says, its cells points, its heights in feet', async () => {
    const bytes = tiff({
      scale: [2, 2],
      tie: [0, 0, 500_000, 4_982_950.4],
      keys: { [MODEL]: 1, [RASTER]: 2, [GRID]: 32_615, [HEIGHTS]: 9002 },
    });
    const { grid: found, ...about } = await grid(bytes);
    expect(found.corners.northWest[0]).toBeCloseTo(-93, 9);
    expect(found.corners.northWest[1]).toBeCloseTo(45, 7);
    expect(about).toMatchObject({ reference: 'UTM zone 15N', heightUnit: 'ft', heightUnitFrom: 'file' });
    expect(found.elevationsM[4]).toBeCloseTo(3.048, 6);
  });

  it('may be turned: its matrix says where each cell lies', async () => {
    // a quarter turn: columns run north, rows east
    const matrix = [0, 2, 0, 500_000, 2, 0, 0, 4_982_950.4, 0, 0, 0, 0, 0, 0, 0, 1];
    const bytes = tiff({
      scale: [0, 0],
      tie: [0, 0, 0, 0],
      keys: { [MODEL]: 1, [RASTER]: 2, [GRID]: 32_615 },
      matrix,
    });
    const { grid: found } = await grid(bytes);
    const ground = groundFromGrid(found, planeAt(-93, 45));
    // column 3, row 0 is 6 m north of the first; column 0, row 2 is 4 m east
    expect(ground.elevationAt(0, 6 / 0.9996)).toBeCloseTo(3, 2);
    expect(ground.elevationAt(4 / 0.9996, 0)).toBeCloseTo(20, 2);
  });

  it('is cut to a box', async () => {
    const bytes = littleTiff({
      width: 100,
      heights: Array.from({ length: 10_000 }, (_, i) => i),
      scale: [1, 1],
      tie: [0, 0, 500_000, 4_982_950.4],
      keys: { [MODEL]: 1, [RASTER]: 2, [GRID]: 32_615 },
    });
    const plane = planeAt(-93, 45);
    const around = {
      west: -93 + 40 / plane.metresPerDegreeLon,
      east: -93 + 44 / plane.metresPerDegreeLon,
      south: 45 - 64 / plane.metresPerDegreeLat,
      north: 45 - 60 / plane.metresPerDegreeLat,
    };
    const { grid: found } = await grid(bytes, { around });
    expect(found.columns * found.rows).toBeLessThan(200);
    const height = groundFromGrid(found, plane).elevationAt(42 / 0.9996, -62 / 0.9996);
    expect(height).toBeCloseTo(62 * 100 + 42, 0);
  });

  it('without a place, or broken, comes back as a fault', async () => {
    const bytes = tiff({
      scale: [2, 2],
      tie: [0, 0, 500_000, 4_982_950],
      keys: { [MODEL]: 1, [GRID]: 32_767 },
    });
    expect(await fault(bytes)).toBe('no-reference');
    expect(await fault(bytes.slice(0, 40))).toBe('not-a-grid');
    expect(await fault(Uint8Array.of(0x49, 0x49, 42, 0, 1))).toBe('not-a-grid');
    expect((await grid(bytes, { reference: 'EPSG:32615' })).reference).toBe('UTM zone 15N');
  });
});
