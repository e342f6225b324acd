import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { axeViolations, looksOf, startBrowser, visit } from './visit.js';

const dist = process.env.ROOTREACH_PAGE ?? fileURLToPath(new URL('../../apps/map/dist', import.meta.url));

let browser: Browser;
let server: Awaited<ReturnType<typeof serveFolder>>;

beforeAll(async () => {
  browser = await startBrowser();
  server = await serveFolder(dist);
});

afterAll(async () => {
  await browser.close();
  server.close();
});

/** Twelve trees of 10 to 21 inches in two rows along a line, one of them dead, and a row without a position. */
const TREES = [
  'id,species,diameter_in,status,latitude,longitude',
  ...Array.from({ length: 12 }, (_, i) => {
    const side = i % 2 === 0 ? 4e-5 : -4e-5;
    return `t${i},Acer rubrum,${10 + i},${i === 11 ? 'dead' : 'alive'},${(45 + side).toFixed(6)},${(-93.1 + i * 4e-5).toFixed(6)}`;
  }),
  't99,Acer rubrum,12,alive,,',
].join('\n');

const LINES = JSON.stringify({
  type: 'FeatureCollection',
  rootreach: { units: 'us' },
  features: [
    {
      type: 'Feature',
      properties: { kind: 'drain', id: 'main', name: 'main line', material: 'clay', size_in: 6 },
      geometry: {
        type: 'LineString',
        coordinates: [
          [-93.1, 45],
          [-93.0996, 45],
        ],
      },
    },
  ],
});

const file = (name: string, text: string, mimeType: string) => ({
  name,
  mimeType,
  buffer: Buffer.from(text),
});
const headline = (page: Page) => page.locator('.headline').textContent();
const odds = (page: Page) => page.locator('.row-odds').allTextContents();
const find = (page: Page) => page.locator('.place').first().click();

for (const [screen, scheme] of looksOf(['phone', 'light'], ['desk', 'dark'])) {
  describe(`a table of trees on a ${screen}, ${scheme}`, () => {
    it('opens beside a file of lines, says how it was read, and is read again another way', async () => {
      const { page, errors, strangers } = await visit(browser, server.address, screen, scheme);
      await page.setInputFiles('#open-files', [
        file('trees.csv', TREES, 'text/csv'),
        file('lines.geojson', LINES, 'application/geo+json'),
      ]);
      await page.locator('.taken').waitFor();
      expect(await headline(page)).toMatch(/1 line, .* 11 trees/);
      expect(await page.locator('.taken').textContent()).toContain(
        'trees.csv: 13 rows, 11 taken, 2 set aside.',
      );
      expect(await axeViolations(page)).toEqual([]);
      const inches = await odds(page);

      await page.getByRole('button', { name: 'See how the table was read' }).click();
      await page.getByRole('heading', { name: 'How the table was read' }).waitFor();
      const report = page.getByRole('region', { name: 'How the table was read' });
      expect(await report.textContent()).toMatch(/trunk diameter: diameter_in in in/);
      await report.locator('summary', { hasText: 'What became of the rows' }).click();
      expect(await report.textContent()).toMatch(/1 row, set aside: a stump, a dead tree.*row 13/s);
      expect(await report.textContent()).toMatch(/1 row, set aside: no position/);
      await report.locator('summary', { hasText: 'Columns' }).click();
      expect(await page.getByLabel('Through the trunk', { exact: true }).inputValue()).toBe('diameter_in');
      const unit = page.getByLabel('Unit of Through the trunk');
      expect(await unit.inputValue()).toBe('in');
      expect(await axeViolations(page)).toEqual([]);

      // the same numbers as centimetres are trunks of less than half the width
      await unit.selectOption('cm');
      await page.getByRole('button', { name: 'Read it again like this' }).click();
      await find(page);
      await expect.poll(() => odds(page)).not.toEqual(inches);
      expect(await headline(page)).toMatch(/1 line, .* 11 trees/);

      // another site has no table
      await page.locator('.site-picker').selectOption('corner-lot');
      await page.locator('.headline', { hasText: /elm/ }).waitFor();
      expect(await page.locator('.taken').count()).toBe(0);
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });
  });
}
