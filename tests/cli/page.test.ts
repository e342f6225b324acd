import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PIXEL } from '../report/inputs.js';
import { CORNER_LOT, call, callOn } from './call.js';
import { smallSite } from './small-site.js';

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'page-'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const h1 = (page: string): string => /<h1>(.*?)<\/h1>/.exec(page)?.[1] ?? '';

describe('page', () => {
  it('prints one whole HTML file about the worst stretch', async () => {
    const { code, out } = await call(['page', CORNER_LOT]);
    expect(code).toBe(0);
    expect(out).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
    expect(out).toMatch(/<\/html>\n$/);
    expect(out).toContain('old clay tail');
    expect(h1(out)).toBe('Roots are likely to get into this pipe.');
    expect(out).toContain('What can be done');
  });

  it('writes to a file and says so', async () => {
    const path = join(folder, 'page.html');
    const { out, err } = await call([
      'page',
      CORNER_LOT,
      '--lang',
      'es',
      '--by',
      'Nosotros <1>',
      '--out',
      path,
    ]);
    expect(out).toBe('');
    expect(err).toContain(`Wrote ${path}.`);
    const page = readFileSync(path, 'utf8');
    expect(page).toContain('<html lang="es">');
    expect(page).toContain('por Nosotros &lt;1&gt;.');
  });

  it('takes the stretch asked for, and says what there is where there is none', async () => {
    const { out } = await call(['page', CORNER_LOT, '--segment', 'collector/3']);
    expect(out).toContain('west collector');
    const line = await call(['page', CORNER_LOT, '--segment', 'collector', '--json']);
    const ranked = await call(['rank', CORNER_LOT, '--json', '--top', '35']);
    const worst = (JSON.parse(ranked.out) as { segments: { id: string; drainId: string }[] }).segments.find(
      ({ drainId }) => drainId === 'collector',
    );
    expect((JSON.parse(line.out) as { segment: { id: string } }).segment.id).toBe(worst?.id);
    const wrong = await call(['page', CORNER_LOT, '--segment', 'collector/99']);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toMatch(/there is no segment 'collector\/99'; nearest: /);
  });

  it('makes the sheet for the crew', async () => {
    const { code, out } = await call(['page', CORNER_LOT, '--crew']);
    expect(code).toBe(0);
    expect(h1(out)).toMatch(/^Stretch tail\/\d$/);
    expect(out).toContain('Before you backfill');
  });

  it('makes it for the work that is named, without a price and whatever the prices are', async () => {
    const { code, out, err } = await callOn(smallSite(), 'page', '--crew', '--choice', 'replace-heavier');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Quantities: New, stronger pipe');
    expect(out).not.toContain('$');
    const advised = await callOn(smallSite(), 'page', '--crew');
    expect(advised.err).toMatch(/weighed with invented prices: [a-z-]+\./);
    const wrong = await call(['page', CORNER_LOT, '--crew', '--choice', 'wish']);
    expect([wrong.code, wrong.err]).toEqual([2, expect.stringContaining("there is no choice 'wish': ")]);
    expect((await call(['page', CORNER_LOT, '--choice', 'spot-repair'])).err).toContain('add --crew');
  });

  it('shows no invented prices for a real lot, and says so', async () => {
    const { out, err } = await callOn(smallSite(), 'page');
    expect(out).not.toContain('What can be done');
    expect(err).toContain('--prices');
    const priced = await callOn(smallSite(), 'page', '--prices', 'demo');
    expect(priced.out).toContain('These prices are invented');
  });

  it('takes prices from a list of the firm', async () => {
    const path = join(folder, 'prices.csv');
    writeFileSync(
      path,
      'code,text,unit,price,currency,dated,note\nset-up,to the site,job,100.00,EUR,2026-10-01,\n',
    );
    const { out } = await callOn(smallSite(), 'page', '--prices', path);
    expect(out).toContain('Prices as of October 1, 2026.');
    expect(out).not.toContain('These prices are invented');
    const missing = await callOn(smallSite(), 'page', '--prices', join(folder, 'none.csv'));
    expect(missing.code).toBe(2);
    expect(missing.err).toContain('no such file');
  });

  it('prints its parts as JSON', async () => {
    const { out } = await call(['page', CORNER_LOT, '--json']);
    const parts = JSON.parse(out) as { segment: { id: string }; odds: { yearsAhead: number }[] };
    expect(parts.segment.id).toMatch(/^tail\//);
    expect(parts.odds.map(({ yearsAhead }) => yearsAhead)).toEqual([0, 1, 2, 3, 5, 7, 10, 15, 20, 25]);
  });
});

describe('photos named by findings', () => {
  const seen = (photo: string): string => {
    const site = JSON.parse(smallSite()) as { features: unknown[] };
    const finding = {
      type: 'Feature',
      properties: { kind: 'finding', drain: 'main', from: 'start', at_m: 4, seen: 'fine', photo },
      geometry: null,
    };
    return JSON.stringify({ ...site, features: [...site.features, finding] });
  };
  const pageOf = async (photo: string) => {
    const path = join(folder, 'yard.geojson');
    writeFileSync(path, seen(photo));
    return call(['page', path]);
  };

  it('are taken in where they lie beside the site file', async () => {
    writeFileSync(join(folder, 'reel.png'), Buffer.from(PIXEL.slice(PIXEL.indexOf(',') + 1), 'base64'));
    expect((await pageOf('reel.png')).out).toContain(`<img src="${PIXEL}"`);
  });

  it('are shown where the file holds their data', async () => {
    expect((await pageOf(PIXEL)).out).toContain(`<img src="${PIXEL}"`);
  });

  it.each(['../reel.png', '/etc/hostname', 'not-there.png', 'yard.geojson'])(
    'are not taken from elsewhere, nor what is no image: %s',
    async (photo) => {
      const { code, out, err } = await pageOf(photo);
      expect(code).toBe(0);
      expect(out).not.toContain('<img');
      expect(err).toContain(`Photo ${photo} was not taken`);
    },
  );
});
