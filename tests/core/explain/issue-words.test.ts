import { describe, expect, it } from 'vitest';
import { wordIssue } from '../../../packages/core/src/explain/issue-words.js';
import type { Issue, IssueCode, IssueDetail } from '../../../packages/core/src/model/issue.js';

/** One of every code; the type asks for all of them. */
const samples: { readonly [Code in IssueCode]: Omit<Extract<IssueDetail, { code: Code }>, 'code'> } = {
  'not-json': { reason: 'the text breaks off' },
  'not-geojson': { rule: 'features must be a list' },
  'ring-orientation': { ring: 'exterior' },
  'ring-too-small': {},
  'bare-geometry': { type: 'Point' },
  'nested-collection': {},
  'single-member': { type: 'MultiLineString' },
  'null-geometry': {},
  'crs-member': { name: 'EPSG:25832' },
  'extra-dimensions': { dimensions: 3 },
  'excess-precision': { decimals: 14 },
  'excess-vertices': { count: 1300 },
  holes: {},
  'duplicate-nodes': {},
  'self-intersection': {},
  antimeridian: {},
  'bbox-order': {},
  'not-finite': {},
  'out-of-range': { lon: 181, lat: 50 },
  'projected-coordinates': { x: 432_000, y: 5_411_000 },
  'zero-length': {},
  'too-long': { lengthKm: 22_000 },
  'bad-value': { expected: 'a number', got: '"thick"' },
  'misspelt-property': { name: 'instaled', meant: 'installed' },
  'odd-depth': { depthM: 5.5 },
  'missing-value': { expected: 'an elevation' },
  'wrong-geometry': { expected: 'Point', got: 'LineString' },
  'units-disagree': { first: 'piece_m', second: 'piece_ft' },
  'unit-guessed': { column: 'dbh', unit: 'inches' },
  'odd-diameter': { diameterM: 2.5 },
  'duplicate-id': { id: 'elm', renamed: 'elm-2' },
  'kind-guessed': { kind: 'tree' },
  'kind-unknown': { kind: 'lamp-post' },
  'species-unknown': { text: 'zzqx' },
  'species-uncertain': { text: 'red mapel', taken: 'acer-rubrum' },
  'material-unknown': { text: 'cheese' },
  'material-uncertain': { text: 'plastic', taken: 'pvc-thin-wall' },
  'not-a-live-tree': { text: 'Stump' },
  'fitting-off-line': { distanceM: 2.53 },
  'finding-misplaced': { reason: { kind: 'no-line', line: 'main' } },
  'flow-assumed': {},
  'nothing-to-score': { missing: 'trees' },
  'more-of-the-same': { of: 'bad-value', count: 30 },
};

const place = { file: 'f', index: 0, feature: null, path: '' };
const said = (detail: object): string => wordIssue({ ...detail, severity: 'warning', place } as Issue);

describe('the words for an issue', () => {
  it.each(Object.entries(samples))('say what %s is', (code, fields) => {
    const words = said({ code, ...fields });
    expect(words.length).toBeGreaterThan(15);
    expect(words).not.toMatch(/undefined|null|NaN|\[object/);
    // what was found is named; a distance is rounded to what a tape shows
    for (const value of Object.values(fields)) {
      if (typeof value === 'string' && !['exterior', 'trees'].includes(value)) expect(words).toContain(value);
    }
  });

  it('are different for every code', () => {
    const all = Object.entries(samples).map(([code, fields]) => said({ code, ...fields }));
    expect(new Set(all).size).toBe(all.length);
  });

  it('tell apart what one code stands for', () => {
    expect(said({ code: 'ring-orientation', ring: 'interior' })).toContain('inner ring');
    expect(said({ code: 'kind-unknown', kind: '' })).toContain('nothing tells');
    expect(said({ code: 'crs-member', name: '' })).not.toContain('()');
    expect(said({ code: 'nothing-to-score', missing: 'drains' })).toContain('drain line');
    expect(said({ code: 'fitting-off-line', distanceM: 2.53 })).toContain('2.5 m');
    expect(said({ code: 'fitting-off-line', distanceM: null })).not.toContain('null');
    expect(said({ code: 'odd-diameter', diameterM: 2.5 })).toContain('used');
    expect(said({ code: 'odd-diameter', diameterM: 4.5 })).toContain('not measured');
  });

  it('speak the units of the reader', () => {
    const inUnits = (detail: object, units: 'us' | 'metric') =>
      wordIssue({ ...detail, severity: 'warning', place } as Issue, units);
    // 2.54 m are 100 in, 3.048 m are 10 ft, 16.09344 km are 10 miles, all exact by the foot of 1959
    const reason = { kind: 'past-end', line: 'main', byM: 3.048, parts: false };
    for (const [detail, us, metric] of [
      [{ code: 'odd-diameter', diameterM: 2.54 }, '100 in', '2.5 m'],
      [{ code: 'odd-depth', depthM: 6.096 }, '20 ft', '6.1 m'],
      [{ code: 'fitting-off-line', distanceM: 3.048 }, '10 ft', '3.0 m'],
      [{ code: 'fitting-off-line', distanceM: null }, 'three feet', 'a metre'],
      [{ code: 'too-long', lengthKm: 16.09344 }, '10 miles', '16 km'],
      [{ code: 'finding-misplaced', reason }, 'ran 10 ft past', 'ran 3.0 m past'],
    ] as const) {
      expect(inUnits(detail, 'us')).toContain(us);
      expect(inUnits(detail, 'us')).not.toMatch(/\d k?m\b|metre/);
      expect(inUnits(detail, 'metric')).toContain(metric);
    }
  });

  it('never throw anything away without saying so', () => {
    const setAside: IssueCode[] = [
      'not-geojson',
      'out-of-range',
      'projected-coordinates',
      'bad-value',
      'missing-value',
      'wrong-geometry',
      'antimeridian',
      'finding-misplaced',
      'fitting-off-line',
      'not-a-live-tree',
      'zero-length',
      'too-long',
    ];
    for (const code of setAside) expect(said({ code, ...samples[code] })).toMatch(/set aside|left out/);
  });
});
