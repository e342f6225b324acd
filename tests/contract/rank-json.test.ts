import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type RankResult, rank, readSite } from '../../packages/core/src/index.js';
import { root } from '../house/source-files.js';

const AS_OF = '2026-11-25';
const SITES = ['corner-lot', 'french-drain-plan', 'small-campus'];

function rankOf(name: string): RankResult {
  const text = readFileSync(`${root}/data/sites/${name}.geojson`, 'utf8');
  return rank(readSite([{ name, text }]).site, { asOf: AS_OF });
}

const results = new Map(SITES.map((name) => [name, rankOf(name)]));
const result = (name: string): RankResult => results.get(name) as RankResult;

/** Shape that files and scripts may rely on; a result may say more. */
const NUMBER = expect.any(Number);
const TEXT = expect.any(String);
const BAND = expect.stringMatching(/^(leave|watch|inspect|act|cannot-say)$/);

const SEGMENT = {
  rank: NUMBER,
  id: expect.stringMatching(/^.+\/\d+$/),
  drainId: TEXT,
  startM: NUMBER,
  endM: NUMBER,
  lengthM: NUMBER,
  score: NUMBER,
  chance: { low: NUMBER, likely: NUMBER, high: NUMBER },
  band: BAND,
  overlapM: { dripline: NUMBER, trunkMultiple: NUMBER, structural: NUMBER, reach: NUMBER },
  joints: { count: NUMBER, perM: NUMBER, basis: TEXT },
  material: TEXT,
  expectedEntries: { joints: NUMBER, slots: NUMBER, crush: NUMBER },
  reach: { from: TEXT, direction: expect.stringMatching(/^(up|down)stream$/), atM: NUMBER },
  nextLook: expect.stringMatching(/^\d{4}(-\d{2})?$/),
  geometry: { type: 'LineString', coordinates: expect.any(Array) },
};

describe.each(SITES)('the ranking of %s', (name) => {
  it('has the members of the contract', () => {
    expect(result(name)).toMatchObject({
      schema: 1,
      model: { version: TEXT, fingerprint: expect.stringMatching(/^[0-9a-f]{8}$/) },
      asOf: AS_OF,
      horizonYears: 10,
      segments: expect.any(Array),
      totals: expect.any(Object),
      issues: expect.any(Array),
      cautions: expect.any(Array),
    });
  });

  it('has the fields of the contract on every segment', () => {
    const { segments } = result(name);
    expect(segments.length).toBeGreaterThan(5);
    for (const segment of segments) {
      expect(segment).toMatchObject(SEGMENT);
      expect(segment).toHaveProperty('known');
      for (const tree of segment.trees)
        expect(tree).toMatchObject({ id: TEXT, share: NUMBER, distanceM: NUMBER });
      for (const driver of segment.drivers)
        expect(driver).toMatchObject({ change: TEXT, scoreWithout: NUMBER });
      for (const each of segment.assumed) {
        expect(each).toMatchObject({ path: expect.stringMatching(/^(trees|drains)\/.+\/\w+$/), why: TEXT });
        expect(['number', 'string']).toContain(typeof each.value);
      }
    }
  });

  it('is plain JSON: written and read again it is the same', () => {
    expect(JSON.parse(JSON.stringify(result(name)))).toStrictEqual(result(name));
  });

  it('holds no number that is none', () => {
    const odd: string[] = [];
    const look = (value: unknown, path: string): void => {
      if (typeof value === 'number' && !Number.isFinite(value)) odd.push(path);
      if (typeof value === 'object' && value !== null) {
        for (const [key, inner] of Object.entries(value)) look(inner, `${path}/${key}`);
      }
    };
    look(result(name), '');
    expect(odd).toEqual([]);
  });

  it('gives every driver a lower score than the segment has, the strongest first', () => {
    let drivers = 0;
    for (const { score, drivers: found } of result(name).segments) {
      const without = found.map((driver) => driver.scoreWithout);
      for (const each of without) expect(each).toBeLessThan(score);
      expect(without).toEqual([...without].sort((a, b) => a - b));
      drivers += without.length;
    }
    expect(drivers).toBeGreaterThan(0);
  });

  it('adds up: scores are chances, entries are shared out among trees, lengths cover the lines', () => {
    const { segments, lines, totals } = result(name);
    for (const s of segments) {
      expect(s.score).toBeCloseTo(100 * s.chance.likely, 9);
      expect(s.endM - s.startM).toBeCloseTo(s.lengthM, 9);
      expect(s.trees.reduce((sum, tree) => sum + tree.share, 0)).toBeLessThanOrEqual(1 + 1e-9);
      for (const metres of Object.values(s.overlapM)) expect(metres).toBeLessThanOrEqual(s.lengthM + 1e-9);
    }
    for (const line of lines) {
      const own = segments.filter((s) => s.drainId === line.drainId);
      expect(own.reduce((sum, s) => sum + s.lengthM, 0)).toBeCloseTo(line.lengthM, 6);
    }
    const { joints, slots, crush } = segments.reduce(
      (sum, { expectedEntries: e }) => ({
        joints: sum.joints + e.joints,
        slots: sum.slots + e.slots,
        crush: sum.crush + e.crush,
      }),
      { joints: 0, slots: 0, crush: 0 },
    );
    expect(totals.expectedEntries).toBeCloseTo(joints + slots + crush, 9);
    expect(totals.segments).toBe(segments.length);
    const bands = Object.values(totals.byBand);
    expect(bands.reduce((sum, band) => sum + band.segments, 0)).toBe(totals.segments);
    expect(bands.reduce((sum, band) => sum + band.lengthM, 0)).toBeCloseTo(totals.lengthM, 6);
  });

  it('counts the joints of a line once over its segments', () => {
    const { segments, lines } = result(name);
    for (const line of lines) {
      const bySegments = segments
        .filter((s) => s.drainId === line.drainId)
        .reduce((sum, s) => sum + s.joints.count, 0);
      expect(bySegments).toBe(line.joints.reduce((sum, joint) => sum + joint.count, 0));
    }
  });

  // where a result could lead somebody to dig, cut or saw
  it('stands beside its cautions', () => {
    const codes = result(name).cautions.map((caution) => caution.code);
    for (const code of [
      'screening-only',
      'locate-utilities',
      'trench-walls',
      'cutting-near-trunk',
      'local-code',
    ]) {
      expect(codes).toContain(code);
    }
  });
});
