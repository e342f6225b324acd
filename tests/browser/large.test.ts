import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeTown } from '../bench/town.mjs';
import { serveFolder } from './static-server.js';
import { axeViolations, startBrowser, visit } from './visit.js';

const dist = fileURLToPath(new URL('../../apps/map/dist', import.meta.url));
const COUNTS = { trees: 20_000, lines: 4000 };

let browser: Browser;
let server: Awaited<ReturnType<typeof serveFolder>>;
let page: Page;
let errors: string[];

/** Notes how much each message between page and worker holds: list entries, and characters of text. */
function weighMessages(): void {
  const weigh = (value: unknown): { rows: number; text: number } => {
    if (typeof value === 'string') return { rows: 0, text: value.length };
    if (typeof value !== 'object' || value === null || value instanceof Blob) return { rows: 0, text: 0 };
    if (ArrayBuffer.isView(value)) return { rows: 0, text: 0 };
    const sum = { rows: Array.isArray(value) ? value.length : 0, text: 0 };
    for (const part of Object.values(value)) {
      const { rows, text } = weigh(part);
      sum.rows += rows;
      sum.text += text;
    }
    return sum;
  };
  const noted = { heaviest: { rows: 0, text: 0 }, sentText: 0 };
  (window as unknown as { noted: typeof noted }).noted = noted;
  const Before = window.Worker;
  window.Worker = class extends Before {
    constructor(...args: ConstructorParameters<typeof Worker>) {
      super(...args);
      this.addEventListener('message', ({ data }) => {
        const { rows, text } = weigh(data);
        noted.heaviest.rows = Math.max(noted.heaviest.rows, rows);
        noted.heaviest.text = Math.max(noted.heaviest.text, text);
      });
    }

    override postMessage(message: unknown, ...rest: unknown[]): void {
      noted.sentText = Math.max(noted.sentText, weigh(message).text);
      super.postMessage(message, ...(rest as []));
    }
  };
}

const noted = () =>
  page.evaluate(
    () =>
      (window as unknown as { noted: { heaviest: { rows: number; text: number }; sentText: number } }).noted,
  );

beforeAll(async () => {
  browser = await startBrowser();
  server = await serveFolder(dist);
  const context = await browser.newContext();
  await context.addInitScript(weighMessages);
  const visited = await visit(context as unknown as Browser, server.address, 'desk');
  page = visited.page;
  errors = visited.errors;
  const town = makeTown({ ...COUNTS, seed: 5 });
  const files = Object.entries(town).map(([name, text]) => ({
    name: `${name}.geojson`,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  }));
  await page.setInputFiles('input[type=file]', files);
  await page.locator('.headline', { hasText: /4,000/ }).waitFor({ timeout: 200_000 });
}, 240_000);

afterAll(async () => {
  await browser.close();
  server.close();
});

describe('a town', () => {
  it('goes to the worker unread, and only the worst of it comes back', async () => {
    const { heaviest, sentText } = await noted();
    // the files are ten million characters: neither they nor all rows pass through the page
    expect(sentText).toBeLessThan(200_000);
    expect(heaviest.text).toBeLessThan(1_500_000);
    expect(heaviest.rows).toBeLessThan(25_000);
    expect(await page.locator('.headline').textContent()).toMatch(/20,000 trees/);
  });

  it('is drawn as one picture, with the worst stretches within reach of the keys', async () => {
    await page.locator('.town-sheet canvas').waitFor();
    expect(await page.locator('.stretch-hit').count()).toBe(300);
    expect(await page.locator('.plan-sheet path').count()).toBeLessThan(800);
    const inked = await page.locator('.town-sheet canvas').evaluate((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement;
      const pen = (canvas as HTMLCanvasElement).getContext('2d') as CanvasRenderingContext2D;
      const { data } = pen.getImageData(0, 0, width, height);
      let count = 0;
      for (let i = 3; i < data.length; i += 4) if (data[i] !== 0) count += 1;
      return count / (width * height);
    });
    expect(inked).toBeGreaterThan(0.002);
  });

  it('lists the worst and says that it is not all', async () => {
    expect(await page.locator('.row').count()).toBe(40);
    expect(await page.locator('.list').textContent()).toMatch(/worst 300/i);
  });

  it('tells a stretch in full, with its neighbours along the line', async () => {
    await page.locator('.row').first().click();
    await page.locator('.card').waitFor();
    const first = await page.locator('.card h1, .card h2').first().textContent();
    await page.waitForTimeout(1500);
    await page.locator('.steps button:not(:disabled)').first().click();
    await expect.poll(() => page.locator('.card h1, .card h2').first().textContent()).not.toBe(first);
    expect(errors).toEqual([]);
  });

  it('answers to a tap on a line', async () => {
    await page.locator('.back').click();
    await page.locator('.row').first().click();
    await page.locator('.card').waitFor();
    const before = await page.locator('.card').textContent();
    await page.locator('.back').click();
    for (let i = 0; i < 8; i++) await page.getByRole('button', { name: 'Closer', exact: true }).click();
    await page.waitForTimeout(1500);
    const hit = await page.locator('[data-stretch].stretch-hit').evaluateAll((hits) => {
      const inView = hits
        .map((one) => one.getBoundingClientRect())
        .filter((box) => box.x > 100 && box.x < 600 && box.y > 150 && box.y < 700);
      const [box] = inView;
      return box ? [box.x + box.width / 2, box.y + box.height / 2] : null;
    });
    if (hit) await page.mouse.click(hit[0] as number, hit[1] as number);
    else await page.locator('.row').nth(1).click();
    await page.locator('.card').waitFor();
    expect(await page.locator('.card').textContent()).not.toBe(before);
    expect(errors).toEqual([]);
  });

  it('has nothing that axe-core objects to', async () => {
    expect(await axeViolations(page)).toEqual([]);
  });
});
