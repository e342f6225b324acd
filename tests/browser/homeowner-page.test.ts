import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { crewSheet, homeownerPage } from '../../packages/report/src/index.js';
import { DEMOS, finding, ownerInput, PIXEL, siteOf, TAIL_FULL } from '../report/inputs.js';
import { axeViolations, screens, startBrowser } from './visit.js';

let browser: Browser;

beforeAll(async () => {
  browser = await startBrowser();
});

afterAll(() => browser.close());

/** Shows a page as a file opened from the disk would be, and keeps what it asks for and complains of. */
async function show(html: string, screen: keyof typeof screens = 'desk') {
  const page = await browser.newPage({ ...screens[screen] });
  const asked: string[] = [];
  const errors: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith('data:')) asked.push(request.url());
  });
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.setContent(html);
  return { page, asked, errors };
}

/** Pages of a PDF: each is an object of the type Page. */
async function sheets(page: Page, format: 'Letter' | 'A4'): Promise<number> {
  const pdf = (await page.pdf({ format, printBackground: true })).toString('latin1');
  return [...pdf.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
}

/** Four photos, more than are shown: the fullest page there is. */
const MANY_SEEN = ['fine', 'mass', 'sag', 'offset'].map((seen, i) =>
  finding({ drain: 'collector', from: 'CO1', at_ft: 26 + i, seen, date: '2026-11-20', photo: PIXEL }),
);

const cases = [
  ...DEMOS.map((name) => ({ name, site: siteOf(name), segment: undefined })),
  { name: 'a filled tail', site: siteOf('corner-lot', TAIL_FULL), segment: undefined },
  { name: 'roots at the tee', site: siteOf('corner-lot', TAIL_FULL), segment: 'collector/6' },
  { name: 'much seen', site: siteOf('corner-lot', MANY_SEEN), segment: 'collector/5' },
].map(({ name, site, segment }) => ({
  name,
  input: {
    ...ownerInput(site, segment === undefined ? {} : { segment }),
    by: 'Somebody with a rather long name',
  },
}));

describe.each(cases)('the page for the owner: $name', ({ input }) => {
  it.each(['en', 'es'] as const)('prints on exactly two sheets of Letter and of A4: %s', async (language) => {
    const { page } = await show(homeownerPage({ ...input, language }));
    expect([await sheets(page, 'Letter'), await sheets(page, 'A4')]).toEqual([2, 2]);
    await page.close();
  });

  it.each(['desk', 'phone'] as const)('is whole and accessible, without a request: %s', async (screen) => {
    const { page, asked, errors } = await show(homeownerPage(input), screen);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(await axeViolations(page)).toEqual([]);
    expect(asked).toEqual([]);
    expect(errors).toEqual([]);
    await page.close();
  });
});

describe('the page for the owner without choices', () => {
  it('prints on two sheets as well', async () => {
    const { page } = await show(homeownerPage(ownerInput(siteOf('corner-lot'), { choices: false })));
    expect([await sheets(page, 'Letter'), await sheets(page, 'A4')]).toEqual([2, 2]);
    await page.close();
  });
});

describe("the crew's sheet", () => {
  it('prints on one or two sheets, and is accessible', async () => {
    for (const { input } of cases) {
      const choice = input.decided?.choices.find(({ id }) => id === input.decided?.recommended);
      const { page } = await show(crewSheet({ ...input, ...(choice === undefined ? {} : { choice }) }));
      expect(await sheets(page, 'Letter')).toBeLessThanOrEqual(2);
      expect(await axeViolations(page)).toEqual([]);
      await page.close();
    }
  });
});

describe('hostile names in a real parser', () => {
  it('make no element, no script and no request', async () => {
    const site = siteOf('corner-lot');
    const names = [
      '</title><script>window.hit=1</script>',
      '"><img src=x onerror="window.hit=1">',
      "'/><svg/onload=window.hit=1>",
    ];
    for (const name of names) {
      const input = ownerInput(
        {
          ...site,
          name,
          drains: site.drains.map((drain) => ({ ...drain, name })),
          obstacles: site.obstacles.map((obstacle) => ({ ...obstacle, name })),
        },
        { choices: false },
      );
      for (const html of [homeownerPage({ ...input, by: name }), crewSheet({ ...input, by: name })]) {
        const { page, asked } = await show(html);
        expect(await page.locator('script, img, iframe, object, embed').count()).toBe(0);
        expect(await page.evaluate(() => (window as { hit?: number }).hit)).toBeUndefined();
        expect(asked).toEqual([]);
        await page.close();
      }
    }
  });
});
