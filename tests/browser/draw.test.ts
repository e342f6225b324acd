import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import geodesic from 'geographiclib-geodesic';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveFolder } from './static-server.js';
import {
  axeViolations,
  type Screen,
  schemesOf,
  screensOf,
  startBrowser,
  type Visit,
  visit,
} from './visit.js';

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

const place = (page: Page, name: string) => page.locator('.place', { hasText: name });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** Opens the draw place on a blank lot. */
async function blank(screen: Screen, scheme: 'light' | 'dark' = 'light'): Promise<Visit> {
  const there = await visit(browser, server.address, screen, scheme);
  await place(there.page, 'Draw').click();
  await button(there.page, 'Blank lot in feet').click();
  await there.page
    .locator('.site-picker')
    .first()
    .getByText('New site')
    .first()
    .waitFor({ state: 'attached' });
  await there.page.locator('.tool-strip').waitFor();
  return there;
}

/** Taps at shares of the part of the plan that nothing lies over. */
async function tap(page: Page, screen: Screen, x: number, y: number): Promise<void> {
  const box = await page.locator('.plan-sheet').boundingBox();
  if (!box) throw new Error('there is no plan');
  const room = box.height - (screen === 'phone' ? 150 : 0) - 80;
  await touch(page, screen, box.x + box.width * x, box.y + 50 + (room - 50) * y);
}

async function touch(page: Page, screen: Screen, x: number, y: number): Promise<void> {
  if (screen === 'phone') await page.touchscreen.tap(x, y);
  else await page.mouse.click(x, y);
}

async function takeTool(page: Page, name: string): Promise<void> {
  const back = page.locator('.chosen-thing .back');
  if (await back.isVisible()) await back.click();
  await button(page, name).click();
  await page.locator('.tool-actions').waitFor();
}

interface Saved {
  readonly rootreach: { readonly underlay?: { readonly image: string; readonly metresPerPixel: number } };
  readonly features: readonly {
    readonly properties: { readonly kind: string; readonly id: string; readonly type?: string };
    readonly geometry: { readonly type: string; readonly coordinates: never };
  }[];
}

/** The site as the page saves it to a file. */
async function saved(page: Page): Promise<Saved> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  return JSON.parse(readFileSync(await download.path(), 'utf8')) as Saved;
}

const kinds = async (page: Page) => (await saved(page)).features.map((one) => one.properties.kind);

/** Metres of a line by GeographicLib (Karney 2013), which is no part of the page. */
function geodesicM(path: readonly (readonly [number, number])[]): number {
  return path.slice(1).reduce((sum, [lon, lat], i) => {
    const [lon0, lat0] = path[i] as readonly [number, number];
    return sum + (geodesic.Geodesic.WGS84.Inverse(lat0, lon0, lat, lon).s12 ?? 0);
  }, 0);
}

async function drawDrain(page: Page, screen: Screen): Promise<void> {
  await takeTool(page, 'Drain');
  for (const [x, y] of [
    [0.3, 0.3],
    [0.42, 0.5],
    [0.5, 0.75],
  ] as const)
    await tap(page, screen, x, y);
  await button(page, 'Finish').click();
  await page.locator('.chosen-thing').waitFor();
}

async function drawPoint(page: Page, screen: Screen, tool: string, x: number, y: number): Promise<void> {
  await takeTool(page, tool);
  await tap(page, screen, x, y);
  await button(page, 'Done').click();
}

for (const screen of screensOf('phone')) {
  describe(`drawing on a ${screen}`, () => {
    it('goes from a blank lot to a ranked list without another button, and asks nobody for anything', async () => {
      const { page, errors, strangers } = await blank(screen);
      await drawPoint(page, screen, 'Tree', 0.34, 0.42);
      await drawDrain(page, screen);
      const ends = await Promise.all(
        [0, 2].map((index) => page.locator('.handle-place').nth(index).boundingBox()),
      );
      // four pixels beside each end: a finger is no finer
      const [start, end] = ends.map((box) => [(box?.x ?? 0) + 26, (box?.y ?? 0) + 24] as const);
      await takeTool(page, 'Fitting');
      await touch(page, screen, ...(start ?? [0, 0]));
      await page.locator('.tool-choice').selectOption('outlet');
      await touch(page, screen, ...(end ?? [0, 0]));
      await button(page, 'Done').click();
      await place(page, 'Find').click();
      await page.locator('.row').first().waitFor();
      expect(await page.locator('.headline').textContent()).toMatch(/1 line, .+ 1 tree/);
      const { features } = await saved(page);
      const drain = features.find((one) => one.properties.kind === 'drain');
      const fittings = features.filter((one) => one.properties.kind === 'fitting');
      expect(fittings.map((one) => one.properties.type)).toEqual(['basin', 'outlet']);
      // both were drawn to the ends of the line
      const path = drain?.geometry.coordinates as unknown as [number, number][];
      expect(fittings.map((one) => one.geometry.coordinates)).toEqual([path[0], path.at(-1)]);
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });

    it('undoes and does again what every tool did, and what was deleted', async () => {
      const { page } = await blank(screen);
      await drawPoint(page, screen, 'Tree', 0.6, 0.3);
      await drawDrain(page, screen);
      await drawPoint(page, screen, 'Level', 0.7, 0.8);
      await takeTool(page, 'Building');
      for (const [x, y] of [
        [0.6, 0.5],
        [0.8, 0.5],
        [0.8, 0.65],
      ] as const)
        await tap(page, screen, x, y);
      await button(page, 'Finish').click();
      await page.locator('.chosen-thing').getByRole('button', { name: 'Delete', exact: true }).click();
      await page.locator('.draw-note', { hasText: /Deleted building/ }).waitFor();
      expect(await kinds(page)).toEqual(['tree', 'drain', 'level']);
      await page.locator('.draw-said').getByRole('button', { name: 'Undo', exact: true }).click();
      const all = await saved(page);
      expect(all.features.map((one) => one.properties.kind)).toEqual(['tree', 'drain', 'level', 'obstacle']);
      for (let i = 0; i < 4; i++) await page.keyboard.press('Control+z');
      expect(await kinds(page)).toEqual([]);
      for (let i = 0; i < 4; i++) await page.keyboard.press('Control+Shift+z');
      expect(await saved(page)).toEqual(all);
      await page.close();
    });

    it('lays a picture under the plan that is true to 1 % once two places on it are said', async () => {
      const { page, errors, strangers } = await visit(browser, server.address, screen);
      await place(page, 'Draw').click();
      // a plat of 2400 by 1800 pixels: 30 pixels are a foot
      const data = await page.evaluate(() => {
        const canvas = document.createElement('canvas');
        [canvas.width, canvas.height] = [2400, 1800];
        const pen = canvas.getContext('2d');
        if (!pen) return '';
        pen.fillStyle = '#eee';
        pen.fillRect(0, 0, 2400, 1800);
        pen.strokeRect(600, 450, 1200, 900);
        return canvas.toDataURL('image/png').split(',')[1] ?? '';
      });
      const file = { name: 'plat.png', mimeType: 'image/png', buffer: Buffer.from(data, 'base64') };
      await page.locator('input[type=file][accept*="image/png"]').last().setInputFiles(file);
      await page.locator('.draw-said', { hasText: /Tap one end/ }).waitFor();
      const pixel = async (x: number, y: number) => {
        const box = await page.locator('img.underlay').boundingBox();
        return [
          (box?.x ?? 0) + (x / 2400) * (box?.width ?? 0),
          (box?.y ?? 0) + (y / 1800) * (box?.height ?? 0),
        ] as const;
      };
      await touch(page, screen, ...(await pixel(600, 450)));
      await touch(page, screen, ...(await pixel(1800, 450)));
      await page.locator('.picture-scale input').fill('40 ft');
      await button(page, 'Scale the picture').click();
      await button(page, 'Whole site').click();
      await takeTool(page, 'Wall');
      await touch(page, screen, ...(await pixel(600, 450)));
      await touch(page, screen, ...(await pixel(1800, 1350)));
      await button(page, 'Finish').click();
      const { features, rootreach } = await saved(page);
      const wall = features[0]?.geometry.coordinates as unknown as [number, number][];
      expect(Math.abs(geodesicM(wall) / (50 * 0.3048) - 1)).toBeLessThan(0.01);
      expect(rootreach.underlay?.image).toMatch(/^data:image\/jpeg;base64,/);
      // kept at 1600 pixels across: 20 of them are a foot
      expect(Math.abs((rootreach.underlay?.metresPerPixel ?? 0) / (0.3048 / 20) - 1)).toBeLessThan(0.01);
      expect(await axeViolations(page)).toEqual([]);
      expect(errors).toEqual([]);
      expect(strangers).toEqual([]);
      await page.close();
    });

    for (const scheme of schemesOf('dark')) {
      it(`gives axe nothing to find, and every control room for a finger, ${scheme}`, async () => {
        const { page } = await blank(screen, scheme);
        const small = () =>
          page.evaluate(() =>
            [...document.querySelectorAll<HTMLElement>('button, select, summary, .button, .handle-mark')]
              .filter((one) => one.offsetParent !== null && !one.classList.contains('skip'))
              .filter((one) => one.offsetWidth < 44 || one.offsetHeight < 44)
              .map((one) => one.outerHTML.slice(0, 100)),
          );
        const check = async () => {
          expect(await axeViolations(page)).toEqual([]);
          expect(await small()).toEqual([]);
        };
        await check();
        await drawPoint(page, screen, 'Tree', 0.34, 0.42);
        await check();
        await takeTool(page, 'Drain');
        await tap(page, screen, 0.3, 0.3);
        await button(page, 'Aim').click();
        await tap(page, screen, 0.6, 0.6);
        await button(page, 'Put here').click();
        await check();
        await button(page, 'Finish').click();
        await page.locator('.chosen-thing').waitFor();
        await check();
        await takeTool(page, 'Level');
        await check();
        await page.close();
      });
    }
  });
}

describe('drawing by keys alone', () => {
  const focused = (page: Page) => page.evaluate(() => document.activeElement?.className ?? '');

  /** Presses Tab until something of that class, or with that text, has the focus. */
  async function tabTo(page: Page, is: (focus: { readonly name: string; readonly text: string }) => boolean) {
    for (let i = 0; i < 80; i++) {
      const focus = await page.evaluate(() => ({
        name: String(document.activeElement?.className ?? ''),
        text: document.activeElement?.textContent ?? '',
      }));
      if (is(focus)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error('Tab never came there');
  }

  async function press(page: Page, keys: readonly string[]): Promise<void> {
    for (const key of keys) await page.keyboard.press(key);
  }

  it('puts down a tree and a line, moves the tree, and deletes it', async () => {
    const { page, errors } = await blank('desk');
    await tabTo(page, ({ name, text }) => name === 'tool' && text === 'Tree');
    await press(page, ['Enter', 'ArrowRight', 'Shift+ArrowUp', 'Enter', 'Escape']);
    await tabTo(page, ({ name, text }) => name === 'tool' && text === 'Drain');
    await press(page, ['Enter', 'Enter', 'Shift+ArrowDown', 'Enter', 'Shift+ArrowLeft', 'Enter']);
    await press(page, ['ArrowUp', 'Enter', 'Backspace', 'ArrowDown', 'Enter']);
    const before = await saved(page);
    expect(before.features.map((one) => one.properties.kind)).toEqual(['tree', 'drain']);
    const path = before.features[1]?.geometry.coordinates as unknown as [number, number][];
    // ten steps of a foot down, ten to the left
    expect(path).toHaveLength(3);
    expect(geodesicM(path) / 0.3048).toBeCloseTo(20, 1);
    await page.keyboard.press('Escape');
    await tabTo(page, ({ name }) => name.includes('handle-stop'));
    await press(page, ['ArrowRight', 'ArrowRight', 'Shift+ArrowUp']);
    const moved = await saved(page);
    const tree = [before, moved].map(
      ({ features }) => features[0]?.geometry.coordinates as unknown as [number, number],
    );
    expect(geodesicM(tree) / 0.3048).toBeCloseTo(Math.hypot(2, 10), 1);
    expect(await focused(page)).toContain('handle-stop');
    await page.keyboard.press('Delete');
    expect(await kinds(page)).toEqual(['drain']);
    await page.keyboard.press('Control+z');
    expect(await kinds(page)).toEqual(['tree', 'drain']);
    expect(errors).toEqual([]);
    await page.close();
  });

  it('says what each thing is, opens its form by Enter, and moves one place of a line', async () => {
    const { page } = await blank('desk');
    await drawDrain(page, 'desk');
    await page.locator('.chosen-thing .back').click();
    const stop = page.locator('.handle-stop');
    expect(await stop.getAttribute('aria-label')).toMatch(/^drain line line1\. Enter to change it/);
    await stop.focus();
    await page.keyboard.press('Enter');
    await page.locator('.chosen-thing').waitFor();
    const before = (await saved(page)).features[0]?.geometry.coordinates as unknown as [number, number][];
    const handle = page.locator('.handle-place').nth(1);
    expect(await handle.getAttribute('aria-label')).toMatch(/^Place 2 of 3\./);
    await handle.focus();
    await page.keyboard.press('ArrowRight');
    const after = (await saved(page)).features[0]?.geometry.coordinates as unknown as [number, number][];
    expect(geodesicM([before[1] ?? [0, 0], after[1] ?? [0, 0]]) / 0.3048).toBeCloseTo(1, 2);
    expect(after[0]).toEqual(before[0]);
    await page.keyboard.press('Delete');
    expect((await saved(page)).features[0]?.geometry.coordinates).toHaveLength(2);
    await page.close();
  });
});

describe('changing a line by hand', () => {
  it('drags a place and makes a new one between two; each is one step back', async () => {
    const { page } = await blank('desk');
    await drawDrain(page, 'desk');
    const drawn = await saved(page);
    const drag = async (name: string, index: number, dx: number, dy: number) => {
      const box = await page.locator(name).nth(index).boundingBox();
      const [x, y] = [(box?.x ?? 0) + 22, (box?.y ?? 0) + 22];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + dx / 2, y + dy / 2, { steps: 3 });
      await page.mouse.move(x + dx, y + dy, { steps: 3 });
      await page.mouse.up();
    };
    await drag('.handle-place', 1, 80, 10);
    const dragged = await saved(page);
    expect(dragged).not.toEqual(drawn);
    await drag('.handle-between', 0, 60, -40);
    expect((await saved(page)).features[0]?.geometry.coordinates).toHaveLength(4);
    await page.keyboard.press('Control+z');
    expect(await saved(page)).toEqual(dragged);
    await page.keyboard.press('Control+z');
    expect(await saved(page)).toEqual(drawn);
    await page.close();
  });

  it('turns the flow round by a button that says what it does', async () => {
    const { page } = await blank('phone');
    await drawDrain(page, 'phone');
    const flow = page.locator('.flow-line');
    expect(await flow.textContent()).toMatch(/the last place is the outlet end/);
    await button(page, 'Turn the flow round').click();
    expect(await flow.textContent()).toMatch(/the first place is the outlet end/);
    await page.close();
  });
});

describe('what the page asks for', () => {
  it('is the position of the device, once, on a tap alone', async () => {
    const { page } = await visit(browser, server.address, 'phone');
    await page.context().grantPermissions(['geolocation']);
    await page.context().setGeolocation({ latitude: 40.5, longitude: -70.9, accuracy: 6 });
    await page.evaluate(() => {
      const ask = navigator.geolocation.getCurrentPosition.bind(navigator.geolocation);
      const counted = window as unknown as { asked: number };
      counted.asked = 0;
      navigator.geolocation.getCurrentPosition = (...given) => {
        counted.asked += 1;
        ask(...given);
      };
    });
    const asked = () => page.evaluate(() => (window as unknown as { asked: number }).asked);
    await place(page, 'Draw').click();
    await button(page, 'Blank lot in metres').click();
    await page.locator('.site-picker').first().getByText('New site').first().waitFor({ state: 'attached' });
    await drawPoint(page, 'phone', 'Tree', 0.5, 0.5);
    expect(await asked()).toBe(0);
    await page.locator('.chosen-thing .back').click();
    await button(page, 'Where I am standing').click();
    await page.locator('.drawn-length, .draw-start').first().waitFor();
    await page.waitForFunction(() => document.querySelector('.pane-grid') !== null);
    await expect.poll(async () => (await saved(page)).rootreach).toMatchObject({ begun_at: [-70.9, 40.5] });
    expect(await asked()).toBe(1);
    await drawPoint(page, 'phone', 'Tree', 0.5, 0.5);
    const { features } = await saved(page);
    const tree = features[0]?.geometry.coordinates as unknown as [number, number];
    expect(geodesicM([[-70.9, 40.5], tree])).toBeLessThan(30);
    await page.close();
  });

  it('is map tiles only from the address that the user gave, and no picture from anywhere before', async () => {
    const there = await visit(browser, server.address, 'desk');
    const { page, errors, strangers } = there;
    // requests that the page's rule refuses never come here
    let asked = 0;
    await page.context().route('https://tiles.invalid/**', (route) => {
      asked += 1;
      const body = '<svg xmlns="http://www.w3.org/2000/svg"/>';
      return route.fulfill({ status: 200, contentType: 'image/svg+xml', body });
    });
    const blocked = () =>
      page.evaluate(
        () =>
          new Promise<boolean>((done) => {
            const image = new Image();
            image.onload = () => done(false);
            image.onerror = () => done(true);
            image.src = 'https://tiles.invalid/0/0/0.png';
          }),
      );
    expect(await blocked()).toBe(true);
    expect(asked).toBe(0);
    await place(page, 'Draw').click();
    await page.locator('summary', { hasText: 'Map tiles' }).click();
    await page.getByLabel(/^Address with/).fill('http://tiles.invalid/{z}/{x}/{y}.png');
    await button(page, 'Use this address').click();
    await page.getByText('The address needs https://').waitFor();
    await page.getByLabel(/^Address with/).fill('https://tiles.invalid/{z}/{x}/{y}.png');
    await page.getByLabel(/^Who made/).fill('An invented map');
    errors.length = 0;
    await Promise.all([page.waitForEvent('load'), button(page, 'Use this address').click()]);
    await page.locator('.row').first().waitFor();
    await page.locator('.tile-credit', { hasText: 'An invented map' }).waitFor();
    await expect.poll(() => asked).toBeGreaterThan(0);
    expect(strangers.every((one) => one.startsWith('https://tiles.invalid/'))).toBe(true);
    expect(errors).toEqual([]);
    await place(page, 'Draw').click();
    await page.locator('summary', { hasText: 'Map tiles' }).click();
    await Promise.all([page.waitForEvent('load'), button(page, 'Stop using it').click()]);
    await page.locator('.row').first().waitFor();
    expect(await blocked()).toBe(true);
    await page.close();
  });
});
