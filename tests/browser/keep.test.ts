import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { axeViolations, schemesOf, screens, screensOf, startBrowser } from './visit.js';

const dist = process.env.ROOTREACH_PAGE ?? fileURLToPath(new URL('../../apps/map/dist', import.meta.url));
const demoText = (name: string) =>
  readFileSync(new URL(`../../data/sites/${name}.geojson`, import.meta.url), 'utf8');

let browser: Browser;
let server: Awaited<ReturnType<typeof serveFolder>>;
let context: BrowserContext;

beforeAll(async () => {
  browser = await startBrowser();
  server = await serveFolder(dist);
});

afterAll(async () => {
  await browser.close();
  server.close();
});

beforeEach(async () => {
  context = await browser.newContext({ ...screens.phone, reducedMotion: 'reduce' });
});

afterEach(async () => {
  await context.close();
});

async function openPage(address = server.address): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.locator('.site-picker').waitFor();
  await page.locator('.page[aria-busy=false]').waitFor();
  return page;
}

const choose = (page: Page, name: string, text: string) =>
  page.setInputFiles('#open-files', { name, mimeType: 'application/json', buffer: Buffer.from(text) });

/** On a busy machine a page takes its time. */
const soon = <T>(look: () => Promise<T> | T) => expect.poll(look, { timeout: 20_000 });

const opened = (page: Page) => page.locator('.site-picker option:checked').textContent();
const isSaved = (page: Page) => page.locator('.save-state-saved').waitFor();

async function showSites(page: Page): Promise<void> {
  await page.locator('.place').last().click();
  await page.locator('.sites').waitFor();
}

/** Opens a file of one's own and waits until it is kept. */
async function openYard(page: Page): Promise<void> {
  await choose(page, 'yard.geojson', demoText('french-drain-plan'));
  await isSaved(page);
  await showSites(page);
}

/** Renames the open site: a change like any other, which can be undone. */
async function rename(
  page: Page,
  name: string,
  row = page.locator('.site-row:has(.site-now)'),
): Promise<void> {
  await row.locator('.site-more').click();
  await row.getByRole('button', { name: 'Rename', exact: true }).click();
  await row.getByLabel('Name', { exact: true }).fill(name);
  await row.getByRole('button', { name: 'Keep this name' }).click();
}

async function savedFile(page: Page, press: () => Promise<void>): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

describe('a site on this device', () => {
  it('is there again after a reload, with every change', async () => {
    const page = await openPage();
    await openYard(page);
    await rename(page, 'Back yard');
    await isSaved(page);
    await page.reload();
    await soon(() => opened(page)).toBe('Back yard');
    await isSaved(page);
    expect(await page.evaluate(() => location.hash)).toBe('');
  });

  it('is there again when the page went away before the save was due', async () => {
    const page = await openPage();
    await openYard(page);
    await rename(page, 'Closed at once');
    await page.reload();
    await soon(() => opened(page)).toBe('Closed at once');
    await showSites(page);
    expect(await page.locator('.site-row').count()).toBe(1);
  });

  it('is left as it was by undo and redo, by button and by key', async () => {
    const page = await openPage();
    await openYard(page);
    const before = (await opened(page)) ?? '';
    await rename(page, 'Other');
    await soon(() => opened(page)).toBe('Other');
    await page.locator('.tool-button').first().click();
    await soon(() => opened(page)).toBe(before);
    await page.keyboard.press('Control+y');
    await soon(() => opened(page)).toBe('Other');
    await page.keyboard.press('Control+z');
    await soon(() => opened(page)).toBe(before);
    await page.keyboard.press('Control+Shift+z');
    await soon(() => opened(page)).toBe('Other');
  });

  it('is one of several that are opened, renamed, copied, deleted and brought back', async () => {
    const page = await openPage();
    await openYard(page);
    const rows = page.locator('.site-row');
    await rename(page, 'Yard one');
    await soon(() => rows.allTextContents()).toEqual([expect.stringContaining('Yard one')]);
    await rows.first().locator('.site-more').click();
    await rows.first().getByRole('button', { name: 'Copy' }).click();
    await soon(() => rows.count()).toBe(2);
    const copy = rows.filter({ hasText: 'Yard one (copy)' });
    await rename(page, 'Yard two', copy);
    const two = rows.filter({ hasText: 'Yard two' });
    await two.locator('.site-open').click();
    await soon(() => opened(page)).toBe('Yard two');
    await two.locator('.site-more').click();
    await two.getByRole('button', { name: 'Delete' }).click();
    await soon(() => opened(page)).toBe('Yard one');
    expect(await page.locator('.sites [role=status]').textContent()).toContain('Yard two');
    await page.locator('.sites [role=status]').getByRole('button').click();
    await soon(() => rows.count()).toBe(2);
    await page.reload();
    await soon(() => opened(page)).toBe('Yard one');
  });

  it('is a copy where it began as an example, which stays as it was', async () => {
    const page = await openPage();
    expect(await page.locator('.save-state').textContent()).toBe('Example');
    await showSites(page);
    expect(await page.locator('.site-row').count()).toBe(0);
    const demoName = 'Invented: corner lot with an old elm';
    await page.locator('.place').first().click();
    await page.locator('.row').first().waitFor();
    await choose(page, 'same.geojson', demoText('corner-lot'));
    await isSaved(page);
    await page.locator('.site-picker').selectOption('corner-lot');
    await page.locator('.save-state-example').waitFor();
    expect(await opened(page)).toBe('Corner lot');
    await page.reload();
    await page.locator('.save-state-example').waitFor();
    await showSites(page);
    await soon(() => page.locator('.site-row').count()).toBe(1);
    expect(await page.locator('.site-row .site-name').textContent()).toBe(demoName);
  });

  it('is one site, however often its file is opened', async () => {
    const page = await openPage();
    await openYard(page);
    await choose(page, 'campus.geojson', demoText('small-campus'));
    await soon(() => page.locator('.site-row').count()).toBe(2);
    await choose(page, 'again.geojson', demoText('french-drain-plan'));
    await soon(() => opened(page)).toMatch(/French drain/);
    await isSaved(page);
    expect(await page.locator('.site-row').count()).toBe(2);
  });

  it('can begin blank, and is there again when the page is opened anew', async () => {
    const page = await openPage();
    await showSites(page);
    await page.getByRole('button', { name: 'New site' }).click();
    await soon(() => opened(page)).toBe('New site');
    await isSaved(page);
    await page.close();
    const again = await openPage();
    await soon(() => opened(again)).toBe('New site');
    expect(await again.locator('.place[aria-current]').count()).toBe(1);
  });
});

describe('a file', () => {
  it('opened, changed, saved and opened again is equal, what the page does not know included', async () => {
    const page = await openPage();
    const given = JSON.parse(demoText('french-drain-plan'));
    given.surveyor = { tool: 'tape', list: [1, 2.5, -0.001], none: null };
    given.features[0].properties['own note'] = '“as found” <b>& more</b>';
    given.features[1].properties.nested = { deep: [{ a: 1e-9 }] };
    given.features[2].foreign = ['member'];
    given.rootreach['colour of the gate'] = 'green';
    await choose(page, 'own.geojson', JSON.stringify(given));
    await isSaved(page);
    await showSites(page);
    await rename(page, 'Ünder the Elm: No. 7');
    await isSaved(page);
    const first = await savedFile(page, () => page.getByRole('button', { name: 'Save as a file' }).click());
    expect(first.name).toBe('ünder-the-elm-no-7.geojson');
    const expected = { ...given, rootreach: { ...given.rootreach, name: 'Ünder the Elm: No. 7' } };
    expect(JSON.parse(first.text)).toEqual(expected);
    await choose(page, 'again.geojson', first.text);
    await isSaved(page);
    const second = await savedFile(page, () => page.keyboard.press('Control+s'));
    expect(second).toEqual(first);
  });
});

describe('two tabs on one site', () => {
  async function twoTabs(): Promise<readonly [Page, Page]> {
    const first = await openPage();
    await openYard(first);
    const second = await openPage();
    await second.locator('.notice-stands-back').waitFor();
    await showSites(second);
    return [first, second];
  }

  it('tells the second one, which saves nothing by itself', async () => {
    const [first, second] = await twoTabs();
    expect(await second.locator('.notice-stands-back').textContent()).toMatch(/open in another tab/);
    await rename(second, 'From the second');
    await soon(() => second.locator('.headline, .site-row').first().isVisible()).toBe(true);
    await rename(first, 'From the first');
    await isSaved(first);
    expect(await second.locator('.save-state').textContent()).toBe('Not saved here');
    await first.reload();
    await soon(() => opened(first)).toBe('From the first');
    expect(await axeViolations(second)).toEqual([]);
  });

  it('lets the second one take over what the first has saved, and tells the first', async () => {
    const [first, second] = await twoTabs();
    await rename(first, 'From the first');
    await isSaved(first);
    await second.getByRole('button', { name: 'Work on it here' }).click();
    await isSaved(second);
    expect(await opened(second)).toBe('From the first');
    await first.locator('.notice-stands-back', { hasText: 'taken this site over' }).waitFor();
  });

  it('keeps what both have changed when the second one takes over', async () => {
    const [first, second] = await twoTabs();
    await rename(second, 'Second');
    await rename(first, 'First');
    await isSaved(first);
    await second.getByRole('button', { name: 'Work on it here' }).click();
    await isSaved(second);
    const names = () => second.locator('.site-row .site-open .site-name').allTextContents();
    await soon(async () => (await names()).map((name) => name.replace('open now', '')).sort()).toEqual([
      'First (from the other tab)',
      'Second',
    ]);
  });

  it('lets the second one go its own way as a copy', async () => {
    const [first, second] = await twoTabs();
    await rename(second, 'Mine');
    await second.getByRole('button', { name: 'Keep this as a copy' }).click();
    await isSaved(second);
    await soon(() => second.locator('.site-row').count()).toBe(2);
    await second.reload();
    await soon(() => opened(second)).toBe('Mine (copy)');
    await first.reload();
    await soon(() => opened(first)).toMatch(/French drain/);
  });

  it('keeps what the second one changed even if it is closed without a choice', async () => {
    const [first, second] = await twoTabs();
    await rename(second, 'Unchosen');
    await second.waitForTimeout(100);
    await second.goto('about:blank');
    await second.goto(server.address);
    await second.locator('.page[aria-busy=false]').waitFor();
    await showSites(second);
    await soon(() => second.locator('.site-row .site-name').allTextContents()).toContain(
      'Unchosen (found again)',
    );
    await isSaved(first);
  });
});

describe('a device that keeps nothing', () => {
  const tellsAndHelps = async (page: Page, why: RegExp) => {
    await choose(page, 'yard.geojson', demoText('french-drain-plan'));
    const notice = page.locator('.notice-unsaved');
    await notice.waitFor();
    expect(await notice.textContent()).toMatch(why);
    expect(await page.locator('.save-state').textContent()).toBe('Not saved');
    await page.locator('.row').first().click();
    await page.locator('.card').waitFor();
    expect(await notice.isVisible()).toBe(true);
    const { text } = await savedFile(page, () =>
      notice.getByRole('button', { name: 'Save as a file' }).click(),
    );
    expect(JSON.parse(text)).toEqual(JSON.parse(demoText('french-drain-plan')));
    expect(await axeViolations(page)).toEqual([]);
  };

  it('says so while the store is full, and stops saying so once there is room', async () => {
    await context.addInitScript(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function (...values: Parameters<typeof put>) {
        if (!('roomAgain' in window)) throw new DOMException('no room', 'QuotaExceededError');
        return put.apply(this, values);
      };
    });
    const page = await openPage();
    await tellsAndHelps(page, /no room left/);
    await page.evaluate(() => {
      (window as unknown as { roomAgain: boolean }).roomAgain = true;
    });
    await page.getByRole('button', { name: 'Try again' }).click();
    await isSaved(page);
    expect(await page.locator('.notice-unsaved').count()).toBe(0);
  });

  it('says so where the browser forbids storage', async () => {
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('denied', 'SecurityError');
      };
    });
    const page = await openPage();
    await tellsAndHelps(page, /does not let this page keep anything/);
    await page.locator('.place').last().click();
    await page.getByText('does not let this page keep sites').waitFor();
  });

  it('says so where there is no store at all', async () => {
    await context.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', { value: undefined });
      for (const name of ['localStorage', 'sessionStorage']) {
        Object.defineProperty(window, name, {
          get: () => {
            throw new DOMException('denied', 'SecurityError');
          },
        });
      }
    });
    await tellsAndHelps(await openPage(), /does not let this page keep anything/);
  });
});

describe('a crash in the middle of saving', () => {
  /** Small seeded generator (Park and Miller 1988, minimal standard). */
  const seeded = (seed: number) => () => {
    seed = (seed * 48271) % 2147483647;
    return seed / 2147483647;
  };

  it('leaves a whole site, no older than the last one that was said to be saved', async () => {
    const random = seeded(20261125);
    let page = await openPage();
    await openYard(page);
    for (let round = 0; round < 3; round++) {
      const names = [0, 1, 2].map((n) => `Round ${round}, name ${n}`);
      await rename(page, names[0] ?? '');
      await soon(() => opened(page)).toBe(names[0]);
      await rename(page, names[1] ?? '');
      await rename(page, names[2] ?? '');
      await page.waitForTimeout(random() * 400);
      const session = await context.newCDPSession(page);
      await Promise.race([session.send('Page.crash').catch(() => undefined), page.waitForEvent('crash')]);
      await page.close();
      page = await openPage();
      const found = (await opened(page)) ?? '';
      expect(names, `round ${round}`).toContain(found);
      await page.locator('.row').first().waitFor();
      await showSites(page);
      expect(await page.locator('.site-row').count()).toBe(1);
    }
  });

  it('falls back to the save before where the newest cannot be read', async () => {
    const page = await openPage();
    await openYard(page);
    const before = await opened(page);
    await rename(page, 'Newest');
    await isSaved(page);
    await soon(() => opened(page)).toBe('Newest');
    await page.evaluate(async () => {
      const request = indexedDB.open('rootreach');
      await new Promise((done) => {
        request.onsuccess = done;
      });
      const store = request.result.transaction('texts', 'readwrite').objectStore('texts');
      const all = store.getAll();
      await new Promise((done) => {
        all.onsuccess = done;
      });
      const newest = (all.result as { revision: number; text: string }[]).sort(
        (a, b) => b.revision - a.revision,
      )[0];
      await new Promise((done) => {
        store.put({ ...newest, text: newest?.text.slice(0, 500) }).onsuccess = done;
      });
    });
    await page.reload();
    await page.locator('.notice-older').waitFor();
    await page.locator('.headline', { hasText: before ?? '' }).waitFor();
    expect(await axeViolations(page)).toEqual([]);
    await page.locator('.notice-older').getByRole('button').click();
    expect(await page.locator('.notice-older').count()).toBe(0);
  });
});

describe('without a network', () => {
  const isReady = (page: Page) =>
    page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      while (!navigator.serviceWorker.controller) await new Promise((done) => setTimeout(done, 20));
    });

  it('opens as before, every part and every kept site', async () => {
    const page = await openPage();
    await openYard(page);
    await rename(page, 'In a dead spot');
    await isSaved(page);
    await isReady(page);
    await context.setOffline(true);
    await page.reload();
    await soon(() => opened(page)).toBe('In a dead spot');
    for (const place of await page.locator('.place').all()) {
      await place.click();
      await soon(() => page.locator('.sheet-body .loading').count()).toBe(0);
    }
    await page.locator('.site-picker').selectOption('small-campus');
    await page.locator('.headline, .sites').first().waitFor();
    await page.goto(`${server.address}index.html#site=corner-lot`);
    await page.locator('.row').first().waitFor();
  });

  it('keeps the built files and nothing else', async () => {
    const page = await openPage();
    await isReady(page);
    const kept = await page.evaluate(async () => {
      const names = await caches.keys();
      const caught = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
      return caught.flat().map((request) => request.url);
    });
    const folder = server.address;
    expect(kept).toContain(`${folder}index.html`);
    expect(kept).not.toContain(`${folder}service-worker.js`);
    expect(kept.filter((url) => !url.startsWith(folder))).toEqual([]);
    expect(kept.length).toBeGreaterThan(10);
    const manifest = await (await fetch(`${folder}manifest.webmanifest`)).json();
    for (const { src } of manifest.icons) expect(kept).toContain(`${folder}${src}`);
  });

  it('does not keep the page where a local server hands files over', async () => {
    const html = readFileSync(`${dist}/index.html`, 'utf8');
    const told = html
      .replace(/(<meta name="rootreach-opened" content=")"/, '$1opened.json"')
      .replace(/(<meta name="rootreach-offline" content=")keep"/, '$1no"');
    const files = [{ name: 'yard.geojson', text: demoText('french-drain-plan') }];
    const handed = await serveFolder(dist, { 'index.html': told, 'opened.json': JSON.stringify({ files }) });
    const page = await openPage(handed.address);
    await soon(() => opened(page)).toBe('yard.geojson');
    expect(await page.locator('.save-state').textContent()).toBe('As in the file');
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(
      0,
    );
    handed.close();
  });
});

describe('a new version of the page', () => {
  let folder: string;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'rootreach-page-'));
    cpSync(dist, folder, { recursive: true });
  });

  afterEach(() => {
    rmSync(folder, { recursive: true });
  });

  /** Puts another version there, as a later build would: another page text, another list of files. */
  async function publish(mark: string): Promise<void> {
    const { createHash } = await import('node:crypto');
    const page = readFileSync(join(folder, 'index.html'), 'utf8').replace(/<title>[^<]*/, `<title>${mark}`);
    writeFileSync(join(folder, 'index.html'), page);
    const hash = createHash('sha256').update(page).digest('base64');
    const worker = readFileSync(join(folder, 'service-worker.js'), 'utf8')
      .replace(/("index\.html",\s*")[^"]+/, (_, before: string) => before + hash)
      .replace(
        /rootreach-[0-9a-f]{16}/,
        `rootreach-${createHash('sha256').update(mark).digest('hex').slice(0, 16)}`,
      );
    writeFileSync(join(folder, 'service-worker.js'), worker);
  }

  const checkForUpdate = (page: Page) =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
    });
  const markOf = (page: Page) =>
    page.evaluate(async () => /<title>([^<]*)/.exec(await (await fetch('./index.html')).text())?.[1]);

  it('waits beside the one in use until the user takes it, and loses nothing', async () => {
    const served = await serveFolder(folder);
    const page = await openPage(served.address);
    await openYard(page);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      while (!navigator.serviceWorker.controller) await new Promise((done) => setTimeout(done, 20));
    });
    await publish('second');
    await checkForUpdate(page);
    await page.locator('.notice-version').waitFor();
    expect(await markOf(page)).not.toBe('second');
    await rename(page, 'Changed meanwhile');
    expect(await axeViolations(page)).toEqual([]);
    await Promise.all([
      page.waitForEvent('load'),
      page.locator('.notice-version').getByRole('button').click(),
    ]);
    await soon(() => opened(page)).toBe('Changed meanwhile');
    expect(await markOf(page)).toBe('second');
    expect(await page.locator('.notice-version').count()).toBe(0);
    served.close();
  });

  it('is not installed where a file of it does not arrive whole', async () => {
    const served = await serveFolder(folder);
    const page = await openPage(served.address);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      while (!navigator.serviceWorker.controller) await new Promise((done) => setTimeout(done, 20));
    });
    await publish('half');
    writeFileSync(join(folder, 'index.html'), '<!doctype html><title>half');
    await checkForUpdate(page).catch(() => undefined);
    await page.waitForTimeout(300);
    expect(await page.locator('.notice-version').count()).toBe(0);
    await page.reload();
    await page.locator('.row').first().waitFor();
    served.close();
  });
});

for (const screen of screensOf('phone')) {
  for (const colorScheme of schemesOf('dark')) {
    it(`gives axe nothing to find among the sites, on a ${screen}, ${colorScheme}`, async () => {
      await context.close();
      context = await browser.newContext({ ...screens[screen], colorScheme, reducedMotion: 'reduce' });
      const page = await openPage();
      await showSites(page);
      expect(await axeViolations(page)).toEqual([]);
      await openYard(page);
      await page.locator('.site-more').click();
      expect(await axeViolations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Rename', exact: true }).click();
      expect(await axeViolations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Cancel' }).click();
      await page.locator('.site-more').click();
      await page.getByRole('button', { name: 'Delete' }).click();
      await page.locator('.bin').waitFor();
      await page.locator('.bin summary').click();
      expect(await axeViolations(page)).toEqual([]);
    });
  }
}
