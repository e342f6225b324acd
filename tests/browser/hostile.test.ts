import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import { startBrowser, testsAll, visit } from './visit.js';

const dist = process.env.ROOTREACH_PAGE ?? fileURLToPath(new URL('../../apps/map/dist', import.meta.url));
const data = new URL('../../data/', import.meta.url);
const lot = readFileSync(new URL('sites/corner-lot.geojson', data), 'utf8');

/** Runs if any of these texts is ever taken for markup, script or style. */
const MARKUP = [
  '<img src=x onerror="window.broken=1">',
  '"><script>window.broken=1</script>',
  "'-window.broken=1-'",
  '<svg onload=window.broken=1>',
  '<iframe srcdoc="<script>parent.broken=1</script>">',
  'javascript:window.broken=1',
  '</style><style>body{display:none}</style>',
  '<a href="https://example.org/leak">x</a><link rel=stylesheet href=https://example.org/x.css>',
  '{{constructor.constructor("window.broken=1")()}}',
  '\u202e\u0000\ufeff<b onmouseover=window.broken=1>',
];
const OUTSIDE = 'https://example.org/leak.png';

interface Case {
  readonly name: string;
  readonly text: string;
}

/** A lot whose every text, name and id is the given one, and whose keys are too. */
function filledWith(text: string): string {
  const site = JSON.parse(lot);
  site.rootreach = { ...site.rootreach, name: text, notes: text, [text]: text };
  site[text] = text;
  site.features.forEach((feature: { id?: string; properties: Record<string, unknown> }, i: number) => {
    const { kind } = feature.properties;
    for (const key of ['id', 'name', 'species', 'note', 'photo', 'drain', 'from', 'condition']) {
      if (key in feature.properties) feature.properties[key] = key === 'id' ? `${text}${i}` : text;
    }
    feature.properties = { ...feature.properties, kind, note: text, photo: text, [text]: { [text]: [text] } };
    feature.id = text;
  });
  return JSON.stringify(site);
}

const nested = (open: string, n: number, close: string) => open.repeat(n) + close.repeat(n);
const withFirst = (properties: string) => lot.replace('"properties": {', `"properties": { ${properties},`);

const generated: readonly Case[] = [
  ...MARKUP.map((text, i) => ({ name: `markup ${i}`, text: filledWith(text) })),
  { name: 'pictures from elsewhere', text: filledWith(OUTSIDE) },
  { name: 'lists in lists', text: nested('[', 200_000, ']') },
  { name: 'objects in objects', text: nested('{"a":', 200_000, '}') },
  { name: 'lists in a property', text: withFirst(`"deep": ${nested('[', 150_000, ']')}`) },
  {
    name: 'lists as coordinates',
    text: lot.replace(/"coordinates": \[/, `"coordinates": ${'['.repeat(5000)}`),
  },
  { name: 'never closed', text: '['.repeat(1_000_000) },
  { name: 'an endless text', text: `{"type":"FeatureCollection","name":"${'\\"'.repeat(1_000_000)}` },
  { name: '__proto__ in properties', text: withFirst('"__proto__": { "polluted": true, "kind": "tree" }') },
  {
    name: '__proto__ in the collection',
    text: lot.replace(
      '{',
      '{ "__proto__": { "polluted": true }, "constructor": { "prototype": { "polluted": true } },',
    ),
  },
  { name: 'null', text: 'null' },
  { name: 'a number', text: '1e999' },
  { name: 'bytes', text: '\u0000\u0001\ufffd\ud800PK\u0003\u0004' },
  { name: 'empty', text: '' },
  { name: 'numbers without end', text: withFirst(`"id": ${'9'.repeat(100_000)}`) },
  ...[0.1, 0.33, 0.5, 0.77, 0.99].map((share) => ({
    name: `cut off at ${share}`,
    text: lot.slice(0, Math.floor(lot.length * share)),
  })),
];

/** Of the files that are wrong in one way, one in so many is opened here; the command reads them all in its own tests. */
const ONE_IN = testsAll ? 1 : 3;

const bad: readonly Case[] = readdirSync(new URL('bad/', data))
  .filter((_, i) => i % ONE_IN === 0)
  .map((name) => ({ name, text: readFileSync(new URL(`bad/${name}`, data), 'utf8') }));

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

/** Opens a file and waits until the page has either shown it or said why not. */
async function open(page: Page, { name, text }: Case): Promise<'shown' | 'refused'> {
  const close = page.locator('.problem button');
  if ((await close.count()) > 0) await close.click();
  await page.evaluate(() => {
    const marked = window as unknown as { settled: Promise<void> };
    marked.settled = new Promise((settle) => {
      let began = false;
      const watcher = new MutationObserver(() => {
        const busy = document.querySelector('.page')?.getAttribute('aria-busy') === 'true';
        began ||= busy;
        if ((began && !busy) || document.querySelector('.problem')) {
          watcher.disconnect();
          settle();
        }
      });
      watcher.observe(document.body, { subtree: true, childList: true, attributes: true });
    });
  });
  await page.setInputFiles('#open-files', {
    name: `${name}.geojson`,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await page.evaluate(() => (window as unknown as { settled: Promise<void> }).settled);
  return (await page.locator('.problem').count()) > 0 ? 'refused' : 'shown';
}

const standing = (page: Page) =>
  page.evaluate(() => ({
    picked: document.querySelector('.site-picker option:checked')?.textContent,
    says: document.querySelector('.headline')?.textContent,
    rows: document.querySelectorAll('.row').length,
    lines: document.querySelectorAll('.stretch-hit').length,
  }));

const harm = (page: Page) =>
  page.evaluate(() => ({
    ran: 'broken' in window,
    polluted: 'polluted' in {},
    hidden: getComputedStyle(document.body).display === 'none',
    foreign: document.querySelectorAll(
      '#page script, #page iframe, #page img:not([src^="data:"]), #page link, #page style, #page a[href^="http"]',
    ).length,
  }));
const UNHARMED = { ran: false, polluted: false, hidden: false, foreign: 0 };

for (const [what, cases] of [
  ['files that are wrong in one way each', bad],
  ['files made to do harm', generated],
] as const) {
  describe(what, () => {
    it('run nothing, ask for nothing, and leave the open site alone where they are refused', async () => {
      const { page, errors, strangers } = await visit(browser, server.address, 'desk');
      let dialogs = 0;
      page.on('dialog', (dialog) => {
        dialogs += 1;
        void dialog.dismiss();
      });
      let refused = 0;
      for (const one of cases) {
        // a sound site first: what is refused must leave it as it stands
        await open(page, { name: 'sound', text: lot });
        const before = await standing(page);
        const outcome = await open(page, one);
        if (outcome === 'refused') {
          refused += 1;
          expect(await page.locator('.problem').textContent(), one.name).toMatch(/\S{2}.*stays as it was/);
          expect(await standing(page), one.name).toEqual(before);
        } else {
          const row = page.locator('.row').first();
          if ((await row.count()) > 0) {
            await row.click();
            await page.locator('.card').waitFor();
            await page.locator('.back').click();
          }
        }
        expect(await harm(page), one.name).toEqual(UNHARMED);
      }
      expect(refused).toBeGreaterThanOrEqual(3);
      expect(refused).toBeLessThan(cases.length);
      await page.reload();
      await page.locator('.page[aria-busy=false]').waitFor();
      await page.locator('.place').last().click();
      await page.locator('.sites').waitFor();
      expect(await harm(page)).toEqual(UNHARMED);
      expect({ dialogs, errors, strangers }).toEqual({ dialogs: 0, errors: [], strangers: [] });
      await page.close();
    });
  });
}

describe('a file too large to read', () => {
  it('is refused by its size', async () => {
    const { page } = await visit(browser, server.address, 'desk');
    const before = await standing(page);
    await page.evaluate(() => {
      const input = document.getElementById('open-files') as HTMLInputElement;
      const transfer = new DataTransfer();
      const part = new Uint8Array(10_000_000).fill(0x20);
      transfer.items.add(
        new File(
          Array.from({ length: 7 }, () => part),
          'huge.geojson',
        ),
      );
      input.files = transfer.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    });
    await page.locator('.problem', { hasText: 'huge.geojson is too large' }).waitFor();
    expect(await standing(page)).toEqual(before);
    await page.close();
  });
});

describe('the policy of the page', () => {
  it('lets no script in, from a text or from elsewhere', async () => {
    const { page } = await visit(browser, server.address, 'desk');
    const ran = await page.evaluate(async () => {
      for (const set of [
        (script: HTMLScriptElement) => script.append('window.broken = 1'),
        (script: HTMLScriptElement) => {
          script.src = 'data:text/javascript,window.broken=1';
        },
        (script: HTMLScriptElement) => {
          script.src = URL.createObjectURL(new Blob(['window.broken = 1'], { type: 'text/javascript' }));
        },
      ]) {
        const script = document.createElement('script');
        set(script);
        document.body.append(script);
      }
      const button = document.createElement('button');
      button.setAttribute('onclick', 'window.broken = 1');
      document.body.append(button);
      button.click();
      await new Promise((done) => setTimeout(done, 300));
      return 'broken' in window;
    });
    expect(ran).toBe(false);
    const policy = await page
      .locator('meta[http-equiv="Content-Security-Policy"]')
      .first()
      .getAttribute('content');
    expect(policy).toMatch(/default-src 'none'/);
    expect(policy).toMatch(/script-src 'self';/);
    await page.close();
  });
});
