import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { axeViolations, schemesOf, screensOf, startBrowser, visit } from './visit.js';

const dist = fileURLToPath(new URL('../../apps/map/dist', import.meta.url));
const demo = (name: string) =>
  readFileSync(new URL(`../../data/sites/${name}.geojson`, import.meta.url), 'utf8');

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

const choose = (page: Page, files: readonly { readonly name: string; readonly text: string }[]) =>
  page.setInputFiles(
    'input[type=file]',
    files.map(({ name, text }) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) })),
  );

/** Drops a file on the page as a hand would. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([fileName, fileText]) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([fileText ?? ''], fileName ?? '', { type: 'application/json' }));
      return transfer;
    },
    [name, text],
  );
  await page.dispatchEvent('.plan', 'dragover', { dataTransfer: data });
  await page.dispatchEvent('.plan', 'drop', { dataTransfer: data });
}

for (const screen of screensOf('desk')) {
  describe(`the map page on a ${screen}`, () => {
    it('opens the demonstration without an error or a request to anywhere else', async () => {
      const { page, errors, strangers } = await visit(browser, server.address, screen);
      await page.locator('.stretch-hit').first().waitFor({ state: 'attached' });
      expect(await page.locator('.stamp').textContent()).toMatch(/invented example/i);
      expect(await page.locator('h1').textContent()).toMatch(/stretch|nothing/i);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });

    it('selects from the list to the plan, steps along, and goes back to the same row', async () => {
      const { page } = await visit(browser, server.address, screen);
      const row = page.locator('.row').nth(1);
      const id = await row.getAttribute('data-stretch');
      await row.click();
      await page.locator('.card .odds').waitFor();
      expect(await page.evaluate(() => decodeURIComponent(location.hash))).toContain(`stretch=${id}`);
      expect(await page.locator('.pane-circles path').count()).toBeGreaterThan(0);
      await page.locator('.steps .button:not([disabled])').first().click();
      expect(await page.evaluate(() => decodeURIComponent(location.hash))).not.toContain(`stretch=${id}`);
      await page.locator('.back').click();
      await page.locator('.row').first().waitFor();
      expect(await page.evaluate(() => location.hash)).not.toContain('stretch=');
      await page.close();
    });

    it('selects from the plan to the card', async () => {
      const { page } = await visit(browser, server.address, screen);
      const worst = await page.locator('.row').first().getAttribute('data-stretch');
      const place = await page.evaluate((id) => {
        const path = document.querySelector(`path[data-stretch="${id}"]`) as SVGPathElement;
        const middle = path.getPointAtLength(path.getTotalLength() / 2);
        const { x, y } = middle.matrixTransform(path.getScreenCTM() ?? undefined);
        return { x, y };
      }, worst);
      if (screen === 'phone') await page.touchscreen.tap(place.x, place.y);
      else await page.mouse.click(place.x, place.y);
      await page.locator('.card').waitFor();
      expect(await page.evaluate(() => decodeURIComponent(location.hash))).toContain(`stretch=${worst}`);
      await page.close();
    });

    it('can be walked by keys alone', async () => {
      const { page } = await visit(browser, server.address, screen);
      const start = page.locator('path.stretch-hit[tabindex="0"]');
      expect(await start.count()).toBe(1);
      await start.focus();
      const from = await start.getAttribute('data-stretch');
      await page.keyboard.press('ArrowRight');
      const to = await page.evaluate(() => document.activeElement?.getAttribute('data-stretch'));
      expect(to).not.toBe(from);
      await page.keyboard.press('Enter');
      await page.locator('.card').waitFor();
      expect(await page.evaluate(() => decodeURIComponent(location.hash))).toContain(`stretch=${to}`);
      await page.close();
    });

    it('shows the same place in feet and in metres', async () => {
      const { page } = await visit(browser, server.address, screen);
      await page.locator('.row').first().click();
      const where = page.locator('.card-where');
      const feet = (await where.textContent()) ?? '';
      expect(feet).toMatch(/[\d.]+ to [\d.]+\sft$/);
      await page.locator('.units-choice', { hasText: /^m$/ }).click();
      const metres = (await where.textContent()) ?? '';
      expect(metres).toMatch(/[\d.]+ to [\d.]+\sm$/);
      // NIST SP 811: a foot is 0.3048 m; whole feet are shown, so half a foot may be lost
      const end = (text: string) => Number(/to ([\d.]+)/.exec(text)?.[1]);
      expect(Math.abs(end(feet) * 0.3048 - end(metres))).toBeLessThan(0.21);
      expect(await page.locator('.scale-bar').getAttribute('aria-label')).toMatch(/ m$/);
      await page.close();
    });

    it('opens a chosen file, several together, and a dropped one', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      await choose(page, [{ name: 'mine.geojson', text: demo('french-drain-plan') }]);
      await page.locator('.headline', { hasText: /French drain/ }).waitFor();
      // its name at first, then, once it is kept on the device, the site's own
      expect(await page.locator('.site-picker option:checked').textContent()).toMatch(/mine|French drain/);
      const whole = JSON.parse(demo('corner-lot'));
      const part = (trees: boolean) =>
        JSON.stringify({
          ...whole,
          features: whole.features.filter(
            (one: { properties: { kind: string } }) => (one.properties.kind === 'tree') === trees,
          ),
        });
      await choose(page, [
        { name: 'trees.geojson', text: part(true) },
        { name: 'lines.geojson', text: part(false) },
      ]);
      await page.locator('.headline', { hasText: /elm/ }).waitFor();
      await drop(page, 'dropped.geojson', demo('french-drain-plan'));
      await page.locator('.headline', { hasText: /French drain/ }).waitFor();
      expect(errors).toEqual([]);
      await page.close();
    });

    it('says why it cannot open a broken file and leaves the open site alone', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      const before = await page.locator('.headline').textContent();
      await choose(page, [{ name: 'broken.geojson', text: demo('corner-lot').slice(0, 2000) }]);
      const message = page.getByRole('alert');
      await message.locator('.problem').waitFor();
      expect(await message.textContent()).toMatch(/Could not open broken\.geojson: .+/);
      expect(await page.locator('.headline').textContent()).toBe(before);
      await message.getByRole('button').click();
      expect(await message.textContent()).toBe('');
      expect(errors).toEqual([]);
      await page.close();
    });

    it('opens the sound one of two files and says what became of the other before anything else', async () => {
      const { page } = await visit(browser, server.address, screen);
      await choose(page, [
        { name: 'sound.geojson', text: demo('french-drain-plan') },
        { name: 'broken.geojson', text: '{"type":' },
      ]);
      await page.locator('.headline', { hasText: /French drain/ }).waitFor();
      expect(await page.locator('.fold[open] li').first().textContent()).toMatch(/^Error\. broken\.geojson/);
      const above = await page.evaluate(() => {
        const [fold, list] = ['.fold', '.list'].map((name) =>
          document.querySelector(name)?.getBoundingClientRect(),
        );
        return (fold?.bottom ?? 0) <= (list?.top ?? 0) + 1;
      });
      expect(above).toBe(true);
      await page.close();
    });

    it('shows markup in names as the text it is', async () => {
      const { page, errors } = await visit(browser, server.address, screen);
      const nasty = '<img src=x onerror="window.broken=1"><script>window.broken=1</script>';
      const site = JSON.parse(demo('corner-lot'));
      site.rootreach.name = nasty;
      for (const feature of site.features) {
        feature.properties.name = nasty;
        if (feature.properties.kind === 'tree') feature.properties.species = nasty;
      }
      await choose(page, [{ name: `${nasty}.geojson`, text: JSON.stringify(site) }]);
      await page.locator('.headline', { hasText: 'onerror' }).waitFor();
      await page.locator('.row').first().click();
      await page.locator('.card').waitFor();
      expect(await page.locator('.card-station').textContent()).toContain('<script>');
      expect(await page.evaluate(() => 'broken' in window)).toBe(false);
      expect(await page.locator('#page img, #page script').count()).toBe(0);
      expect(errors).toEqual([]);
      await page.close();
    });

    it('offers all three sites and keeps the choice in its address', async () => {
      const { page } = await visit(browser, server.address, screen);
      for (const [key, text] of [
        ['french-drain-plan', /French drain/],
        ['small-campus', /campus/i],
        ['corner-lot', /elm/],
      ] as const) {
        await page.locator('.site-picker').selectOption(key);
        await page.locator('.headline', { hasText: text }).waitFor();
        expect(await page.evaluate(() => location.hash)).toContain(`site=${key}`);
      }
      await page.close();
    });

    it('goes straight to the stretch an address names', async () => {
      const { page } = await visit(browser, `${server.address}#site=small-campus`, screen);
      const id = await page.locator('.row').nth(2).getAttribute('data-stretch');
      await page.close();
      const again = await browser.newPage();
      await again.goto(`${server.address}#site=small-campus&stretch=${id}&units=us`);
      await again.locator('.card').waitFor();
      expect(await again.locator('.card-where').textContent()).toMatch(/\sft/);
      await again.close();
    });

    for (const scheme of schemesOf('light')) {
      it(`gives axe nothing to find, ${scheme}`, async () => {
        const { page } = await visit(browser, server.address, screen, scheme);
        expect(await axeViolations(page)).toEqual([]);
        await page.locator('.row').first().click();
        await page.locator('.card').waitFor();
        expect(await axeViolations(page)).toEqual([]);
        await page.locator('.card .line-button').first().click();
        await page.locator('.card .facts').waitFor();
        expect(await axeViolations(page)).toEqual([]);
        await choose(page, [{ name: 'broken.geojson', text: '{' }]);
        await page.locator('.problem').waitFor();
        expect(await axeViolations(page)).toEqual([]);
        await page.close();
      });
    }

    it('gives every control room for a finger', async () => {
      const { page } = await visit(browser, server.address, screen);
      const small = () =>
        page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>('button, select, summary, .button, .units-choice')]
            .filter((one) => one.offsetParent !== null && !one.classList.contains('skip'))
            .filter((one) => {
              const { width, height } = one.getBoundingClientRect();
              return width < 44 || height < 44;
            })
            .map((one) => one.outerHTML.slice(0, 100)),
        );
      expect(await small()).toEqual([]);
      await page.locator('.row').first().click();
      await page.locator('.card').waitFor();
      expect(await small()).toEqual([]);
      await page.close();
    });
  });
}

describe('the sheet on a phone', () => {
  it('has three heights, by tap and by pull', async () => {
    const { page } = await visit(browser, server.address, 'phone');
    const height = async () => (await page.locator('.sheet').boundingBox())?.height ?? 0;
    const half = await height();
    await page.locator('.handle').click();
    const full = await height();
    await page.locator('.handle').click();
    const low = await height();
    expect(low).toBeLessThan(half);
    expect(half).toBeLessThan(full);
    const box = await page.locator('.handle').boundingBox();
    const x = 195;
    const y = (box?.y ?? 0) + 20;
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 200, { steps: 5 });
    await page.mouse.up();
    expect(await height()).toBe(half);
    await page.close();
  });
});

describe('the page with a file handed over by a local server', () => {
  it('opens it at start instead of the demonstration', async () => {
    const html = readFileSync(`${dist}/index.html`, 'utf8');
    const named = html.replace(/(<meta name="rootreach-opened" content=")"/, '$1opened.json"');
    expect(named).not.toBe(html);
    const files = [{ name: 'yard.geojson', text: demo('french-drain-plan') }];
    const handed = await serveFolder(dist, { 'index.html': named, 'opened.json': JSON.stringify({ files }) });
    const { page, errors, strangers } = await visit(browser, handed.address, 'desk');
    await page.locator('.headline', { hasText: /French drain/ }).waitFor();
    expect(await page.locator('.site-picker option:checked').textContent()).toBe('yard.geojson');
    expect(errors).toEqual([]);
    expect(strangers).toEqual([]);
    await page.close();
    handed.close();
  });
});

describe('a large site', () => {
  it('is drawn on canvas and still answers to a click in the list', async () => {
    const { page, errors } = await visit(browser, server.address, 'desk');
    const site = JSON.parse(demo('small-campus'));
    const trees = site.features.filter(
      (one: { properties: { kind: string } }) => one.properties.kind === 'tree',
    );
    for (let copy = 1; copy < 14; copy++) {
      for (const tree of trees) {
        const [lon, lat] = tree.geometry.coordinates;
        site.features.push({
          ...tree,
          properties: { ...tree.properties, id: `${tree.properties.id}-${copy}` },
          geometry: { type: 'Point', coordinates: [lon + copy * 2e-5, lat + copy * 1e-5] },
        });
      }
    }
    await choose(page, [{ name: 'town.geojson', text: JSON.stringify(site) }]);
    await page.locator('.pane-lines canvas').waitFor({ state: 'attached', timeout: 60_000 });
    await page.locator('.row').first().click();
    await page.locator('.card').waitFor();
    expect(errors).toEqual([]);
    await page.close();
  });
});
