// The overlap step through PostGIS: 64-gons, a GiST index and intersections in a database started for it. Loading the
// rows is not counted. Prints one JSON line; says so and ends with 0 where PostGIS is not installed.
//   node tests/bench/overlap-postgis.mjs FOLDER     with trees.geojson and lines.geojson of a bench town
import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { planeFor } from '@rootreach/core';

const [folder] = process.argv.slice(2);
const INSTALLED = '/usr/lib/postgresql';
const version = existsSync(INSTALLED) ? readdirSync(INSTALLED).sort().at(-1) : undefined;
if (version === undefined) {
  console.log(JSON.stringify({ missing: 'postgresql-15-postgis-3 is not installed' }));
  process.exit(0);
}

const bin = join(INSTALLED, version, 'bin');
const home = mkdtempSync(join(tmpdir(), 'rootreach-postgis-'));
chmodSync(home, 0o777);
// a database server refuses to run as root
const asUser = process.getuid?.() === 0 ? ['su', 'postgres', '-s', '/bin/sh', '-c'] : ['sh', '-c'];
const shell = (command) =>
  execFileSync(asUser[0], [...asUser.slice(1), command], {
    encoding: 'utf8',
    stdio: ['pipe', 'pipe', 'pipe'],
  });
const sql = (text) => {
  const file = join(home, 'run.sql');
  writeFileSync(file, text);
  return shell(`${bin}/psql -q -At -h ${home} -d postgres -v ON_ERROR_STOP=1 -f ${file}`);
};

const features = (name) => JSON.parse(readFileSync(join(folder, `${name}.geojson`), 'utf8')).features;
const lines = features('lines').map((f) => f.geometry.coordinates);
const plane = planeFor([lines[0][0], lines.at(-1)[0]]);
const xy = ([lon, lat]) => [
  (lon - plane.lon) * plane.metresPerDegreeLon,
  (lat - plane.lat) * plane.metresPerDegreeLat,
];
writeFileSync(
  join(home, 'trees.csv'),
  features('trees')
    .map((f) => [...xy(f.geometry.coordinates), Math.min(15, 0.12 * f.properties.dbh_cm)].join(','))
    .join('\n'),
);
writeFileSync(
  join(home, 'lines.csv'),
  lines.map((path) => `"LINESTRING(${path.map((p) => xy(p).join(' ')).join(',')})"`).join('\n'),
);

try {
  shell(`${bin}/initdb -D ${home}/data -A trust > /dev/null`);
  shell(
    `${bin}/pg_ctl -D ${home}/data -l ${home}/log -w -o "-k ${home} -c listen_addresses=''" start > /dev/null`,
  );
  sql(`CREATE EXTENSION postgis;
    CREATE TABLE tree (x float8, y float8, r float8);
    CREATE TABLE raw (wkt text);
    COPY tree FROM '${home}/trees.csv' CSV;
    COPY raw FROM '${home}/lines.csv' CSV;
    CREATE TABLE line AS SELECT wkt::geometry AS g FROM raw;
    VACUUM ANALYZE;`);
  const from = performance.now();
  const answer = sql(`CREATE TABLE zone AS SELECT ST_Buffer(ST_MakePoint(x, y), r, 16) AS g FROM tree;
    CREATE INDEX ON zone USING gist (g);
    ANALYZE zone;
    SELECT count(*) FILTER (WHERE m > 0), sum(m) FROM (
      SELECT ST_Length(ST_Intersection(line.g, zone.g)) AS m FROM line JOIN zone ON ST_Intersects(line.g, zone.g)
    ) each;`);
  const ms = performance.now() - from;
  const [pairs, metres] = answer.trim().split('|').map(Number);
  console.log(JSON.stringify({ ms, got: { pairs, metres } }));
} finally {
  spawnSync(asUser[0], [...asUser.slice(1), `${bin}/pg_ctl -D ${home}/data -m immediate stop`]);
  rmSync(home, { recursive: true, force: true });
}
