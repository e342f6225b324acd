import { type LonLat, planeFor } from '@rootreach/core';
import type { SiteDocument } from '../sketch/document.js';
import { distanceM, lonLat, placeOf, type Spot, spotOf } from './flat.js';

/** A picture laid under the plan, as it stands in the site file (`rootreach.underlay`). */
export interface Underlay {
  /** Data address of a JPEG, PNG or WebP. */
  readonly image: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly centre: LonLat;
  readonly metresPerPixel: number;
  /** Clockwise. */
  readonly turnDegrees: number;
  /** 0 to 1. */
  readonly opacity: number;
}

const IMAGE = /^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/=]+$/;
const MOST_CHARACTERS = 6_000_000;
const RADIANS = Math.PI / 180;

const inRange = (value: unknown, low: number, high: number): value is number =>
  typeof value === 'number' && value >= low && value <= high;

/** The picture of a site file, or null where there is none or it is not as it should be. */
export function readUnderlay(info: SiteDocument['info']): Underlay | null {
  const given = info['underlay'];
  if (typeof given !== 'object' || given === null) return null;
  const { image, widthPx, heightPx, centre, metresPerPixel, turnDegrees, opacity } =
    given as Partial<Underlay>;
  if (typeof image !== 'string' || image.length > MOST_CHARACTERS || !IMAGE.test(image)) return null;
  if (!inRange(widthPx, 1, 20_000) || !inRange(heightPx, 1, 20_000)) return null;
  if (!Array.isArray(centre) || !inRange(centre[0], -180, 180) || !inRange(centre[1], -85, 85)) return null;
  if (!inRange(metresPerPixel, 1e-5, 100)) return null;
  const turn = inRange(turnDegrees, -360, 360) ? turnDegrees : 0;
  const seen = inRange(opacity, 0, 1) ? opacity : 1;
  return {
    image,
    widthPx,
    heightPx,
    centre: lonLat(centre),
    metresPerPixel,
    turnDegrees: turn,
    opacity: seen,
  };
}

/** Where a pixel of the picture lies on the ground; pixels count from the top left corner. */
export function groundOfPixel(underlay: Underlay, [px, py]: Spot): LonLat {
  const { widthPx, heightPx, centre, metresPerPixel, turnDegrees } = underlay;
  const right = (px - widthPx / 2) * metresPerPixel;
  const up = (heightPx / 2 - py) * metresPerPixel;
  const [sin, cos] = [Math.sin(turnDegrees * RADIANS), Math.cos(turnDegrees * RADIANS)];
  return placeOf(planeFor([centre]), [right * cos + up * sin, up * cos - right * sin]);
}

/**
 * The picture scaled so that two places on it lie as far apart as they do on the ground. The first stays where it
 * is. Null where the places are one.
 */
export function scaledByTwo(underlay: Underlay, a: LonLat, b: LonLat, knownM: number): Underlay | null {
  const nowM = distanceM(a, b);
  if (!(nowM > 0) || !(knownM > 0)) return null;
  const factor = knownM / nowM;
  const metresPerPixel = underlay.metresPerPixel * factor;
  if (!inRange(metresPerPixel, 1e-5, 100)) return null;
  const plane = planeFor([a]);
  const [x, y] = spotOf(plane, underlay.centre);
  return { ...underlay, metresPerPixel, centre: placeOf(plane, [x * factor, y * factor]) };
}
