import { readSite } from '@rootreach/core';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isSiteFile, needsTakingIn } from '../../packages/intake/src/take/is-site-file.js';
import { countOf, featuresOf, guessOf, street, taken, zippedPoints } from './town-files.js';

describe('a table of trees', () => {
  it('has its unit told from the header, else from the sizes', async () => {
    expect(guessOf(await taken('a.csv', street(1, 'DBH (cm)')), 'trunk')).toBe('DBH (cm) in centimetres');
    expect(guessOf(await taken('a.csv', street(1)), 'trunk')).toBe('DBH in centimetres');
    expect(guessOf(await taken('a.csv', street(2.54)), 'trunk')).toBe('DBH in inches');
    expect(guessOf(await taken('a.csv', street(1 / Math.PI, 'Girth')), 'girth')).toBe('Girth in centimetres');
  });

  it('comes out in centimetres whatever it was in', async () => {
    const inches = featuresOf(await taken('a.csv', 'species,dbh_in,lon,lat\nAcer rubrum,10,-71,40\n'));
    expect(inches[0]?.properties).toMatchObject({ kind: 'tree', species: 'Acer rubrum', dbh_cm: 25.4 });
    const girth = featuresOf(
      await taken('a.csv', 'species;Stammumfang [cm];lon;lat\nAcer rubrum;100;-71;40\n'),
    );
    expect(girth[0]?.properties['dbh_cm']).toBeCloseTo(100 / Math.PI, 1);
  });

  it('sets aside stumps, vacant places, the dead and what has no position, and says how many of each', async () => {
    const file = await taken(
      'trees.csv',
      [
        'id,species,status,dbh_in,lon,lat',
        '1,Acer rubrum,Alive,10,-71.2,40.6',
        '2,,Stump,0,-71.2,40.6001',
        '3,Vacant site,,,-71.2,40.6002',
        '4,Quercus rubra,Dead,20,-71.2,40.6003',
        '5,Quercus rubra,Alive,20,,',
        '6,Quercus rubra,Alive,20,0,0',
        '7,Quercus rubra,Alive,-1,-71.2,40.6004',
        '8,Quercus rubra,Alive,None,-71.2,40.6005',
      ].join('\n'),
    );
    expect(file.report).toMatchObject({ rows: 8, taken: 3, aside: 5 });
    expect(countOf(file, 'not-alive')).toBe(3);
    expect(countOf(file, 'no-position')).toBe(2);
    expect(countOf(file, 'trunk-missing')).toBe(2);
    expect(file.report.entries[0]?.examples).toEqual(['row 2: Stump', 'row 3: Vacant site', 'row 4: Dead']);
  });

  it('tells latitude first, grids, GeoJSON and binary in a cell', async () => {
    const swapped = await taken(
      'a.csv',
      'species,lat,lon\nAcer rubrum,-171.2,40.6\nAcer rubrum,-171.3,40.7\n',
    );
    expect(featuresOf(swapped)[0]?.geometry.coordinates).toEqual([-171.2, 40.6]);
    const grid = 'spc_latin,tree_dbh,x_sp,y_sp\nUlmus pumila,4,956424.2066,168759.486\n';
    expect(countOf(await taken('a.csv', grid), 'grid-unknown')).toBe(1);
    const told = featuresOf(await taken('a.csv', grid, { crs: 'EPSG:2263' }))[0]?.geometry
      .coordinates as number[];
    expect(told[0]).toBeCloseTo(-74.10024691, 5);
    expect(told[1]).toBeCloseTo(40.6298386, 5);
    const cell = 'BOTANICAL_NAME,geometry\nAbies,"{""type"": ""Point"", ""coordinates"": [-79.42, 43.68]}"\n';
    expect(featuresOf(await taken('a.csv', cell))[0]?.geometry.coordinates).toEqual([-79.42, 43.68]);
    const wkb = 'species,geom\nAcer rubrum,0101000020E6100000000000000000F03F0000000000000040\n';
    expect(featuresOf(await taken('a.csv', wkb))[0]?.geometry.coordinates).toEqual([1, 2]);
  });

  it('joins genus and epithet, and falls back on the common name and on the code', async () => {
    const two = 'genus,species,lon,lat\nQuercus,robur,1,50\nTilia,Tilia cordata,1,50\n';
    expect(featuresOf(await taken('a.csv', two)).map((f) => f.properties['species'])).toEqual([
      'Quercus robur',
      'Tilia cordata',
    ]);
    const common = 'common_name,lon,lat\n"Maple, Norway",1,50\n';
    expect(featuresOf(await taken('a.csv', common))[0]?.properties['species']).toBe('Maple, Norway');
    const code = await taken('a.csv', 'SpCode,lon,lat\nACPL,1,50\n');
    expect(featuresOf(code)[0]?.properties['species']).toBe('Acer platanoides');
    expect(countOf(code, 'species-from-code')).toBe(1);
  });

  it('keeps trees that stand on one another and says so; the same id at the same place counts once', async () => {
    const file = await taken(
      'a.csv',
      'id,species,lon,lat\n1,Acer,1,50\n2,Acer,1,50\n3,Acer,2,50\n3,Acer,2,50\n3,Acer,3,50\n',
    );
    expect(countOf(file, 'position-shared')).toBe(2);
    expect(countOf(file, 'same-twice')).toBe(1);
    expect(countOf(file, 'id-renewed')).toBe(1);
    const ids = featuresOf(file).map((f) => f.properties['id']);
    expect(new Set(ids).size).toBe(4);
  });

  it('reads the old western code page, and a tree in it', async () => {
    const text = 'Baumart,lon,lat\nStieleiche (B\u00e4ume),1,50\n';
    const file = await taken('a.csv', Uint8Array.from([...text].map((c) => c.charCodeAt(0))));
    expect(featuresOf(file)[0]?.properties['species']).toBe('Stieleiche (Bäume)');
  });

  it('comes to the core as a site, with nothing more to complain about', async () => {
    const { input } = await taken('a.csv', street(1));
    const { site, issues, counts } = readSite([input]);
    expect(site.trees).toHaveLength(200);
    expect(counts.species.named).toBe(200);
    expect(issues.filter(({ severity }) => severity !== 'notice')).toEqual([]);
  });
});

describe('a file of pipes', () => {
  const line = (properties: object, coordinates: unknown, type = 'LineString') => ({
    type: 'Feature',
    properties,
    geometry: { type, coordinates },
  });
  const path = [
    [1, 50],
    [1.001, 50],
  ];
  const file = (...features: object[]) => JSON.stringify({ type: 'FeatureCollection', features });

  it('has size, material, age and service read, abandoned ones set aside, lines of parts split', async () => {
    const pipes = await taken(
      'pipes.geojson',
      file(
        line(
          { FACILITYID: 'A', MATERIAL: 'VCP', DIAMETER: '8"', INSTALLDATE: 39312000000, STATUS: 'Active' },
          path,
        ),
        line({ FACILITYID: 'B', MATERIAL: 'PVC', DIAMETER: '12in', STATUS: 'Abandoned' }, path),
        line(
          { FACILITYID: 'C', MATERIAL: ' ', DIAMETER: '2\'-0" x 3\'-0"', STATUS: 'Active' },
          [path, path],
          'MultiLineString',
        ),
      ),
    );
    const [first, second] = featuresOf(pipes);
    expect(first?.properties).toEqual({
      kind: 'drain',
      id: 'A',
      material: 'VCP',
      size_mm: 203.2,
      installed: '1971-04-01',
    });
    expect(second?.properties['id']).toBe('C-1');
    expect(pipes.report).toMatchObject({ rows: 3, taken: 2, features: 3, aside: 1 });
    for (const reason of ['not-in-use', 'parts-split', 'size-box', 'material-missing'])
      expect(countOf(pipes, reason), reason).toBe(1);
  });

  it('with no material, size or age and all ids 0 is taken all the same', async () => {
    // as in the Vermont town's sewer lines (public domain, DOI 10.5281/zenodo.11508708)
    const properties = {
      OBJECTID: 433361,
      Type: 3,
      Status: 'E',
      MapDate: 39312000000,
      SystemType: 'Wastewater',
      Audience: ' ',
    };
    const features = [1, 2].map(() => ({ ...line(properties, path), id: 0 }));
    const pipes = await taken('sewer.geojson', file(...features));
    expect(pipes.report.taken).toBe(2);
    expect(countOf(pipes, 'material-missing')).toBe(2);
    expect(countOf(pipes, 'size-missing')).toBe(2);
    expect(featuresOf(pipes)[0]?.properties).toMatchObject({ carries: 'foul' });
    expect(new Set(featuresOf(pipes).map((f) => f.properties['id'])).size).toBe(2);
  });
});

describe('other formats', () => {
  // the grid of New York in feet, as ESRI writes it beside a shapefile
  const PRJ =
    'PROJCS["NAD_1983_StatePlane_New_York_Long_Island_FIPS_3104_Feet",GEOGCS["GCS_North_American_1983",DATUM["D_North_American_1983",SPHEROID["GRS_1980",6378137.0,298.257222101]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]],PROJECTION["Lambert_Conformal_Conic"],PARAMETER["False_Easting",984250.0],PARAMETER["False_Northing",0.0],PARAMETER["Central_Meridian",-74.0],PARAMETER["Standard_Parallel_1",40.66666666666666],PARAMETER["Standard_Parallel_2",41.03333333333333],PARAMETER["Latitude_Of_Origin",40.16666666666666],UNIT["Foot_US",0.3048006096012192]]';

  it('zipped shapefile, put where its projection file says', async () => {
    const zip = zippedPoints([[956424.2066, 168759.486]], ['Ulmus pumila'], PRJ);
    const [tree] = featuresOf(await taken('trees.zip', zip));
    expect(tree?.properties['species']).toBe('Ulmus pumila');
    const [lon, lat] = (tree?.geometry.coordinates ?? []) as number[];
    expect(lon).toBeCloseTo(-74.10024691, 5);
    expect(lat).toBeCloseTo(40.6298386, 5);
  });

  it('KML and zipped KML', async () => {
    const kml =
      '<?xml version="1.0"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document><Placemark><ExtendedData><Data name="species"><value>Acer rubrum</value></Data><Data name="dbh_in"><value>10</value></Data></ExtendedData><Point><coordinates>-71.2,40.6,0</coordinates></Point></Placemark></Document></kml>';
    for (const file of [
      await taken('a.kml', kml),
      await taken('a.kmz', zipSync({ 'doc.kml': strToU8(kml) })),
    ]) {
      expect(featuresOf(file)[0]).toMatchObject({
        properties: { species: 'Acer rubrum', dbh_cm: 25.4 },
        geometry: { coordinates: [-71.2, 40.6] },
      });
    }
  });

  it('GPX: a walked track as a line', async () => {
    const gpx =
      '<?xml version="1.0"?><gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><trk><name>tail</name><trkseg><trkpt lat="40.6" lon="-71.2"/><trkpt lat="40.601" lon="-71.2"/></trkseg></trk></gpx>';
    const file = await taken('walk.gpx', gpx);
    expect(file.report).toMatchObject({ what: 'drain', taken: 1 });
  });

  it('one feature a line, broken lines counted', async () => {
    const feature = JSON.stringify({
      type: 'Feature',
      properties: { spc_latin: 'Acer rubrum', tree_dbh: 10 },
      geometry: { type: 'Point', coordinates: [-71.2, 40.6] },
    });
    const file = await taken('trees.ndjson', `${feature}\n{"broken\n${feature}\n`);
    expect(file.report).toMatchObject({ rows: 3, taken: 2 });
    expect(countOf(file, 'broken-row')).toBe(1);
  });

  it('says what it cannot take apart', async () => {
    await expect(taken('a.geojson', 'hello')).rejects.toThrow('not JSON');
    await expect(taken('a.shp', 'xx')).rejects.toThrow('zip its');
    await expect(taken('a.zip', zipSync({ 'readme.txt': strToU8('hi') }))).rejects.toThrow(
      'nothing in the archive',
    );
    await expect(taken('a.kml', '<!DOCTYPE k [<!ENTITY a "b">]><kml/>')).rejects.toThrow('entities');
  });
});

describe('a site file', () => {
  const of = (text: string, name = 'x.geojson') => ({ name, bytes: new TextEncoder().encode(text) });
  it('is left to the core; a town file is not', () => {
    expect(isSiteFile('{"type":"FeatureCollection","rootreach":{},"features":[]}')).toBe(true);
    const feature = (properties: object) =>
      JSON.stringify({
        type: 'FeatureCollection',
        features: [{ type: 'Feature', properties, geometry: null }],
      });
    expect(needsTakingIn(of(feature({ species: 'Acer', dbh_cm: 20 })))).toBe(false);
    expect(needsTakingIn(of(feature({ BOTANICAL_NAME: 'Acer', DBH_TRUNK: 20 })))).toBe(true);
    expect(needsTakingIn(of(feature({ kind: 'tree', BOTANICAL_NAME: 'Acer' })))).toBe(false);
    expect(needsTakingIn(of('a,b\n', 'x.csv'))).toBe(true);
    expect(needsTakingIn(of('not json'))).toBe(false);
  });
});
