import * as L from 'leaflet';
import type { SiteDocument } from '../sketch/document.js';
import { readUnderlay } from './picture.js';

/** What is shown of a lot with nothing on it: about a small yard with its house (judgement). */
const ACROSS_M = 25;

/** Part of the ground to show while nothing is drawn: under the picture, where the device was, else at 0, 0. */
export function emptyLot(info: SiteDocument['info']): L.LatLngBounds {
  const picture = readUnderlay(info);
  const [lon, lat] = picture?.centre ?? begunAt(info);
  const across = picture ? picture.metresPerPixel * Math.max(picture.widthPx, picture.heightPx) : ACROSS_M;
  return L.latLng(lat, lon).toBounds(across);
}

function begunAt(info: SiteDocument['info']): readonly [lon: number, lat: number] {
  const [lon, lat] = Array.isArray(info['begun_at']) ? info['begun_at'] : [];
  const isPlace = typeof lon === 'number' && typeof lat === 'number' && Math.abs(lon) <= 180;
  return isPlace && Math.abs(lat) <= 85 ? [lon, lat] : [0, 0];
}
