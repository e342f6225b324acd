// Benchmark of the map page in headless Chromium: a tree is dragged over a seeded site, move by move, and each move
// is timed from the pointer event to the scores on the page and to the painted frame; the same site is scored
// through Turf's circles in the same page. Then a town is opened, pushed and asked about, and the page's longest
// task is told.
//   npm run bench:page                  300 segments, 200 moves; 100,000 trees and 20,000 lines
//   npm run bench:page -- 60 0.1        60 moves, a tenth of the town
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { findBrowser } from '../../packages/dev/browser.mjs';
import { serveDist } from './serve-dist.mjs';
import { makeTown } from './town.mjs';

const moves = Number(process.argv[2] ?? 200);
const size = Number(process.argv[3] ?? 1);
const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = join(tmpdir(), 'rootreach-bench');
mkdirSync(folder, { recursive: true });

const collectionOf = ({ trees, lines }, kinds) => ({
  type: 'FeatureCollection',
  features: [trees, lines].flatMap((text) => JSON.parse(text).features).filter((f) => kinds(f.properties)),
});

const quantile = (values, q) => [...values].sort((a, b) => a - b)[Math.round(q * (values.length - 1))];
const told = (values) =>
  `${quantile(values, 0.5).toFixed(1).padStart(7)} ${quantile(values, 0.95).toFixed(1).padStart(8)}`;

/** In the page: times each move of the mouse to the scores that follow it, and to the frame after them. */
function watch() {
  window.moves = [];
  window.longest = 0;
  let moved = null;
  window.addEventListener('mousemove', () => (moved = performance.now()), true);
  const channel = new MessageChannel();
  let waiting = null;
  channel.port1.onmessage = () => {
    window.moves.push({ ...waiting, painted: performance.now() - waiting.from });
    waiting = null;
  };
  new PerformanceObserver((list) => {
    for (const { name, startTime, duration } of list.getEntries()) {
      if (name !== 'rescored' || moved === null || startTime < moved) continue;
      waiting = { from: moved, rescored: startTime + duration - moved };
      moved = null;
      requestAnimationFrame(() => channel.port2.postMessage(null));
    }
  }).observe({ type: 'measure' });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longest = Math.max(window.longest, duration);
  }).observe({ type: 'longtask' });
}

async function openPage(browser, address, file) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  await page.goto(address);
  await page.locator('.row').first().waitFor();
  await page.waitForTimeout(1000);
  await page.evaluate(watch);
  const from = performance.now();
  await page.setInputFiles('input[type=file][multiple]', file);
  await page.waitForFunction(
    (name) => document.querySelector('.headline .quiet')?.textContent === name,
    'bench',
    { timeout: 120_000 },
  );
  return { page, ms: performance.now() - from };
}

/** Takes hold of a tree in the middle of the plan and drags it along. */
async function drag(page) {
  await page
    .getByRole('button', { name: /^Draw$/ })
    .or(page.getByRole('tab', { name: /^Draw$/ }))
    .first()
    .click();
  const stems = await page.locator('.stem-hit').all();
  const boxes = await Promise.all(stems.map((stem) => stem.boundingBox()));
  const middle = boxes.filter((box) => box && box.x > 200 && box.x < 700 && box.y > 200 && box.y < 650);
  const box = middle[Math.floor(middle.length / 2)];
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.click(x, y);
  await page.waitForTimeout(300);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= moves; i++) {
    const before = await page.evaluate(() => window.moves.length);
    // to and fro over the lines, a pixel or two at a time
    const [dx, dy] = [40 * Math.sin(i / 9), 60 * Math.sin(i / 14)];
    await page.mouse.move(x + dx, y + dy);
    await page
      .waitForFunction((count) => window.moves.length > count, before, { timeout: 2000, polling: 5 })
      .catch(() => undefined);
  }
  await page.mouse.up();
  return page.evaluate(() => window.moves);
}

async function benchDrag(browser, address) {
  const town = makeTown({ trees: 150, lines: 28, seed: 11 });
  const site = { ...collectionOf(town, () => true), rootreach: { name: 'bench' } };
  const file = join(folder, 'site.geojson');
  writeFileSync(file, JSON.stringify(site));
  const { page } = await openPage(browser, address, file);
  await page.waitForTimeout(1500);
  const found = await drag(page);
  await build({
    configFile: false,
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      outDir: folder,
      emptyOutDir: false,
      lib: {
        entry: join(root, 'tests/bench/page-turf.mjs'),
        formats: ['iife'],
        name: 'turf',
        fileName: () => 'turf.js',
      },
    },
  });
  const { readFileSync } = await import('node:fs');
  await page.evaluate(readFileSync(join(folder, 'turf.js'), 'utf8'));
  const turf = await page.evaluate((collection) => {
    const times = [];
    for (let i = 0; i < 5; i++) {
      const from = performance.now();
      window.scoreThroughTurf(collection);
      times.push(performance.now() - from);
    }
    return times;
  }, site);
  const segments = await page.locator('.stretch-hit').count();
  await page.close();
  console.log(
    `drag of a tree, ${site.features.length} features, ${segments} segments, ${found.length} moves`,
  );
  console.log(`                                   p50      p95  ms`);
  console.log(`pointer to scores on the page  ${told(found.map((m) => m.rescored))}`);
  console.log(`pointer to painted frame       ${told(found.map((m) => m.painted))}   (aim: p95 at most 16)`);
  console.log(`overlap through Turf circles   ${told(turf)}`);
  const ratio =
    quantile(turf, 0.5) /
    quantile(
      found.map((m) => m.rescored),
      0.5,
    );
  console.log(`Turf circles, overlap alone : re-scored and repainted = ${ratio.toFixed(1)}`);
}

async function benchTown(browser, address) {
  const counts = { trees: Math.round(100_000 * size), lines: Math.round(20_000 * size) };
  const town = makeTown({ ...counts, seed: 7 });
  const file = join(folder, 'town.geojson');
  const features = [town.trees, town.lines].map((text) =>
    text.slice(text.indexOf('[') + 1, text.lastIndexOf(']')),
  );
  writeFileSync(
    file,
    `{"type":"FeatureCollection","rootreach":{"name":"bench"},"features":[${features.join(',')}]}`,
  );
  const { page, ms } = await openPage(browser, address, file);
  const longest = async () => {
    const value = await page.evaluate(() => window.longest);
    await page.evaluate(() => (window.longest = 0));
    return `${value.toFixed(0)} ms`;
  };
  await page.waitForTimeout(2000);
  console.log(
    `town of ${counts.trees} trees and ${counts.lines} lines: ranked after ${(ms / 1000).toFixed(1)} s`,
  );
  console.log(
    `longest task of the page while it opened: ${await longest()} (0: none over 50; aim: under 200)`,
  );
  for (let i = 0; i < 6; i++) {
    await page.mouse.move(500, 450);
    await page.mouse.down();
    await page.mouse.move(500 + 90 * (i % 2 ? 1 : -1), 380, { steps: 12 });
    await page.mouse.up();
    await page.mouse.wheel(0, i < 4 ? -300 : 300);
    await page.waitForTimeout(500);
  }
  console.log(`pushed and zoomed: ${await longest()}`);
  await page.locator('.row').first().click();
  await page.locator('.card').waitFor();
  await page.waitForTimeout(1500);
  console.log(`one stretch looked at: ${await longest()}`);
  await page.screenshot({ path: join(folder, 'town.png') });
  await page.close();
}

const served = await serveDist(process.env.ROOTREACH_DIST ?? join(root, 'apps/map/dist'));
const executablePath = (await findBrowser()) ?? undefined;
const args = ['--no-sandbox', '--disable-gpu', '--disable-frame-rate-limit', '--disable-gpu-vsync'];
const browser = await chromium.launch({ executablePath, args });
await benchDrag(browser, served.address);
await benchTown(browser, served.address);
await browser.close();
served.close();
