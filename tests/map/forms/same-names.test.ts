import { describe, expect, it } from 'vitest';
import { en } from '../../../apps/map/src/words/en.js';
import { issueLine, plainIssues } from '../../../packages/cli/src/print/issues.js';
import { lineName, whereOf } from '../../../packages/cli/src/print/where.js';
import { wordIssue } from '../../../packages/core/src/explain/issue-words.js';
import { rank } from '../../../packages/core/src/risk/rank.js';
import { readSite } from '../../../packages/core/src/validate/read-site.js';
import { siteText } from '../site-text.js';

const AS_OF = '2026-11-25';
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe.each(['corner-lot', 'small-campus', 'french-drain-plan'] as const)('the stretches of %s', (name) => {
  const { site } = readSite([siteText(name)]);
  const { segments } = rank(site, { asOf: AS_OF });

  it.each(['us', 'metric'] as const)(
    'are called the same on the page and on the terminal, in %s units',
    (units) => {
      expect(segments.length).toBeGreaterThan(5);
      for (const segment of segments) {
        const terminal = `${whereOf(segment, units)}, on ${lineName(segment)}`;
        expect(plain(en.list.row(segment, units))).toBe(terminal);
        expect(plain(en.card.where(segment, units))).toBe(whereOf(segment, units));
        expect(terminal).toMatch(/^from .+, (up|down)stream, /);
      }
    },
  );
});

describe('what is said of the input', () => {
  const text = JSON.stringify({
    type: 'FeatureCollection',
    features: [
      {
        type: 'Feature',
        properties: { kind: 'tree', id: 'fat', dbh_cm: 250 },
        geometry: { type: 'Point', coordinates: [-93, 45] },
      },
    ],
  });
  const { issues } = readSite([{ name: 'yard.geojson', text }]);

  it('is the same line on the page and on the terminal', () => {
    const issue = issues.find(({ code }) => code === 'odd-diameter');
    if (!issue) throw new Error('the trunk was not doubted');
    const page = `${en.issues.severity[issue.severity].toLowerCase()} ${en.issues.row(issue, wordIssue(issue, 'us'))}`;
    expect(page.replace(/\s+/g, ' ')).toBe(issueLine(issue, 'us').replace(/\s+/g, ' '));
    // 250 cm / 2.54
    expect(page).toContain('98 in');
    expect(plainIssues([issue])[0]?.message).toContain('2.5 m');
  });
});
