import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rank, readSite, type Site } from '../../packages/core/src/index.js';
import { crewSheet, homeownerPage, lotPicture, wordsFor } from '../../packages/report/src/index.js';
import { ownerInput, siteOf, TAIL_FULL } from './inputs.js';
import { parsed } from './page-text.js';
import { strangers } from './strangers.js';

const BITS = [
  '</text><script>x</script>',
  '"><img src=x onerror=alert(1)>',
  "' onload='x",
  '<!--',
  ']]>',
  '</style><style>*{display:none}</style>',
  '&lt;b&gt;',
  '&#60;',
  '\u0000\u0007',
  '\ud800',
  '\u202e',
  '<svg/onload=x>',
  '{{x}}',
  'a b',
];

const hostile = fc
  .array(fc.oneof(fc.constantFrom(...BITS), fc.string({ unit: 'binary', maxLength: 6 })), {
    minLength: 1,
    maxLength: 4,
  })
  .map((bits) => bits.join(''));

const base = siteOf('corner-lot', TAIL_FULL);

/** The lot with every name that a person writes made hostile; ids that other features point to stay. */
const renamed = (name: string): Site => ({
  ...base,
  name,
  trees: base.trees.map((tree) => ({ ...tree, id: `${tree.id}${name}`, condition: name, note: name })),
  drains: base.drains.map((drain) => ({ ...drain, name })),
  obstacles: base.obstacles.map((obstacle) => ({ ...obstacle, id: `${obstacle.id}${name}`, name })),
  findings: base.findings.map((finding, i) => ({
    ...finding,
    photo: i === 0 ? `data:image/png;base64,${name}` : name,
  })),
});

describe('names that try to be markup', () => {
  it('stay text on the page, the sheet and the plan', () => {
    fc.assert(
      fc.property(hostile, fc.constantFrom('en', 'es'), (name, language) => {
        const site = renamed(name);
        const input = { ...ownerInput(site, { language, choices: false }), by: name };
        const plan = lotPicture({ ...input, words: wordsFor(language) });
        for (const markup of [homeownerPage(input), crewSheet(input), plan]) {
          expect(strangers(markup)).toEqual([]);
        }
      }),
      { numRuns: 25, seed: 4 },
    );
  });

  it('come out of a file as they went in', () => {
    const name = '<b>Tom & "Ann"</b>';
    const text = JSON.stringify({
      type: 'FeatureCollection',
      rootreach: { schema: 1, name },
      features: [
        {
          type: 'Feature',
          properties: { kind: 'drain', id: 'a', name },
          geometry: {
            type: 'LineString',
            coordinates: [
              [-70.6, 40.5],
              [-70.5999, 40.5],
            ],
          },
        },
      ],
    });
    const { site } = readSite([{ name: 'x', text }]);
    const result = rank(site, { asOf: '2026-11-25' });
    const segment = result.segments[0];
    if (segment === undefined) throw new Error('no stretch');
    const page = homeownerPage({ site, result, segment, odds: [], language: 'en', units: 'us' });
    expect(parsed(page).textContent).toContain(name);
  });
});
