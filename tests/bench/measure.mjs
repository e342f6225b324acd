// One measured task in a process of its own, so that no task warms or burdens the next. Prints one JSON line.
import { readFileSync, writeFileSync } from 'node:fs';
import { rank, readSite } from '@rootreach/core';
import { overlapOurs } from './overlap-ours.mjs';

const [task, folder] = process.argv.slice(2);
const read = (name) => readFileSync(`${folder}/${name}.geojson`, 'utf8');

/** Circles of 12 trunk diameters, 15 m at most, and paths: what the overlap tasks share, made before the clock. */
function scene() {
  const trees = JSON.parse(read('trees')).features.map((f) => ({
    position: f.geometry.coordinates,
    radiusM: Math.min(15, 0.12 * f.properties.dbh_cm),
  }));
  return { trees, lines: JSON.parse(read('lines')).features.map((f) => f.geometry.coordinates) };
}

const tasks = {
  floor: () => () => JSON.parse(read('trees')).features.length + JSON.parse(read('lines')).features.length,
  rank: () => () => {
    const { site } = readSite([
      { name: 'trees', text: read('trees') },
      { name: 'lines', text: read('lines') },
    ]);
    const result = rank(site, { asOf: '2026-11-25', top: 1000 });
    writeFileSync(`${folder}/worst.json`, JSON.stringify(result));
    return result.totals.segments;
  },
  'overlap-ours': () => {
    const { trees, lines } = scene();
    return () => overlapOurs(trees, lines);
  },
  'overlap-turf': async () => {
    const { overlapTurf } = await import('./overlap-turf.mjs');
    const { trees, lines } = scene();
    return () => overlapTurf(trees, lines);
  },
  'overlap-geos': async () => {
    const { makeOverlapGeos } = await import('./overlap-geos.mjs');
    const run = await makeOverlapGeos();
    const { trees, lines } = scene();
    return () => run(trees, lines);
  },
};

const run = await tasks[task]();
const from = performance.now();
const got = run();
const ms = performance.now() - from;
process.stdout.write(`${JSON.stringify({ ms, peakMb: process.resourceUsage().maxRSS / 1024, got })}\n`);
