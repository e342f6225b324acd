import { Buffer } from 'node:buffer';
import { fileURLToPath } from 'node:url';
import { crc32, deflateSync } from 'node:zlib';
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

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const head = Buffer.alloc(4);
  head.writeUInt32BE(data.length);
  const tail = Buffer.alloc(4);
  tail.writeUInt32BE(crc32(body));
  return Buffer.concat([head, body, tail]);
}

const SECRET = 'taken at 40.600 north';

/** A PNG (ISO/IEC 15948) of one grey, with a text in it that says where it was taken. */
function png(width: number, height: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 8;
  const rows = Buffer.alloc((width + 1) * height, 0x77);
  for (let y = 0; y < height; y++) rows[y * (width + 1)] = 0;
  return Buffer.concat([
    Buffer.from('89504e470d0a1a0a', 'hex'),
    chunk('IHDR', header),
    chunk('tEXt', Buffer.from(`Comment\0${SECRET}`, 'latin1')),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

const raise = async (page: Page, screen: Screen) => {
  if (screen === 'phone') await page.locator('.handle').click();
};

/** From the worst stretch to the form of the tree that threatens it most. */
async function openTree(page: Page): Promise<void> {
  await page.locator('.row').first().click();
  await page.locator('.card .line-button').first().click();
  await page.getByRole('button', { name: 'Change this tree' }).click();
  await page.locator('.form').waitFor();
}

const field = (page: Page, label: string) => page.locator('.form').getByLabel(label, { exact: true });
const units = (page: Page, unit: 'ft' | 'm') =>
  page.locator('.units-choice', { hasText: RegExp(`^${unit}$`) }).click();
const textOf = (page: Page, place: string) => page.locator(place).first().textContent();

for (const screen of screensOf('phone')) {
  describe(`the entry forms on a ${screen}`, () => {
    it('take a girth by tape, show the trunk either way and in either unit, and keep what was typed', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      const before = await textOf(page, '.row-odds');
      await raise(page, screen);
      await openTree(page);
      const girth = field(page, 'Round the trunk');
      await girth.fill('about 22');
      await girth.blur();
      expect(await girth.inputValue()).toBe('22 in');
      expect(await page.getByLabel('Round the trunk is an estimate').isChecked()).toBe(true);
      await page.locator('.radio-choice', { hasText: 'Through it' }).click();
      // 22 in / pi
      expect(await field(page, 'Through the trunk').inputValue()).toBe('7 in');
      await page.locator('.radio-choice', { hasText: 'Round it' }).click();
      await units(page, 'm');
      // 22 in x 2.54 cm
      expect(await girth.inputValue()).toBe('55.9 cm');
      await units(page, 'ft');
      expect(await girth.inputValue()).toBe('22 in');
      await page.locator('.place').first().click();
      await page.locator('.card .facts').waitFor();
      expect((await textOf(page, '.card .facts dd'))?.replace('\u00a0', ' ')).toBe('about 7 in');
      await page.locator('.back').click();
      await expect.poll(() => textOf(page, '.row-odds')).not.toBe(before);
      expect(errors).toEqual([]);
      await page.close();
    });

    it('take several trunks', async () => {
      const { page } = await visit(browser, server.address, screen);
      await raise(page, screen);
      await openTree(page);
      await page.locator('.radio-choice', { hasText: 'Several trunks' }).click();
      const stems = field(page, 'Through each trunk');
      await stems.fill('6 + 8');
      await stems.blur();
      expect(await stems.inputValue()).toBe('6 in + 8 in');
      await page.locator('.radio-choice', { hasText: 'Through it' }).click();
      expect(await field(page, 'Through the trunk').inputValue()).toBe('');
      await page.close();
    });

    it('find a kind of tree by a few letters and keys alone', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      await raise(page, screen);
      await openTree(page);
      const box = page.getByRole('combobox', { name: 'Kind of tree' });
      await box.focus();
      await page.keyboard.press('Control+A');
      await page.keyboard.type('silver map');
      await page.locator('.option').first().waitFor();
      expect(await box.getAttribute('aria-expanded')).toBe('true');
      await page.keyboard.press('ArrowDown');
      const active = await box.getAttribute('aria-activedescendant');
      expect(await page.locator(`[id="${active}"]`).getAttribute('aria-label')).toBe(
        'silver maple, Acer saccharinum',
      );
      expect(await axeViolations(page)).toEqual([]);
      await page.keyboard.press('Enter');
      expect(await box.inputValue()).toBe('Acer saccharinum');
      expect(await box.getAttribute('aria-expanded')).toBe('false');
      await page.getByText('Taken as silver maple.').waitFor();
      await page.getByText('Don’t know what it is?').click();
      await page.locator('.radio-choice', { hasText: 'Conifer' }).click();
      await page.locator('.radio-choice', { hasText: 'Big' }).click();
      expect(await box.inputValue()).toBe('large conifer');
      await page.getByText('a guess, so the range is wider').waitFor();
      expect(errors).toEqual([]);
      await page.close();
    });

    it('say beside the field what to type, and write nothing that is not understood', async () => {
      const { page } = await visit(browser, server.address, screen);
      await raise(page, screen);
      await page.locator('.row').first().click();
      await page.getByRole('button', { name: 'Change this line' }).click();
      const depth = page
        .locator('.form')
        .getByLabel(/^Depth, upper end/)
        .first();
      const before = await depth.inputValue();
      await depth.fill('2 furlongs');
      await depth.blur();
      expect(await depth.getAttribute('aria-invalid')).toBe('true');
      const wrong = page.locator('.wrong');
      expect(await wrong.textContent()).toContain('such as 30, or 2 ft 6 in, or 0.8 m');
      expect(await depth.getAttribute('aria-describedby')).toContain((await wrong.getAttribute('id')) ?? '?');
      expect(await axeViolations(page)).toEqual([]);
      await depth.fill(`2' 6"`);
      await depth.blur();
      expect(await depth.inputValue()).toBe('30 in');
      expect(await page.locator('.wrong').count()).toBe(0);
      expect(before).not.toBe('30 in');
      await page.close();
    });

    it('take what a camera saw by the counter, with a photo, and the ranking follows', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      await raise(page, screen);
      const row = page.locator('.row', { hasText: 'on west collector' }).last();
      await row.scrollIntoViewIfNeeded();
      await row.click();
      await page.getByRole('button', { name: 'Add what the camera saw' }).click();
      await field(page, 'Camera went in at').selectOption('CO1');
      await page.getByText('Say how far in by the counter, and what was there.').waitFor();
      await field(page, 'Counter where it begins').fill('10');
      await field(page, 'Counter where it ends').fill('14');
      await field(page, 'What was there').selectOption('full');
      const landing = page.locator('.landing', { hasText: /from the outlet end of west collector/ });
      await landing.waitFor();
      // the cleanout stands 0.00001080 degrees of latitude, 3.93 ft on WGS 84, above the collector's lower end
      expect((await landing.textContent())?.replaceAll('\u00a0', ' ')).toContain('That is 14 to 18 ft from');
      expect(await page.locator('.pane-fittings path').count()).toBeGreaterThan(0);
      await page.setInputFiles('.file-button input', {
        name: 'p.png',
        mimeType: 'image/png',
        buffer: png(2000, 1500),
      });
      const photo = page.locator('img.photo');
      await photo.waitFor();
      const kept = await photo.evaluate(async (image: HTMLImageElement) => {
        await image.decode();
        return { width: image.naturalWidth, height: image.naturalHeight, src: image.src };
      });
      expect([kept.width, kept.height]).toEqual([1280, 960]);
      const [head, data] = kept.src.split(',');
      expect(head).toBe('data:image/jpeg;base64');
      const bytes = Buffer.from(data ?? '', 'base64').toString('latin1');
      expect(bytes).not.toContain(SECRET);
      expect(bytes).not.toContain('Exif');
      expect(await axeViolations(page)).toEqual([]);
      await page.locator('.place').first().click();
      await page.locator('.back').click();
      const worst = page.locator('.row').first();
      await expect.poll(() => worst.textContent()).toMatch(/on west collector/);
      expect(await worst.textContent()).toMatch(/Already seen in \d{4}: filled with roots/);
      expect(errors).toEqual([]);
      await page.close();
    });

    it('refuse a photo that is none, and say so', async () => {
      const { page } = await visit(browser, server.address, screen);
      await raise(page, screen);
      await page.locator('.row').first().click();
      await page.getByRole('button', { name: 'Add what the camera saw' }).click();
      const buffer = Buffer.from('<svg onload="alert(1)"');
      await page.setInputFiles('.file-button input', { name: 'x.png', mimeType: 'image/png', buffer });
      await page.getByText('no picture that can be read here').waitFor();
      expect(await page.locator('img.photo').count()).toBe(0);
      await page.close();
    });

    it('hold the facts of the site, and have targets for a wet thumb', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      await raise(page, screen);
      await page.locator('.place').nth(1).click();
      await page.getByText('About this site', { exact: true }).click();
      await field(page, 'Soil').selectOption('clay');
      const rain = field(page, 'Heaviest rain to plan for');
      await rain.fill('3');
      await rain.blur();
      expect(await rain.inputValue()).toBe('3 in/h');
      await units(page, 'm');
      // 3 in x 25.4 mm
      expect(await rain.inputValue()).toBe('76.2 mm/h');
      const small = await page
        .locator('.form')
        .evaluate(
          (form) =>
            [
              ...form.querySelectorAll(
                'input:not(.unseen):not([type=checkbox]), select, textarea, button, .about',
              ),
            ]
              .map((one) => one.getBoundingClientRect())
              .filter(({ width, height }) => width > 0 && Math.min(width, height) < 44).length,
        );
      expect(small).toBe(0);
      expect(await axeViolations(page)).toEqual([]);
      expect(errors).toEqual([]);
      await page.close();
    });
  });
}
