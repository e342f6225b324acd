import type { Locator, Page } from 'playwright-core';
import type { Screen } from './visit.js';

export type Spot = readonly [x: number, y: number];

/** A finger on a phone, a mouse on a desk. */
export interface Hand {
  readonly tap: (at: Spot) => Promise<void>;
  readonly drag: (from: Spot, to: Spot) => Promise<void>;
}

const STEPS = 6;

const along = ([x0, y0]: Spot, [x1, y1]: Spot, share: number): Spot => [
  x0 + (x1 - x0) * share,
  y0 + (y1 - y0) * share,
];

async function dragByFinger(page: Page, from: Spot, to: Spot): Promise<void> {
  const touch = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', at: Spot | null) =>
    touch.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: at === null ? [] : [{ x: at[0], y: at[1] }],
    });
  await send('touchStart', from);
  for (let step = 1; step <= STEPS; step++) await send('touchMove', along(from, to, step / STEPS));
  await send('touchEnd', null);
  await touch.detach();
}

async function dragByMouse({ mouse }: Page, from: Spot, to: Spot): Promise<void> {
  await mouse.move(...from);
  await mouse.down();
  await mouse.move(...to, { steps: STEPS });
  await mouse.up();
}

export const handOn = (page: Page, screen: Screen): Hand => ({
  tap: ([x, y]) => (screen === 'phone' ? page.touchscreen.tap(x, y) : page.mouse.click(x, y)),
  drag: (from, to) => (screen === 'phone' ? dragByFinger : dragByMouse)(page, from, to),
});

/** Middle of something on the page, with half its width and height. */
export async function middleOf(what: Locator): Promise<{ at: Spot; halfWidth: number; halfHeight: number }> {
  const box = await what.boundingBox();
  if (!box) throw new Error('it cannot be seen');
  const [halfWidth, halfHeight] = [box.width / 2, box.height / 2];
  return { at: [box.x + halfWidth, box.y + halfHeight], halfWidth, halfHeight };
}
