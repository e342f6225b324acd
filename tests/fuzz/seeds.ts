import { readFileSync } from 'node:fs';
import { csvCells } from './csv-cells.js';

type Properties = Readonly<Record<string, unknown>>;

const feature = (type: string, coordinates: unknown, properties: Properties) => ({
  type: 'Feature',
  properties,
  geometry: coordinates === null ? null : { type, coordinates },
});

const [LON, LAT] = [-70.6, 40.5];
/** A place so many ten-millionths of a degree east and north of the corner of the lot. */
const at = (east: number, north: number) => [LON + east / 1e7, LAT + north / 1e7];

/** An invented lot with one of everything, small, so that many a second can be read. */
export const YARD = {
  type: 'FeatureCollection',
  rootreach: {
    schema: 1,
    name: 'Yard',
    invented: true,
    units: 'us',
    soil: 'loam',
    rain_mm_h: 100,
    protection: 'trunk-multiple',
  },
  features: [
    feature('Point', at(470, 540), { kind: 'tree', id: 't1', species: 'Ulmus americana', dbh_cm: 60 }),
    feature('LineString', [at(1600, 270), at(800, 300), at(0, 270)], {
      kind: 'drain',
      id: 'main',
      name: 'old tail',
      material: 'clay',
      size_mm: 100,
      depth_start_m: 0.6,
      depth_end_m: 0.8,
      installed: '1962',
      flow: 'as-drawn',
      serves_m2: 80,
    }),
    feature('Point', at(0, 270), { kind: 'fitting', type: 'outlet', id: 'O1' }),
    feature('Point', at(1600, 270), { kind: 'fitting', type: 'basin', id: 'B1' }),
    feature('', null, {
      kind: 'finding',
      id: 'f1',
      drain: 'main',
      from: 'O1',
      at_ft: 10,
      to_ft: 14,
      seen: 'mass',
      entries: 2,
      blocked_pct: 40,
      date: '2024-05-02',
      photo: 'root.jpg',
      note: 'seen',
    }),
    feature('', null, {
      kind: 'finding',
      drain: 'main',
      from: 'O1',
      at_ft: 0,
      to_ft: 10,
      seen: 'clear',
      date: '2024-05-02',
    }),
    feature('Polygon', [[at(300, 900), at(1200, 900), at(1200, 1500), at(300, 1500), at(300, 900)]], {
      kind: 'obstacle',
      type: 'building',
      id: 'house',
      name: 'house',
    }),
    feature('LineString', [at(300, 400), at(900, 400)], { kind: 'barrier', depth_m: 0.6, installed: 2010 }),
    feature('Point', at(1600, 300), { kind: 'level', id: 'L1', elevation_m: 10.6 }),
    feature('Point', at(0, 250), { kind: 'level', id: 'L2', elevation_m: 10 }),
  ],
} as const;

/** The lot with a second line and another tree. */
export const TWO_LINES = {
  ...YARD,
  features: [
    ...YARD.features,
    feature('LineString', [at(800, 1200), at(800, 300)], {
      kind: 'drain',
      id: 'side',
      material: 'black corrugated',
      size_in: 4,
      perforated: true,
      installed: 1999,
    }),
    feature('Point', at(1100, 500), {
      kind: 'tree',
      id: 't2',
      species: 'silver maple',
      girth_in: 75,
      canopy_radius_m: 5,
    }),
  ],
};

/** Trees of an invented street as a town lists them. */
export const TREE_ROWS: readonly (readonly string[])[] = [
  ['id', 'Botanical Name', 'Common', 'DBH', 'Height_ft', 'Condition', 'Planted', 'Longitude', 'Latitude'],
  ['1', 'Ulmus americana', 'American elm', '24', '60', 'good', '1950', '-70.59995281', '40.50005403'],
  ['2', 'Acer rubrum', 'red maple', '12', '40', 'fair', '1988-04-01', '-70.5999', '40.50001'],
  ['3', 'Quercus', 'oak', '31', '', 'dead', '', '-70.5998', '40.5001'],
  ['4', '', 'stump', '', '', '', '', '-70.5997', '40.5'],
];

const lineCell = JSON.stringify({ type: 'LineString', coordinates: [at(1600, 270), at(0, 270)] });

/** Lines of an invented town. */
export const LINE_ROWS: readonly (readonly string[])[] = [
  ['pipe_id', 'MATERIAL', 'DIAMETER_IN', 'YEAR_BUILT', 'DEPTH_FT', 'the_geom'],
  ['p1', 'VCP', '6', '1948', '4', lineCell],
  ['p2', 'PVC', '8', '1999-03-02', '5.5', lineCell],
  ['p3', 'RCP', '12', '', '', ''],
];

/** Columns of the trees above. */
export const COLUMNS = {
  schema: 1,
  kind: 'rootreach-columns',
  what: 'tree',
  position: { from: 'columns', x: 'Longitude', y: 'Latitude' },
  crs: null,
  latitudeFirst: false,
  columns: {
    id: { column: 'id' },
    species: { column: 'Botanical Name' },
    trunk: { column: 'DBH', unit: 'in' },
    height: { column: 'Height_ft', unit: 'ft' },
    condition: { column: 'Condition' },
    planted: { column: 'Planted' },
  },
};

export const KML = `<?xml version="1.0" encoding="UTF-8"?>
<kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>Trees</name>
<Placemark><name>1</name><ExtendedData><Data name="species"><value>Ulmus americana</value></Data>
<Data name="dbh_cm"><value>60</value></Data></ExtendedData>
<Point><coordinates>-70.59995281,40.50005403,0</coordinates></Point></Placemark>
<Placemark><name>main</name><ExtendedData><Data name="material"><value>clay</value></Data></ExtendedData>
<LineString><coordinates>-70.6,40.5,0 -70.5998,40.5,0</coordinates></LineString></Placemark>
</Document></kml>`;

export const GPX = `<?xml version="1.0"?>
<gpx version="1.1" creator="x" xmlns="http://www.topografix.com/GPX/1/1">
<wpt lat="40.50005" lon="-70.59995"><name>elm</name><desc>Ulmus americana</desc></wpt>
<trk><name>main</name><trkseg><trkpt lat="40.5" lon="-70.6"/><trkpt lat="40.5" lon="-70.5998"/></trkseg></trk>
</gpx>`;

/** Ground heights, ESRI ASCII grid. */
export const GRID = `ncols 4
nrows 3
xllcorner -70.6002
yllcorner 40.4998
cellsize 0.0002
NODATA_value -9999
10.5 10.6 10.7 10.8
10.2 10.3 10.4 -9999
10 10.1 10.2 10.3
`;

/** The invented price list. */
export const priceRows = (): string[][] =>
  csvCells(readFileSync(new URL('../../data/prices/demo-prices.csv', import.meta.url), 'utf8'), ',');
