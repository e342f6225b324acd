import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { startBrowser, visit } from './visit.js';

const dist = fileURLToPath(new URL('file:///tmp/eng/dist/'));
const campus = readFileSync(new URL('../../data/sites/small-campus.geojson', import.meta.url), 'utf8');

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

/** Counts answers of the model as they come onto the page. */
const countAnswers = (page: Page) =>
  page.evaluate(() => {
    const counted = window as unknown as { answers: number };
    counted.answers = 0;
    new PerformanceObserver((list) => {
      counted.answers += list.getEntries().length;
    }).observe({ type: 'measure' });
  });

const answers = (page: Page) => page.evaluate(() => (window as unknown as { answers: number }).answers);

/** Waits until nothing has been answered for a while. */
async function settled(page: Page): Promise<void> {
  for (let before = -1; before !== (await answers(page)); ) {
    before = await answers(page);
    await page.waitForTimeout(600);
  }
}

describe('dragging a tree', () => {
  it('re-scores on the way and changes what is drawn in place', async () => {
    const { page, errors } = await visit(browser, server.address, 'desk');
    const buffer = Buffer.from(campus);
    await page.setInputFiles('input[type=file]', {
      name: 'campus.geojson',
      mimeType: 'application/json',
      buffer,
    });
    await page.locator('.headline', { hasText: /campus/i }).waitFor();
    await countAnswers(page);
    await settled(page);
    await page.getByRole('button', { name: 'Draw', exact: true }).first().click();
    const boxes = await page.locator('.stem-hit').evaluateAll((stems) =>
      stems.map((stem) => {
        const { x, y, width, height } = stem.getBoundingClientRect();
        return [x + width / 2, y + height / 2] as const;
      }),
    );
    const [x, y] = boxes.find(([bx, by]) => bx > 200 && bx < 600 && by > 250 && by < 600) ?? [0, 0];
    await page.mouse.click(x, y);
    await page.locator('.handle-mark').first().waitFor();
    await settled(page);
    // every element that is drawn now is marked; those that are there afterwards without a mark were made anew
    await page.evaluate(() => {
      for (const one of document.querySelectorAll('.pane-lines path, .pane-circles path, .pane-wash path')) {
        one.setAttribute('data-before', '');
      }
    });
    const labels = () =>
      page.locator('.stretch-hit').evaluateAll((hits) => hits.map((hit) => hit.getAttribute('aria-label')));
    const before = await labels();
    const count = await answers(page);
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 1; i <= 12; i++) await page.mouse.move(x + 3 * i, y + 2 * i);
    await page.waitForFunction((n) => (window as unknown as { answers: number }).answers > n, count);
    await page.mouse.up();
    await settled(page);
    const after = await labels();
    expect(after).toHaveLength(before.length);
    expect(after).not.toEqual(before);
    const drawn = await page.evaluate(() => {
      const all = '.pane-lines path, .pane-circles path, .pane-wash path';
      return [
        document.querySelectorAll(all).length,
        document.querySelectorAll(`:is(${all}):not([data-before])`).length,
      ];
    });
    // a stretch that came into another band is drawn with another pen
    expect(drawn[1]).toBeLessThan((drawn[0] as number) / 10);
    expect(errors).toEqual([]);
    await page.close();
  });
});
