import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { en } from '../../apps/map/src/words/en.js';
import { late } from '../../apps/map/src/words/en-late.js';
import { es } from '../../apps/map/src/words/es.js';
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

/** Texts of the English catalogue that the Spanish one says in another way. */
function onlyEnglish(english: unknown, spanish: unknown): string[] {
  if (typeof english === 'string') return english === spanish ? [] : [english];
  if (typeof english !== 'object' || english === null) return [];
  return Object.entries(english).flatMap(([key, value]) =>
    onlyEnglish(value, (spanish as Readonly<Record<string, unknown>> | undefined)?.[key]),
  );
}

const ENGLISH = new Set(onlyEnglish({ ...en, ...late }, es));
/** Words that no Spanish sentence has: they give away what is put together from parts. */
const GIVEN_AWAY =
  /\b(?:the|from|with|within|and|of|or|upstream|downstream|first|trunk|tree|line|stretch|roots?|joints?|pipe|years?|about|not|now|price|days?)\b/i;

/** The corner lot with Spanish names, so that any English left is the page's own. */
function site(): string {
  const lot = JSON.parse(
    readFileSync(new URL('../../data/sites/corner-lot.geojson', import.meta.url), 'utf8'),
  );
  lot.rootreach.name = 'Lote inventado';
  lot.rootreach.notes = 'Inventado.';
  for (const [index, { properties }] of lot.features.entries()) {
    if (properties.name !== undefined) properties.name = `Nombre ${index}`;
    if (properties.note !== undefined) properties.note = 'Inventado.';
  }
  return JSON.stringify(lot);
}

/** All that can be read or heard on the page, one text node or name each. */
const said = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const texts: string[] = [document.title];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const element = walker.currentNode.parentElement;
      if (!element || element.closest('script, style')) continue;
      if (element.tagName === 'OPTION' || element.checkVisibility({ checkVisibilityCSS: true })) {
        texts.push(walker.currentNode.textContent ?? '');
      }
    }
    for (const name of ['aria-label', 'title', 'placeholder', 'aria-roledescription']) {
      for (const element of document.querySelectorAll(`[${name}]`))
        texts.push(element.getAttribute(name) ?? '');
    }
    return [...new Set(texts.map((text) => text.replaceAll('\u00a0', ' ').trim()))].filter(
      (one) => one !== '',
    );
  });

/** English that is left, with the names of languages and botanical names set aside. */
async function english(page: Page): Promise<string[]> {
  const texts = await said(page);
  return texts.filter((one) => ENGLISH.has(one) || GIVEN_AWAY.test(one));
}

for (const [screen, scheme] of looksOf(['phone', 'dark'], ['desk', 'light'])) {
  describe(`Spanish on a ${screen}, ${scheme}`, () => {
    it('is chosen once, fills every place of the page, and is kept', async () => {
      const { page, errors, strangers } = await visit(browser, server.address, screen, scheme);
      const buffer = Buffer.from(site());
      await page.setInputFiles('#open-files', { name: 'lote.geojson', mimeType: 'application/json', buffer });
      await page.locator('.headline', { hasText: 'Lote inventado' }).waitFor();
      const place = (index: number) => page.locator('.place').nth(index).click();
      await place(4);
      await page.locator('.radio-choice', { hasText: 'Español' }).click();
      await page.locator('.place', { hasText: 'Buscar' }).waitFor();
      expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
      expect.soft(await english(page)).toEqual([]);
      expect(await axeViolations(page)).toEqual([]);
      // five places side by side, none cut off
      const cut = await page
        .locator('.place')
        .evaluateAll((places) => places.filter((one) => one.scrollWidth > one.clientWidth + 1).length);
      expect(cut).toBe(0);

      await place(0);
      await page.locator('.row').first().waitFor();
      for (const fold of await page.locator('#sheet-body summary').all()) await fold.click();
      expect.soft(await english(page)).toEqual([]);
      expect(await axeViolations(page)).toEqual([]);
      await page.locator('.row').first().click();
      await page.locator('.card').waitFor();
      expect.soft(await english(page)).toEqual([]);
      await page.locator('.card .line-button').first().click();
      await page.locator('.card .facts').waitFor();
      expect.soft(await english(page)).toEqual([]);

      await place(1);
      await page.locator('.tool-strip').waitFor();
      for (const fold of await page.locator('#sheet-body summary').all()) await fold.click();
      expect.soft(await english(page)).toEqual([]);
      expect(await axeViolations(page)).toEqual([]);

      await place(2);
      await page.getByLabel('Dónde entra el agua').selectOption('B1');
      await page.getByLabel('Dónde sale').selectOption('O2');
      await page.getByRole('button', { name: 'Mostrar los caminos' }).click();
      await page.locator('.route-table').waitFor();
      for (const fold of await page.locator('.routes summary').all()) await fold.click();
      expect.soft(await english(page)).toEqual([]);
      expect(await axeViolations(page)).toEqual([]);

      await place(3);
      await page.getByRole('button', { name: 'Comparar las opciones' }).click();
      await page.locator('.choice').first().waitFor();
      for (const fold of await page.locator('.works summary').all()) await fold.click();
      await page.getByRole('button', { name: 'Hacer la lista' }).click();
      await page.locator('.works-looks li').first().waitFor();
      expect.soft(await english(page)).toEqual([]);
      expect(await axeViolations(page)).toEqual([]);

      await page.reload();
      await page.locator('.place', { hasText: 'Buscar' }).waitFor();
      expect(await page.evaluate(() => document.documentElement.lang)).toBe('es');
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });
  });
}
