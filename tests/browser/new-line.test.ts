import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { handOn, middleOf, type Spot } from './hand.js';
import { button, drawn, figures, fitting, keysOn, level, lotWithTree, place, show } from './plan-line.js';
import { serveFolder } from './static-server.js';
import { axeViolations, looksOf, type Screen, startBrowser, visit } from './visit.js';

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

/** Taps both ends under the tree's branches, one on either side of its trunk. */
async function tapEnds(page: Page, screen: Screen): Promise<void> {
  const { at, halfWidth } = await middleOf(page.locator('.pane-circles path').first());
  const { tap } = handOn(page, screen);
  await button(page, 'Tap the plan').first().click();
  await page.getByText('Tap where the water comes in.').waitFor();
  await tap([at[0] - halfWidth * 0.75, at[1] - halfWidth * 0.46]);
  await page.getByText('Tap where it comes out.').waitFor();
  await tap([at[0] + halfWidth * 0.82, at[1] + halfWidth * 0.75]);
  await page.locator('.route-to').waitFor();
}

/** Taps a point to pass, beside the tree. */
async function tapVia(page: Page, screen: Screen): Promise<void> {
  const { at, halfWidth } = await middleOf(page.locator('.pane-circles path').first());
  await button(page, 'A point to pass').click();
  await handOn(page, screen).tap([at[0] - halfWidth * 0.6, at[1] + halfWidth * 0.9]);
  await page.locator('.route-via').waitFor();
}

for (const [screen, scheme] of looksOf(['desk', 'dark'], ['phone', 'light'])) {
  describe(`a new line on a ${screen}, ${scheme}`, () => {
    it('goes from a blank lot to ways round the tree, a bend pulled, and a line in the ranking', async () => {
      const { page, errors, strangers } = await lotWithTree(browser, server.address, screen, scheme);
      expect(await axeViolations(page)).toEqual([]);
      await tapEnds(page, screen);
      await tapVia(page, screen);
      await show(page);
      const ways = page.locator('.route-head');
      expect(await ways.filter({ hasText: 'Through your point' }).count()).toBe(1);
      expect(await ways.count()).toBeGreaterThanOrEqual(2);
      const patterns = await page
        .locator('.route-pattern path')
        .evaluateAll((paths) => paths.map((path) => path.getAttribute('stroke-dasharray') ?? ''));
      expect(new Set(patterns).size).toBe(patterns.length);
      // each pattern of the table is on the plan too
      const onPlan = await drawn(page).evaluateAll((paths) =>
        paths.map((path) => path.getAttribute('stroke-dasharray') ?? ''),
      );
      for (const pattern of patterns) expect(onPlan).toContain(pattern);
      expect(await axeViolations(page)).toEqual([]);

      const before = await figures(page);
      const bend = page.locator('.route-bend').first();
      const { at } = await middleOf(bend);
      await handOn(page, screen).drag(at, [at[0], at[1] - 40]);
      await expect.poll(() => figures(page)).not.toBe(before);
      expect(await page.locator('.route-head').count()).toBe(await ways.count());

      await button(page, 'Put it on the sketch').click();
      await page.locator('.row').first().waitFor();
      expect(await page.locator('.headline').textContent()).toMatch(/1 line, .+ 1 tree/);
      expect(await page.locator('.leaflet-ways-pane path').count()).toBe(0);
      await page.keyboard.press('Control+z');
      await expect.poll(() => page.locator('.row').count()).toBe(0);
      await page.keyboard.press('Control+Shift+z');
      await page.locator('.row').first().waitFor();
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });

    it('says by how much the fall is short, and what would help', async () => {
      const { page, errors } = await visit(browser, server.address, screen, scheme);
      const [from, to] = [
        [-93.1, 45],
        [-93.0997, 45],
      ] as const;
      const features = [
        fitting('IN', 'basin', from),
        fitting('OUT', 'outlet', to),
        level('low', from, 10),
        level('high', to, 12),
        {
          type: 'Feature',
          properties: { kind: 'tree', id: 'oak', species: 'Quercus alba', dbh_cm: 50 },
          geometry: { type: 'Point', coordinates: [-93.09985, 45.0001] },
        },
      ];
      const text = JSON.stringify({ type: 'FeatureCollection', rootreach: { units: 'us' }, features });
      const buffer = Buffer.from(text);
      await page.setInputFiles('#open-files', {
        name: 'uphill.geojson',
        mimeType: 'application/json',
        buffer,
      });
      await page.locator('.headline', { hasText: '1 tree' }).waitFor();
      await place(page, 'New line').click();
      await page.getByLabel('Where the water comes in').selectOption('IN');
      await page.getByLabel('Where it comes out').selectOption('OUT');
      await button(page, 'Show the ways').click();
      const none = page.locator('.route-answer .known');
      await none.waitFor();
      expect(await none.textContent()).toMatch(/will not run there by itself: .*\d.* of fall is missing/);
      expect(await page.locator('.route-remedies li').count()).toBeGreaterThan(0);
      expect(await page.locator('.route-table').count()).toBe(0);
      expect(await axeViolations(page)).toEqual([]);
      expect(errors).toEqual([]);
      await page.close();
    });
  });
}

for (const [screen, scheme] of looksOf(['phone', 'light'], ['desk', 'dark'])) {
  describe(`lines from several starts on a ${screen}, ${scheme}`, () => {
    it('go from a blank lot to a shared main on the sketch, in one step that can be undone', async () => {
      const { page, errors, strangers } = await lotWithTree(browser, server.address, screen, scheme);
      const { at, halfWidth } = await middleOf(page.locator('.pane-circles path').first());
      const { tap } = handOn(page, screen);
      const spot = (east: number, south: number): Spot => [
        at[0] + east * halfWidth,
        at[1] + south * halfWidth,
      ];
      await button(page, 'Tap the plan').first().click();
      await tap(spot(-1.1, -0.5));
      await page.getByText('Tap where it comes out.').waitFor();
      await tap(spot(1.1, 0.9));
      await page.locator('.route-to').waitFor();
      await button(page, 'One more start').click();
      await page.getByText('Tap where the water comes in.').waitFor();
      await tap(spot(-1.1, 0.2));
      await expect.poll(() => page.locator('.route-from').count()).toBe(2);
      // one start too many is taken away again
      await button(page, 'One more start').click();
      await tap(spot(-0.9, 0.9));
      await expect.poll(() => page.locator('.route-from').count()).toBe(3);
      await button(page, 'Remove: Where the water comes in, 3').click();
      await expect.poll(() => page.locator('.route-from').count()).toBe(2);
      const targets = page.locator('.route-places button, .route-places select, .route-area input');
      for (const box of await targets.evaluateAll((all) => all.map((one) => one.getBoundingClientRect())))
        expect(box.height).toBeGreaterThanOrEqual(44);
      for (const entry of await page.getByLabel(/drains there/).all()) await entry.fill('600');
      await page.getByLabel(/Heaviest rain/).fill('6');
      expect(await axeViolations(page)).toEqual([]);

      await show(page);
      const ways = page.locator('.route-head');
      expect(await ways.allTextContents()).toEqual(['Shared main', 'A line for each']);
      expect(await page.locator('.route-saving').textContent()).toMatch(
        /^Shared main: \$[\d,]+ less than a line for each\.$/,
      );
      const lines = page.locator('.route-lines li');
      expect(await lines.count()).toBe(3);
      // 6 in/h on 600 ft2 are 37 gpm, on both 75
      expect(await lines.filter({ hasText: 'Branch: start 1 to meeting A' }).textContent()).toMatch(/37.gpm/);
      expect(await lines.filter({ hasText: 'Main: meeting A to outlet' }).textContent()).toMatch(/75.gpm/);
      const patterns = await drawn(page).evaluateAll((paths) =>
        paths.map((path) => path.getAttribute('stroke-dasharray') ?? ''),
      );
      const legend = await page
        .locator('.route-pattern path')
        .evaluateAll((paths) => paths.map((path) => path.getAttribute('stroke-dasharray') ?? ''));
      expect(new Set(legend).size).toBe(2);
      for (const pattern of legend) expect(patterns).toContain(pattern);
      expect(await axeViolations(page)).toEqual([]);

      const shared = await lines.allTextContents();
      await ways.filter({ hasText: 'A line for each' }).click();
      await expect.poll(() => lines.count()).toBe(2);
      await ways.filter({ hasText: 'Shared main' }).click();
      await expect.poll(() => lines.allTextContents()).toEqual(shared);

      await button(page, 'Put it on the sketch').click();
      await page.locator('.row').first().waitFor();
      expect(await page.locator('.headline').textContent()).toMatch(/3 lines, .+ 1 tree/);
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

describe('a new line by keys alone', () => {
  it('puts both ends, moves them and a bend, and goes into the ranking', async () => {
    const { page, errors } = await lotWithTree(browser, server.address, 'desk', 'light');
    const { press, move } = keysOn(page);
    await press('Tap the plan');
    await press('Set it mid-plan, then move it');
    await press('Set it mid-plan, then move it');
    await page.locator('.route-to').waitFor();
    await move('.route-from', 'ArrowLeft', 12);
    await move('.route-to', 'ArrowRight', 12);
    await press('Show the ways');
    await page.locator('.route-bend').first().waitFor();
    const before = await figures(page);
    await page.locator('.route-bend').first().focus();
    await page.keyboard.press('Shift+ArrowUp');
    await expect.poll(() => figures(page)).not.toBe(before);
    await press('Put it on the sketch');
    await page.locator('.row').first().waitFor();
    expect(errors).toEqual([]);
    await page.close();
  });

  it('puts a second start, and lines for both', async () => {
    const { page, errors } = await lotWithTree(browser, server.address, 'desk', 'light');
    const { press, move } = keysOn(page);
    await press('Tap the plan');
    await press('Set it mid-plan, then move it');
    await press('Set it mid-plan, then move it');
    await move('.route-from', 'ArrowLeft', 12);
    await move('.route-to', 'ArrowRight', 12);
    await press('One more start');
    await press('Set it mid-plan, then move it');
    await expect.poll(() => page.locator('.route-from').count()).toBe(2);
    await page.locator('.route-from[data-badge="2"]').focus();
    for (let i = 0; i < 12; i++) await page.keyboard.press('Shift+ArrowLeft');
    for (let i = 0; i < 3; i++) await page.keyboard.press('Shift+ArrowDown');
    await press('Show the ways');
    await page.locator('.route-lines li').first().waitFor();
    await press('Put it on the sketch');
    await page.locator('.row').first().waitFor();
    expect(errors).toEqual([]);
    await page.close();
  });
});
