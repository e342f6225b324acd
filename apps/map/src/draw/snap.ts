import { type LonLat, planeFor } from '@rootreach/core';
import { type FeatureRef, isSame, refOf, type SiteDocument, type SketchFeature } from '../sketch/document.js';
import { nearestOnLeg, placeOf, type Spot, spotOf } from './flat.js';
import { isArea, outlineOf } from './outline.js';

/** What a new place was drawn to. */
export type SnapOnto = 'fitting' | 'end' | 'bend' | 'line' | 'corner';

export interface Snap {
  readonly at: LonLat;
  readonly onto: SnapOnto;
  readonly ref: FeatureRef;
}

/** What new places are drawn to: pipes and what sits on them, or corners of what stands on the ground. */
export type SnapKind = 'pipes' | 'lines' | 'corners' | 'none';

const TARGETS: Readonly<Record<SnapKind, readonly string[]>> = {
  pipes: ['drain', 'fitting'],
  lines: ['drain'],
  corners: ['obstacle'],
  none: [],
};

interface Found extends Snap {
  readonly distance: number;
}

function nameOf(kind: string, index: number, last: number): SnapOnto {
  if (kind === 'fitting') return 'fitting';
  if (kind === 'obstacle') return 'corner';
  return index === 0 || index === last ? 'end' : 'bend';
}

function onFeature(at: LonLat, feature: SketchFeature, withinM: number): Found[] {
  const plane = planeFor([at]);
  const ref = refOf(feature);
  const outline = outlineOf(feature);
  const spots = outline.map((place) => spotOf(plane, place));
  const here: Spot = [0, 0];
  const found: Found[] = spots.map(([x, y], i) => ({
    at: outline[i] as LonLat,
    onto: nameOf(ref.kind, i, spots.length - 1),
    ref,
    distance: Math.hypot(x, y),
  }));
  if (found.some(({ distance }) => distance <= withinM)) return found;
  const closed = isArea(feature) ? [...spots, spots[0] as Spot] : spots;
  for (const [i, b] of closed.slice(1).entries()) {
    const { spot, distance } = nearestOnLeg(here, closed[i] as Spot, b);
    found.push({ at: placeOf(plane, spot), onto: 'line', ref, distance });
  }
  return found;
}

/** Ends and fittings draw stronger than bends, bends stronger than the run of a line. */
const STRENGTH: Readonly<Record<SnapOnto, number>> = { fitting: 3, end: 3, corner: 3, bend: 2, line: 1 };

/**
 * The place near `at` that a new place is drawn to, or null.
 * @param withinM how far it draws, metres
 * @param except feature that is being moved
 */
export function snapTo(
  site: SiteDocument,
  at: LonLat,
  kind: SnapKind,
  withinM: number,
  except: FeatureRef | null,
): Snap | null {
  const kinds = TARGETS[kind];
  let best: Found | null = null;
  for (const feature of site.features) {
    const ref = refOf(feature);
    if (!kinds.includes(ref.kind) || isSame(ref, except)) continue;
    for (const one of onFeature(at, feature, withinM)) {
      if (one.distance > withinM) continue;
      const stronger = best === null ? 1 : STRENGTH[one.onto] - STRENGTH[best.onto];
      if (stronger > 0 || (stronger === 0 && best !== null && one.distance < best.distance)) best = one;
    }
  }
  return best && { at: best.at, onto: best.onto, ref: best.ref };
}
