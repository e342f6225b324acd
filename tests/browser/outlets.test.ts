import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { handOn, middleOf, type Spot } from './hand.js';
import { button, fitting, keysOn, level, lotWithTree, place, show } from './plan-line.js';
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

/** Cells of one row of the table of ways, by the row's name. */
const row = async (page: Page, name: string): Promise<string[]> =>
  page
    .locator('.route-table tbody tr')
    .filter({ has: page.getByRole('rowheader', { name, exact: true }) })
    .locator('td')
    .allTextContents();
const numberIn = (text: string | undefined): number => Number((text ?? '').replace(/[^\d.]/g, ''));
const badges = (page: Page) =>
  page.locator('.route-to').evaluateAll((all) => all.map((one) => (one as HTMLElement).dataset['badge']));

for (const [screen, scheme] of looksOf(['phone', 'light'], ['desk', 'dark'])) {
  describe(`a choice of outlets on a ${screen}, ${scheme}`, () => {
    it('is tapped, the planner takes the nearest, and follows an outlet that is moved or taken away', async () => {
      const { page, errors, strangers } = await lotWithTree(browser, server.address, screen, scheme);
      const { at, halfWidth } = await middleOf(page.locator('.pane-circles path').first());
      const { tap, drag } = handOn(page, screen);
      const spot = (east: number, south: number): Spot => [
        at[0] + east * halfWidth,
        at[1] + south * halfWidth,
      ];
      // the first outlet lies behind the tree, the second as far from the start as the tree's branches reach
      const [start, far, near] = [spot(-1.1, -0.9), spot(1.1, 0.9), spot(-1.1, 0.1)];
      await button(page, 'Tap the plan').first().click();
      await tap(start);
      await page.getByText('Tap where it comes out.').waitFor();
      await tap(far);
      await page.locator('.route-to').waitFor();
      await show(page);
      // one outlet is not worth a row
      expect(await row(page, 'Comes out at')).toEqual([]);
      const [farLength] = await row(page, 'Length');
      const [farPrice] = await row(page, 'Price to lay it');

      await button(page, 'One more outlet').click();
      await page.getByText('Tap where it comes out.').waitFor();
      const anywhere = spot(0.6, 1.3);
      await tap(anywhere);
      await expect.poll(() => badges(page)).toEqual(['1', '2']);
      await drag(anywhere, near);
      const targets = page.locator('.route-places button, .route-places select');
      for (const box of await targets.evaluateAll((all) => all.map((one) => one.getBoundingClientRect())))
        expect(box.height).toBeGreaterThanOrEqual(44);
      expect(await axeViolations(page)).toEqual([]);

      await show(page);
      const outlets = await row(page, 'Comes out at');
      expect(outlets[0]).toBe('outlet 2');
      const [nearLength] = await row(page, 'Length');
      // as the crow flies: lengths go as pixels do, and no way is shorter
      const straight = ([x, y]: Spot) => Math.hypot(x - start[0], y - start[1]);
      expect(numberIn(nearLength) / numberIn(farLength)).toBeLessThan(1.1 * (straight(near) / straight(far)));
      const [nearPrice] = await row(page, 'Price to lay it');
      expect(numberIn(nearPrice)).toBeLessThan(numberIn(farPrice));
      expect(await axeViolations(page)).toEqual([]);

      // the near one is carried off across the tree: the other is nearer then, and all ways shown follow
      await drag(near, spot(1.3, 1.4));
      await expect.poll(async () => (await row(page, 'Comes out at'))[0]).toBe('outlet 1');
      // over a lattice that reaches further
      const [carriedPrice] = await row(page, 'Price to lay it');
      expect(numberIn(carriedPrice) / numberIn(farPrice)).toBeCloseTo(1, 1);

      await button(page, 'Remove: Where it comes out, 1').click();
      await expect.poll(() => page.locator('.route-to').count()).toBe(1);
      await button(page, 'One more outlet').click();
      await tap(spot(0, 1.3));
      await button(page, 'One more outlet').click();
      await tap(spot(-1.3, 1.3));
      await button(page, 'One more outlet').click();
      await tap(near);
      await expect.poll(() => badges(page)).toEqual(['1', '2', '3', '4']);
      expect(await button(page, 'One more outlet').count()).toBe(0);
      await show(page);
      // the fourth is nearest to the start, and no tree stands between
      expect((await row(page, 'Comes out at'))[0]).toBe('outlet 4');

      await button(page, 'Put it on the sketch').click();
      await page.locator('.row').first().waitFor();
      expect(await page.locator('.headline').textContent()).toMatch(/1 line, .+ 1 tree/);
      await page.keyboard.press('Control+z');
      await expect.poll(() => page.locator('.row').count()).toBe(0);
      await page.keyboard.press('Control+Shift+z');
      await page.locator('.row').first().waitFor();
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });
  });
}

/** A basin, and two outlets: the nearer stands 2 m above it, the further 1 m below. */
const withLevels = () => {
  const [from, high, low] = [
    [-93.1, 45],
    [-93.09985, 45],
    [-93.1003, 45],
  ] as const;
  const [second] = [[-93.10002, 45.00008]] as const;
  const features = [
    fitting('IN', 'basin', from),
    fitting('IN2', 'basin', second),
    fitting('HIGH', 'outlet', high),
    fitting('LOW', 'outlet', low),
    level('at the basin', from, 10),
    level('at the second', second, 10),
    level('at the nearer', high, 12),
    level('at the further', low, 9),
    {
      type: 'Feature',
      properties: { kind: 'tree', id: 'oak', species: 'Quercus alba', dbh_cm: 50 },
      geometry: { type: 'Point', coordinates: [-93.10015, 45.00015] },
    },
  ];
  const text = JSON.stringify({ type: 'FeatureCollection', rootreach: { units: 'us' }, features });
  return { name: 'two-outlets.geojson', mimeType: 'application/json', buffer: Buffer.from(text) };
};

describe('outlets that are chosen from the list', () => {
  it('are offered once each; water goes to the one that it can fall to, from one start and from two', async () => {
    const { page, errors } = await visit(browser, server.address, 'desk', 'light');
    await page.setInputFiles('#open-files', withLevels());
    await page.locator('.headline', { hasText: '1 tree' }).waitFor();
    await place(page, 'New line').click();
    await page.getByLabel('Where the water comes in').selectOption('IN');
    await page.getByLabel('Where it comes out').selectOption('HIGH');
    await button(page, 'One more outlet').click();
    const second = page.getByLabel('Where it comes out, 2', { exact: true });
    expect(await second.locator('option').allTextContents()).not.toContain('outlet HIGH');
    await second.selectOption('LOW');
    await show(page);
    // 9 m is 1 m below the basin; to 12 m no pipe falls by itself
    expect(new Set(await row(page, 'Comes out at'))).toEqual(new Set(['outlet 2 (LOW)']));

    await button(page, 'One more start').click();
    await page.getByLabel('Where the water comes in, 2', { exact: true }).selectOption('IN2');
    await button(page, /Show the ways|Work out again/).click();
    const lines = page.locator('.route-lines li b');
    await lines.first().waitFor();
    const names = await lines.allTextContents();
    expect(names.filter((name) => name.endsWith('to outlet 2 (LOW)')).length).toBeGreaterThan(0);
    expect(names.filter((name) => name.includes('HIGH'))).toEqual([]);
    expect(await axeViolations(page)).toEqual([]);
    expect(errors).toEqual([]);
    await page.close();
  });
});

describe('outlets by keys alone', () => {
  it('are put and moved without looking for the focus, and one is taken', async () => {
    const { page, errors } = await lotWithTree(browser, server.address, 'desk', 'light');
    const { press } = keysOn(page);
    const focused = () =>
      page.evaluate(() => {
        const { activeElement: on } = document;
        return on instanceof HTMLElement ? (on.dataset['handle'] ?? on.textContent) : null;
      });
    const move = async (key: string, times: number) => {
      for (let i = 0; i < times; i++) await page.keyboard.press(`Shift+${key}`);
    };
    await press('Tap the plan');
    await press('Set it mid-plan, then move it');
    // the button comes again for the outlet, and has the focus
    await expect.poll(focused).toBe('Set it mid-plan, then move it');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('to');
    await move('ArrowRight', 12);
    await page.locator('.route-from').focus();
    await move('ArrowLeft', 12);
    await press('One more outlet');
    await expect.poll(focused).toBe('Set it mid-plan, then move it');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('to2');
    await move('ArrowLeft', 12);
    await move('ArrowDown', 5);
    await press('Show the ways');
    await page.locator('.route-table').waitFor();
    expect((await row(page, 'Comes out at'))[0]).toBe('outlet 2');
    await press('Remove: Where it comes out, 2');
    await expect.poll(() => page.locator('.route-to').count()).toBe(1);
    // what had the focus is gone: it is on what is left of the outlets
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
    await show(page);
    expect(await row(page, 'Comes out at')).toEqual([]);
    await press('Put it on the sketch');
    await page.locator('.row').first().waitFor();
    expect(errors).toEqual([]);
    await page.close();
  });
});
