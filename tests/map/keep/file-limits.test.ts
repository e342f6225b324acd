import { describe, expect, it } from 'vitest';
import { isEditable, whyNotLoaded, whyNotRead } from '../../../apps/map/src/keep/file-limits.js';
import { siteText } from '../site-text.js';

const file = (text: string) => [{ name: 'a.geojson', text }];

describe('what the page takes', () => {
  it('is every demonstration site', () => {
    for (const name of ['corner-lot', 'french-drain-plan', 'small-campus'] as const) {
      expect(whyNotRead([siteText(name)])).toBeNull();
      expect(isEditable([siteText(name)])).toBe(true);
    }
  });

  it('is not nested a hundred deep, in lists, in objects or in both', () => {
    const nested = (n: number, open: string, close: string) => open.repeat(n) + close.repeat(n);
    expect(whyNotRead(file(nested(100, '[', ']')))).toBeNull();
    for (const [open, close] of [
      ['[', ']'],
      ['{"a":', '}'],
      ['[{"a":', '}]'],
    ] as const) {
      expect(whyNotRead(file(nested(101, open, close)))).toMatch(/nested too deeply/);
      expect(whyNotRead(file(nested(50_000, open, '')))).toMatch(/nested too deeply/);
    }
  });

  it('may hold brackets and quotes in its texts', () => {
    expect(
      whyNotRead(file(JSON.stringify({ a: '['.repeat(500), b: `\\"${'{'.repeat(500)}\\\\` }))),
    ).toBeNull();
  });

  it('is at most sixty million characters or bytes', () => {
    expect(whyNotRead(file(' '.repeat(60_000_001)))).toMatch(/too large/);
    expect(whyNotLoaded('a.geojson', 60_000_001)).toMatch(/^a\.geojson is too large/);
    expect(whyNotLoaded('a.geojson', 60_000_000)).toBeNull();
  });

  it('can be edited up to four million characters, its pictures not counted', () => {
    expect(isEditable(file('x'.repeat(4_000_001)))).toBe(false);
    const picture = `data:image/jpeg;base64,${'A'.repeat(3_000_000)}`;
    expect(isEditable(file(JSON.stringify({ photo: picture, other: picture })))).toBe(true);
    expect(isEditable([{ name: 'town.geojson', file: new Blob(['{}']) }])).toBe(false);
  });
});
