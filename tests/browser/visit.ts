import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Browser, chromium, type Page } from 'playwright-core';

const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-quic',
  '--no-first-run',
  '--disable-component-update',
  '--disable-sync',
];

/** The two screens the page is made for. */
export const screens = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
  desk: { viewport: { width: 1440, height: 900 } },
} as const;

export type Screen = keyof typeof screens;

/** True with `npm run test:all`: every screen, every colour scheme, every file. */
export const testsAll = process.env['ROOTREACH_SCREENS'] === 'all';

/** Screens that a file runs on: both with `npm run test:all`, else the one that it names; the files take turns. */
export const screensOf = (first: Screen): readonly Screen[] => (testsAll ? ['phone', 'desk'] : [first]);

/** Colour schemes that a file runs in: both with `npm run test:all`, else the one that it names. */
export const schemesOf = (first: 'light' | 'dark'): readonly ('light' | 'dark')[] =>
  testsAll ? ['light', 'dark'] : [first];

type Look = readonly [Screen, 'light' | 'dark'];

/** Screen and colour scheme of a long scenario: both pairs with `npm run test:all`, else the one that it names. */
export const looksOf = (first: Look, second: Look): readonly Look[] => (testsAll ? [first, second] : [first]);

/** The Chromium named by ROOTREACH_BROWSER. */
export function startBrowser(): Promise<Browser> {
  const executablePath = process.env.ROOTREACH_BROWSER;
  if (!executablePath) throw new Error('ROOTREACH_BROWSER names no Chromium');
  return chromium.launch({ executablePath, args: ARGS });
}

export interface Visit {
  readonly page: Page;
  /** Console errors, page errors and refused loads. */
  readonly errors: string[];
  /** Addresses asked for outside the page's own origin. */
  readonly strangers: string[];
}

/** Opens the page and waits until its first site is drawn. */
export async function visit(
  browser: Browser,
  address: string,
  screen: Screen,
  scheme: 'light' | 'dark' = 'light',
): Promise<Visit> {
  const page = await browser.newPage({ ...screens[screen], colorScheme: scheme, reducedMotion: 'reduce' });
  const errors: string[] = [];
  const strangers: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (protocol !== 'data:' && protocol !== 'blob:' && origin !== new URL(address).origin) {
      strangers.push(request.url());
    }
  });
  await page.goto(address);
  await page.locator('.row').first().waitFor();
  return { page, errors, strangers };
}

const axeText = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe-core has against the page as it now stands: rule and first element of each. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(axeText);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import('axe-core') };
    const { violations } = await axe.run(document);
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`,
    );
  });
}
