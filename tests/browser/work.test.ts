import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { HtmlValidate } from 'html-validate';
import ICAL from 'ical.js';
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

const place = (page: Page, name: string) => page.locator('.place', { hasText: name });
const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const field = (page: Page, label: string) => page.locator('.form').getByLabel(label, { exact: true });

interface Seen {
  readonly line: string;
  readonly from: string;
  readonly at: string;
  readonly to?: string;
  readonly seen: 'full' | 'fine';
}

/** Writes down what the camera saw, from the card of the line's worst stretch. */
async function enter(page: Page, { line, from, at, to, seen }: Seen): Promise<void> {
  await place(page, 'Find').click();
  const back = page.locator('.back');
  if (await back.isVisible()) await back.click();
  const row = page.locator('.row', { hasText: `on ${line}` }).first();
  await row.click();
  await button(page, 'Add what the camera saw').click();
  await field(page, 'Camera went in at').selectOption(from);
  await field(page, 'Counter where it begins').fill(at);
  if (to !== undefined) await field(page, 'Counter where it ends').fill(to);
  await field(page, 'What was there').selectOption(seen);
  await page.locator('.landing', { hasText: line }).waitFor();
}

async function download(page: Page, name: string | RegExp): Promise<{ name: string; text: string }> {
  const [file] = await Promise.all([page.waitForEvent('download'), button(page, name).click()]);
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
}

const cents = (money: string | null): number =>
  Math.round(100 * Number((money ?? '').replace(/[^\d.]/g, '')));

const validator = new HtmlValidate({ extends: ['html-validate:recommended', 'html-validate:document'] });
/** Everything that would be fetched from somewhere, or run. */
const OUTSIDE =
  /<script|<link|\bsrc="(?!data:)|url\((?!['"]?(?:data:|#))|@import|https?:\/\/(?!www\.w3\.org\/)/i;

for (const [screen, scheme] of looksOf(['phone', 'light'], ['desk', 'dark'])) {
  describe(`a filled tail on a ${screen}, ${scheme}`, () => {
    it('is replaced: seen, weighed, offered, handed out, and looked at again', async () => {
      const { page, errors, strangers } = await visit(browser, server.address, screen, scheme);
      if (screen === 'phone') await page.locator('.handle').click();
      await enter(page, { line: 'old clay tail', from: 'O1', at: '14', to: '31', seen: 'full' });
      await enter(page, { line: 'west collector', from: 'B1', at: '24', seen: 'fine' });
      await place(page, 'Find').click();
      const back = page.locator('.back');
      if (await back.isVisible()) await back.click();
      const worst = page.locator('.row').first();
      await expect.poll(() => worst.textContent()).toMatch(/old clay tail.*filled with roots/s);

      // weigh
      await place(page, 'Work').click();
      await page.locator('.works').waitFor();
      expect(await axeViolations(page)).toEqual([]);
      await page.getByLabel('Stretch', { exact: true }).selectOption({ index: 0 });
      await button(page, 'Weigh the choices').click();
      const advised = page.locator('.choice').first();
      await advised.waitFor();
      expect(await page.locator('.works').textContent()).toMatch(/Weighed for old clay tail/);
      expect(await advised.textContent()).toMatch(/New, stronger pipe.*our advice/);
      expect(await advised.textContent()).toContain('a basin where the lines meet');
      // common practice: what roots have filled is replaced, not cleared
      await page.locator('summary', { hasText: 'Not possible here' }).click();
      const not = page.locator('.works-part li', { hasText: 'Clear it, again and again' });
      expect(await not.textContent()).toContain('roots fill the pipe');
      expect(await page.locator('.choice', { hasText: 'Clear it' }).count()).toBe(0);

      // the offer
      const offer = page.locator('.offer').first();
      await page.locator('.works-part summary', { hasText: 'New, stronger pipe' }).click();
      await offer.waitFor();
      const total = () => offer.locator('tfoot tr').last().locator('td').textContent();
      const before = cents(await total());
      const parts = await offer.locator('tbody td:last-child').allTextContents();
      expect(parts.reduce((sum, part) => sum + cents(part), 0)).toBe(before);
      const basin = offer.locator('tbody', { hasText: /basin/i }).first();
      const price = basin.locator('input');
      await price.fill('500');
      await price.blur();
      await expect.poll(async () => cents(await total())).not.toBe(before);
      const [amount] = (await basin.locator('td').first().textContent())?.match(/[\d.]+/) ?? [];
      expect(cents(await basin.locator('td').last().textContent())).toBe(Math.round(Number(amount) * 50_000));
      await expect.poll(() => advised.textContent()).toContain('our advice');
      expect(await axeViolations(page)).toEqual([]);
      const csv = await download(page, 'Save the offer (CSV)');
      expect(csv.name).toBe('offer.csv');
      expect(csv.text).toContain('500');

      // on paper
      await page.getByLabel('Whose estimate it is').fill('An invented firm');
      const owner = await download(page, 'Page for the owner');
      expect(owner.name).toMatch(/\.html$/);
      expect(owner.text).not.toMatch(OUTSIDE);
      expect(owner.text).toContain('An invented firm');
      expect(validator.validateStringSync(owner.text).results.flatMap(({ messages }) => messages)).toEqual(
        [],
      );
      const crew = await download(page, 'Sheet for the crew');
      expect(crew.text).not.toMatch(OUTSIDE);
      expect(crew.text).toMatch(/basin/i);

      // come back
      await button(page, 'Make the list').click();
      await page.locator('.works-looks li').first().waitFor();
      expect(await axeViolations(page)).toEqual([]);
      const calendar = await download(page, 'Save for the calendar (.ics)');
      // RFC 5545, read by ical.js
      const events = new ICAL.Component(ICAL.parse(calendar.text)).getAllSubcomponents('vevent');
      expect(events.length).toBeGreaterThan(0);
      const uids = events.map((event) => String(event.getFirstPropertyValue('uid')));
      expect(new Set(uids).size).toBe(uids.length);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });
  });
}
