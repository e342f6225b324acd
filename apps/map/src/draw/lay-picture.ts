import type { LonLat } from '@rootreach/core';
import { shrinkPicture } from '../enter/shrink-picture.js';
import type { View } from './drawing-state.js';
import type { Underlay } from './picture.js';

/** Longer side of a kept picture, pixels: a plat stays readable, a few hundred kilobytes (judgement). */
const MOST_PIXELS = 1600;
/** Taken as wide as this until it is scaled, metres (judgement: a lot and the street before it). */
const UNSCALED_M = 50;

/** The part of the ground that a picture lies on. */
export const viewOf = (laid: Underlay): View => ({
  centre: laid.centre,
  acrossM: laid.metresPerPixel * Math.max(laid.widthPx, laid.heightPx),
});

/**
 * A file as a picture to lay under the plan, not yet scaled.
 * @throws when the browser cannot read it as a picture.
 */
export async function pictureFrom(file: Blob, centre: LonLat): Promise<Underlay> {
  const data = await shrinkPicture(file, MOST_PIXELS);
  const image = new Image();
  image.src = data;
  await image.decode();
  const { naturalWidth: widthPx, naturalHeight: heightPx } = image;
  const metresPerPixel = UNSCALED_M / Math.max(widthPx, heightPx);
  return { image: data, widthPx, heightPx, centre, metresPerPixel, turnDegrees: 0, opacity: 0.8 };
}
