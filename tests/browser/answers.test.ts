import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { axeViolations, type Screen, screensOf, startBrowser, visit } from './visit.js';

const dist = fileURLToPath(new URL('../../apps/map/dist', import.meta.url));

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

const raise = async (page: Page, screen: Screen) => {
  if (screen === 'phone') await page.locator('.handle').click();
};

/** Score of every stretch that is listed, by the names of the rows. */
const listed = (page: Page) => page.locator('.row').allTextContents();
const lookAhead = (page: Page) => page.getByText('Look ahead: other years').click();

/** A line and a tree of which nothing is known. */
const BLIND = JSON.stringify({
  type: 'FeatureCollection',
  rootreach: { units: 'us' },
  features: [
    {
      type: 'Feature',
      properties: { kind: 'drain', id: 'main' },
      geometry: {
        type: 'LineString',
        coordinates: [
          [-93, 45],
          [-92.9998, 45],
        ],
      },
    },
    {
      type: 'Feature',
      properties: { kind: 'tree', id: 't1' },
      geometry: { type: 'Point', coordinates: [-92.9999, 45.00002] },
    },
  ],
});

for (const screen of screensOf('desk')) {
  describe(`the answers on a ${screen}`, () => {
    it('speak for another year, by keys too, and come back to today', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      await raise(page, screen);
      const today = await listed(page);
      await lookAhead(page);
      const slider = page.getByRole('slider', { name: 'Years from today' });
      expect(await slider.getAttribute('aria-valuetext')).toBe('Today');
      await slider.focus();
      for (let i = 0; i < 10; i++) await page.keyboard.press('ArrowRight');
      const year = new Date().getFullYear() + 10;
      expect(await slider.getAttribute('aria-valuetext')).toBe(`In ${year}, 10 years from today`);
      await page.getByText(`As it would be in ${year} if nobody did anything`).waitFor();
      await expect.poll(() => listed(page)).not.toEqual(today);
      expect(await axeViolations(page)).toEqual([]);
      await page.locator('.row').first().click();
      expect(await page.locator('.odds-likely').textContent()).toContain(`within the 10 years from ${year}`);
      await page.getByRole('button', { name: 'Back to today' }).click();
      await page.locator('.back').click();
      await expect.poll(() => listed(page)).toEqual(today);
      expect(await page.locator('.what-if').count()).toBe(0);
      expect(errors).toEqual([]);
      await page.close();
    });

    it('tell what would be if every line were dug up and cleared', async () => {
      const { page } = await visit(browser, server.address, screen);
      await raise(page, screen);
      const before = await page.locator('h1').first().textContent();
      await lookAhead(page);
      await page.locator('.ahead-cleared input').check();
      await page.getByText('if every line were dug up and cleared of roots this year').first().waitFor();
      // the clock stands at nought for every line: less to act on
      await expect.poll(() => page.locator('h1').first().textContent()).not.toBe(before);
      await page.getByRole('button', { name: 'Back to how it is' }).click();
      await expect.poll(() => page.locator('h1').first().textContent()).toBe(before);
      await page.close();
    });

    it('show what would change a stretch, each as from and to', async () => {
      const { page } = await visit(browser, server.address, screen);
      await raise(page, screen);
      await page.locator('.row').first().click();
      const falls = await page.locator('.driver .number').allTextContents();
      expect(falls.length).toBeGreaterThan(2);
      const score = Number(/Score (\d+)/.exec((await page.locator('.odds .quiet').textContent()) ?? '')?.[1]);
      for (const text of falls) {
        const [, from, to] = /^(\d+) → (\d+)$/.exec(text) ?? [];
        expect(Number(from)).toBe(score);
        expect(Number(to)).toBeLessThan(score);
      }
      const to = falls.map((text) => Number(text.split('→ ')[1]));
      expect(to).toEqual([...to].sort((a, b) => a - b));
      expect(await axeViolations(page)).toEqual([]);
      await page.close();
    });

    it('admit that they cannot say, name what would help most, and lead to it', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      await page.setInputFiles('input[type=file]', {
        name: 'blind.geojson',
        mimeType: 'application/json',
        buffer: Buffer.from(BLIND),
      });
      await raise(page, screen);
      await page.locator('.row', { hasText: 'Can’t say' }).first().click();
      const missing = page.locator('.missing');
      await missing.waitFor();
      expect(await page.locator('.odds').count()).toBe(0);
      expect(await missing.locator('.gap').first().textContent()).toContain(
        'Most would help: say what the pipe is made of',
      );
      expect(await axeViolations(page)).toEqual([]);
      await missing.getByRole('button').first().click();
      await page.locator('.form').getByLabel('Pipe', { exact: true }).selectOption('clay');
      await page.locator('.place').first().click();
      await page.locator('.odds').waitFor();
      expect(errors).toEqual([]);
      await page.close();
    });
  });
}
