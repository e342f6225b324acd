import type { Browser, Page } from 'playwright-core';
import { expect } from 'vitest';
import { handOn, type Spot } from './hand.js';
import { type Screen, type Visit, visit } from './visit.js';

export const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
export const place = (page: Page, name: string) => page.locator('.place', { hasText: name });
export const figures = (page: Page) => page.locator('.route-table tbody').textContent();
/** The two ends, the bends and the ways, as they are drawn. */
export const drawn = (page: Page) => page.locator('.leaflet-ways-pane path');

/** A blank lot with one tree in its middle, and the place where new lines are planned. */
export async function lotWithTree(
  browser: Browser,
  address: string,
  screen: Screen,
  scheme: 'light' | 'dark',
): Promise<Visit> {
  const there = await visit(browser, address, screen, scheme);
  const { page } = there;
  await place(page, 'Draw').click();
  await button(page, 'Blank lot in feet').click();
  await page.locator('.tool-strip').waitFor();
  await button(page, 'Tree').click();
  await page.locator('.tool-actions').waitFor();
  const plan = await page.locator('.plan-sheet').boundingBox();
  const [x, y] = [(plan?.x ?? 0) + (plan?.width ?? 0) / 2, (plan?.y ?? 0) + 300];
  await handOn(page, screen).tap([x, y]);
  await button(page, 'Done').click();
  await place(page, 'New line').click();
  await page.locator('.routes').waitFor();
  await page.locator('.pane-circles path').first().waitFor({ state: 'attached' });
  return there;
}

/** Has the ways worked out, and waits for them. */
export async function show(page: Page): Promise<void> {
  await button(page, /Show the ways|Work out again/).click();
  await page.locator('.route-table').waitFor();
}

/** A feature of a site file: the height of the ground, or a fitting. */
export const level = (id: string, [lon, lat]: Spot, elevationM: number) => ({
  type: 'Feature',
  properties: { kind: 'level', id, elevation_m: elevationM },
  geometry: { type: 'Point', coordinates: [lon, lat] },
});
export const fitting = (id: string, type: string, [lon, lat]: Spot) => ({
  type: 'Feature',
  properties: { kind: 'fitting', id, type },
  geometry: { type: 'Point', coordinates: [lon, lat] },
});

/** Buttons pressed and handles moved by keys alone. */
export const keysOn = (page: Page) => ({
  press: async (name: string | RegExp) => {
    await button(page, name).first().focus();
    await page.keyboard.press('Enter');
  },
  move: async (handle: string, key: string, times: number) => {
    await page.locator(handle).focus();
    for (let i = 0; i < times; i++) await page.keyboard.press(`Shift+${key}`);
    expect(await page.evaluate(() => document.activeElement?.className)).toContain(handle.slice(1));
  },
});
