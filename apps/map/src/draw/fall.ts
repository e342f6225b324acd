import type { LonLat } from '@rootreach/core';
import { readLength } from '../enter/quantity.js';
import { refOf, type SiteDocument, type SketchFeature } from '../sketch/document.js';
import { distanceM, lengthM } from './flat.js';
import { outlineOf } from './outline.js';

/** A spot level this near speaks for the ground at a place, metres (judgement). */
const LEVEL_WITHIN_M = 5;

/** Height of the ground at a place by the nearest spot level, metres; null where none is near. */
export function groundM(site: SiteDocument, at: LonLat): number | null {
  let best = LEVEL_WITHIN_M;
  let height: number | null = null;
  for (const feature of site.features) {
    if (refOf(feature).kind !== 'level') continue;
    const place = outlineOf(feature)[0];
    const elevation = readLength(feature.properties, 'elevation');
    if (!place || elevation === null) continue;
    const distance = distanceM(at, place);
    if (distance <= best) [best, height] = [distance, elevation];
  }
  return height;
}

export interface Fall {
  /** How much lower the outlet end lies, metres; negative where it lies higher. */
  readonly fallM: number;
  /** Fall over length. */
  readonly slope: number;
  /** What it was worked out from: the pipe by depths and levels, by depths on level ground, or the ground alone. */
  readonly of: 'pipe' | 'pipe-on-level-ground' | 'ground';
}

/** Fall of a line from its first place to its last, or from last to first where its flow is reversed. */
export function fallOf(
  site: SiteDocument,
  path: readonly LonLat[],
  properties: SketchFeature['properties'],
): Fall | null {
  const [first, last] = [path[0], path.at(-1)];
  const length = lengthM(path);
  if (!first || !last || length === 0) return null;
  const [groundStart, groundEnd] = [groundM(site, first), groundM(site, last)];
  const depthStart = readLength(properties, 'depthStart');
  const depthEnd = readLength(properties, 'depthEnd');
  const ground = groundStart !== null && groundEnd !== null ? groundStart - groundEnd : null;
  const depth = depthStart !== null && depthEnd !== null ? depthEnd - depthStart : null;
  if (ground === null && depth === null) return null;
  const way = properties['flow'] === 'reversed' ? -1 : 1;
  const fallM = way * ((ground ?? 0) + (depth ?? 0));
  const of = depth === null ? 'ground' : ground === null ? 'pipe-on-level-ground' : 'pipe';
  return { fallM, slope: fallM / length, of };
}
