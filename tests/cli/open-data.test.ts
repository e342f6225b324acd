import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAMPUS, call, callOn, here } from './call.js';

/*
 * Real data, where the environment variable ROOTREACH_OPEN_DATA names the folder they are in; an excerpt and
 * the invented campus stand for them everywhere else.
 */
const folder = process.env['ROOTREACH_OPEN_DATA'];

function atHand(path: string): string | null {
  const file = folder === undefined ? null : join(folder, path);
  return file !== null && existsSync(file) ? file : null;
}

/** Two features as they stand in a Vermont town's sewer lines (public domain, DOI 10.5281/zenodo.11508708). */
const EXCERPT = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      id: 0,
      geometry: {
        type: 'LineString',
        coordinates: [
          [-72.44743546803424, 43.99106166088344],
          [-72.44756667534739, 43.990391260438514],
        ],
      },
      properties: {
        OBJECTID: 433363,
        Type: 3,
        Status: 'E',
        MapDate: 39312000000,
        Audience: ' ',
        Shape_Length: 0,
      },
    },
    {
      type: 'Feature',
      id: 0,
      geometry: {
        type: 'LineString',
        coordinates: [
          [-72.44736615988216, 43.99036163934654],
          [-72.44756667534739, 43.990391260438514],
        ],
      },
      properties: {
        OBJECTID: 433509,
        Type: 3,
        Status: 'E',
        MapDate: 39312000000,
        Audience: ' ',
        Shape_Length: 0,
      },
    },
  ],
});

describe('sewer lines of a town, without material, size or year', () => {
  const file = atHand('vermont-town-sewer-excerpt/sewer_lines.geojson');
  const text = file === null ? EXCERPT : readFileSync(file, 'utf8');
  const lines = (JSON.parse(text) as { features: unknown[] }).features.length;

  it('are accepted, each with an id of its own, and what was made of them is said', async () => {
    const { code, out } = await callOn(text, 'check', '--json');
    const result = JSON.parse(out) as {
      issues: { code: string; severity: string }[];
      takenIn: { rows: number; taken: number; entries: { reason: string; count: number }[] }[];
    };
    expect(code).toBe(0);
    expect(result).toMatchObject({ features: { drain: lines }, materials: { named: 0, unknown: lines } });
    expect(result.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(result.issues.filter(({ code: c }) => c === 'duplicate-id')).toEqual([]);
    expect(result.takenIn[0]).toMatchObject({ rows: lines, taken: lines });
    expect(result.takenIn[0]?.entries).toContainEqual(
      expect.objectContaining({ reason: 'material-missing', count: lines }),
    );
  });

  it('come with what had to be assumed, each reason once', async () => {
    const { out } = await callOn(text, 'check');
    const flowing = out.replace(/\s+/g, ' ');
    for (const what of [
      'material not known',
      'year of laying not known',
      'depth not given',
      'joint not given',
    ]) {
      expect(flowing).toContain(`${lines} lines: ${what}`);
    }
  });
});

describe('a street tree inventory with lines laid beside it', () => {
  const trees = atHand('toronto-street-trees/east-york.geojson') ?? CAMPUS;
  const scratch = mkdtempSync(join(tmpdir(), 'rootreach-lines-'));
  const lines = join(scratch, 'lines.geojson');

  beforeAll(() => {
    const script = here('packages/dev/lay-lines.mjs');
    const { status } = spawnSync(process.execPath, [script, trees, '--out', lines, '--count', '40']);
    expect(status).toBe(0);
  });
  afterAll(() => rmSync(scratch, { recursive: true }));

  it('is ranked with numbers that are numbers', async () => {
    const treesOnly = JSON.parse(readFileSync(trees, 'utf8')) as {
      features: { geometry: { type: string } }[];
    };
    const points = treesOnly.features.filter(({ geometry }) => geometry.type === 'Point');
    const { out } = await call(['rank', '-', lines, '--json'], {
      stdin: () => Promise.resolve(JSON.stringify({ type: 'FeatureCollection', features: points })),
    });
    const { segments, totals } = JSON.parse(out) as {
      segments: { score: number; chance: { low: number; likely: number; high: number } }[];
      totals: { drains: number; trees: number };
    };
    expect(totals.drains).toBe(40);
    expect(totals.trees).toBeGreaterThan(100);
    expect(segments.length).toBeGreaterThan(300);
    for (const { score, chance } of segments) {
      expect(score).toBeCloseTo(100 * chance.likely, 9);
      expect(chance.low).toBeGreaterThanOrEqual(0);
      expect(chance.likely).toBeGreaterThanOrEqual(chance.low);
      expect(chance.high).toBeGreaterThanOrEqual(chance.likely);
      expect(chance.high).toBeLessThanOrEqual(1);
    }
  });
});
