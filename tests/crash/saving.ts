import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Locator, type Page } from 'playwright-core';
import { serveFolder } from '../browser/static-server.js';
import { chanceOf } from '../fuzz/chance.js';

const here = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const WAIT_MS = 60_000;
/** The page waits 0.3 s for quiet before it saves: within so long of the order to change the save begins and ends. */
const SAVING_MS = 600;

interface Running {
  readonly child: ChildProcess;
  readonly page: Page;
  /** Ends the browser and all its processes at once, as the loss of power would. */
  readonly kill: () => Promise<void>;
}

function devToolsOf(child: ChildProcess): Promise<string> {
  return new Promise((found, fail) => {
    let said = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address !== undefined) found(address);
    });
    child.once('exit', (code) => fail(new Error(`the browser ended with ${code}: ${said.slice(-300)}`)));
  });
}

/** A browser on a profile that is kept, with the page open. */
async function started(profile: string, address: string): Promise<Running> {
  const executable = process.env['ROOTREACH_BROWSER'];
  if (!executable) throw new Error('ROOTREACH_BROWSER names no Chromium');
  const child = spawn(
    executable,
    [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      `--user-data-dir=${profile}`,
      '--remote-debugging-port=0',
      'about:blank',
    ],
    // a group of its own, so that its helpers go with it
    { stdio: ['ignore', 'ignore', 'pipe'], detached: true },
  );
  const gone = new Promise<void>((done) => child.once('exit', () => done()));
  const kill = async (): Promise<void> => {
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
    await gone;
  };
  try {
    const browser = await chromium.connectOverCDP(await devToolsOf(child));
    const context = browser.contexts()[0];
    if (context === undefined) throw new Error('the browser has no window');
    const page = await context.newPage();
    page.setDefaultTimeout(WAIT_MS);
    await page.goto(address);
    await page.locator('.site-picker').waitFor();
    await page.locator('.page[aria-busy=false]').waitFor();
    return { child, page, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

const opened = async (page: Page): Promise<string> =>
  (await page.locator('.site-picker option:checked').textContent()) ?? '';

async function showSites(page: Page): Promise<void> {
  await page.locator('.place').last().click();
  await page.locator('.sites').waitFor();
}

/** Makes a change ready, whose button is still to be pressed: the site's name stands for any change. */
async function renaming(page: Page, name: string): Promise<Locator> {
  const row = page.locator('.site-row:has(.site-now)');
  await row.locator('.site-more').click();
  await row.getByRole('button', { name: 'Rename', exact: true }).click();
  await row.getByLabel('Name', { exact: true }).fill(name);
  return row.getByRole('button', { name: 'Keep this name' });
}

/** What came of killing the page again and again. */
export interface KilledPage {
  readonly kills: number;
  /** How often the change made last was there again. */
  readonly withLast: number;
  /** How often the one before it was the last that was there. */
  readonly withoutLast: number;
  /** What must not be: an older site, none, or more than one. */
  readonly lost: readonly string[];
}

/**
 * Opens a site, changes it, waits until that is saved, changes it again and kills the browser while it saves; the same
 * profile is opened again each time.
 */
export async function killPage(kills: number, seed: number, folder: string): Promise<KilledPage> {
  const server = await serveFolder(process.env['ROOTREACH_PAGE'] ?? here('apps/map/dist'));
  const profile = join(folder, 'profile');
  mkdirSync(profile, { recursive: true });
  const counts = { kills: 0, withLast: 0, withoutLast: 0 };
  const lost: string[] = [];
  let running = await started(profile, server.address);
  try {
    await running.page.setInputFiles('#open-files', {
      name: 'yard.geojson',
      mimeType: 'application/json',
      buffer: readFileSync(here('data/sites/french-drain-plan.geojson')),
    });
    await running.page.locator('.save-state-saved').waitFor();
    for (let number = 0; number < kills; number++) {
      const { page, kill } = running;
      const [saved, last] = [`Saved ${number}`, `Last ${number}`];
      await showSites(page);
      await (await renaming(page, saved)).click();
      await page.locator('.site-picker option:checked', { hasText: saved }).waitFor({ state: 'attached' });
      await page.locator('.save-state-saved').waitFor();
      const keep = await renaming(page, last);
      // not waited for: the wait would outlast the save
      keep.evaluate((button: HTMLElement) => button.click()).catch(() => undefined);
      await new Promise((done) => setTimeout(done, chanceOf(seed, 'page', number).below(SAVING_MS)));
      await kill();
      running = await started(profile, server.address);
      const [name, sites] = [await opened(running.page), await countSites(running.page)];
      counts.kills += 1;
      if (name === last) counts.withLast += 1;
      else if (name === saved) counts.withoutLast += 1;
      else lost.push(`kill ${number}, seed ${seed}: '${saved}' was saved, '${name}' came back`);
      if (sites !== 1) lost.push(`kill ${number}, seed ${seed}: ${sites} sites where one was`);
    }
  } finally {
    await running.kill();
    server.close();
  }
  return { ...counts, lost };
}

async function countSites(page: Page): Promise<number> {
  await showSites(page);
  await page.locator('.site-row').first().waitFor();
  return page.locator('.site-row').count();
}
