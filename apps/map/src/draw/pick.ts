import { type LonLat, planeFor } from '@rootreach/core';
import { type FeatureRef, refOf, type SiteDocument, type SketchFeature } from '../sketch/document.js';
import { areaM2, nearestOnLeg, type Spot, spotOf } from './flat.js';
import { isArea, outlineOf } from './outline.js';

const DRAWN: readonly string[] = ['tree', 'drain', 'fitting', 'obstacle', 'barrier', 'level'];

export const isDrawn = (feature: SketchFeature): boolean =>
  feature.geometry !== null && DRAWN.includes(refOf(feature).kind);

function insideRing(spots: readonly Spot[]): boolean {
  let inside = false;
  for (const [i, [x0, y0]] of spots.entries()) {
    const [x1, y1] = spots[(i + 1) % spots.length] as Spot;
    if (y0 > 0 !== y1 > 0 && (-y0 / (y1 - y0)) * (x1 - x0) + x0 > 0) inside = !inside;
  }
  return inside;
}

/** Rank of what was hit: points before lines before areas, small areas before large. */
function hit(
  feature: SketchFeature,
  at: LonLat,
  withinM: number,
): readonly [order: number, by: number] | null {
  const outline = outlineOf(feature);
  const plane = planeFor([at]);
  const spots = outline.map((place) => spotOf(plane, place));
  const first = spots[0];
  if (!first) return null;
  if (spots.length === 1) {
    const distance = Math.hypot(...first);
    return distance <= withinM ? [0, distance] : null;
  }
  const closed = isArea(feature) ? [...spots, first] : spots;
  const distances = closed.slice(1).map((b, i) => nearestOnLeg([0, 0], closed[i] as Spot, b).distance);
  const distance = Math.min(...distances);
  if (distance <= withinM / (isArea(feature) ? 2 : 1)) return [isArea(feature) ? 2 : 1, distance];
  const filled = isArea(feature) && feature.properties['type'] !== 'boundary';
  return filled && insideRing(spots) ? [3, areaM2(outline)] : null;
}

/** The thing at a place: the nearest point within reach, else the nearest line, else the area around it. */
export function pick(site: SiteDocument, at: LonLat, withinM: number): FeatureRef | null {
  let best: { readonly ref: FeatureRef; readonly rank: readonly [number, number] } | null = null;
  for (const feature of site.features) {
    if (!isDrawn(feature)) continue;
    const rank = hit(feature, at, withinM);
    if (!rank) continue;
    const nearer =
      best === null || rank[0] < best.rank[0] || (rank[0] === best.rank[0] && rank[1] < best.rank[1]);
    if (nearer) best = { ref: refOf(feature), rank };
  }
  return best?.ref ?? null;
}
