import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { screens, screensOf, startBrowser } from './visit.js';

const dist = process.env.ROOTREACH_PAGE ?? fileURLToPath(new URL('../../apps/map/dist', import.meta.url));

/** Below this a layout shift does not count as one that a reader notices: a tenth of what web vitals call good (0.1). */
const MOST_SHIFT = 0.01;

/** What was seen of the page while it started, by a script that runs before its own. */
interface Seen {
  shift: number;
  /** After each task that changed the page: were there lines on the plan, rows in the list? */
  readonly states: { readonly lines: boolean; readonly rows: boolean }[];
}

function watch(): void {
  const seen: Seen = { shift: 0, states: [] };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries())
      seen.shift += (entry as PerformanceEntry & { value: number }).value;
  }).observe({ type: 'layout-shift', buffered: true });
  new MutationObserver(() => {
    const has = (selector: string) => document.querySelector(selector) !== null;
    seen.states.push({ lines: has('.stretch-hit'), rows: has('.row') });
  }).observe(document, { childList: true, subtree: true });
}

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

for (const screen of screensOf('phone')) {
  describe(`the first site on a ${screen}`, () => {
    it('is drawn before the list is made, and nothing jumps', async () => {
      const page = await browser.newPage(screens[screen]);
      await page.addInitScript(watch);
      await page.goto(server.address);
      await page.locator('.row').first().waitFor();
      await page.locator('.tag').first().waitFor();
      const { shift, states } = await page.evaluate(() => (window as unknown as { seen: Seen }).seen);
      expect(states.some(({ lines, rows }) => lines && !rows)).toBe(true);
      expect(shift).toBeLessThan(MOST_SHIFT);
      await page.close();
    });
  });
}
