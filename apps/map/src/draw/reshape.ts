import type { LonLat } from '@rootreach/core';
import { planeFor } from '@rootreach/core';
import { type Change, replace } from '../sketch/changes.js';
import {
  type FeatureRef,
  find,
  isSame,
  refOf,
  type SiteDocument,
  type SketchFeature,
} from '../sketch/document.js';
import { distanceM, lonLat, nearestOnLeg, shifted, spotOf } from './flat.js';
import { fewestPlaces, isArea, outlineOf, withOutline } from './outline.js';
import { squareUp } from './square-up.js';

/** A fitting this near to a line was put on it and goes with it, metres (judgement: less than a pipe's width). */
const ON_LINE_M = 0.05;

const onto = (before: LonLat, to: LonLat): LonLat =>
  [to[0], to[1], ...(before as readonly number[]).slice(2)] as unknown as LonLat;

function farFrom(at: LonLat, path: readonly LonLat[]): number {
  const plane = planeFor([at]);
  const spots = path.map((place) => spotOf(plane, place));
  const legs = spots.slice(1).map((spot, i) => nearestOnLeg([0, 0], spots[i] ?? spot, spot).distance);
  return Math.min(Infinity, ...legs);
}

/** Fittings of the document moved as `where` says; null leaves one where it is. */
function carryFittings(site: SiteDocument, where: (at: LonLat) => LonLat | null): SiteDocument {
  const features = site.features.map((one) => {
    if (refOf(one).kind !== 'fitting') return one;
    const at = outlineOf(one)[0];
    const to = at && where(at);
    return at && to ? withOutline(one, [onto(at, to)]) : one;
  });
  return { ...site, features };
}

/** Moves one place of a shape. A fitting that sits on that place of a line goes with it. */
export const movePlace =
  (ref: FeatureRef, index: number, to: LonLat): Change =>
  (site) => {
    const before = find(site, ref);
    const from = before && outlineOf(before)[index];
    if (!before || !from) return site;
    const outline = outlineOf(before).map((at, i) => (i === index ? onto(at, to) : at));
    const changed = replace(ref, (one) => withOutline(one, outline))(site);
    if (ref.kind !== 'drain') return changed;
    return carryFittings(changed, (at) => (distanceM(at, from) <= ON_LINE_M ? to : null));
  };

/** Puts a new place before the one of that number. */
export const insertPlace = (ref: FeatureRef, index: number, at: LonLat): Change =>
  replace(ref, (one) => withOutline(one, outlineOf(one).toSpliced(index, 0, at)));

/** Takes a place out, unless the shape would fall apart. */
export const dropPlace =
  (ref: FeatureRef, index: number): Change =>
  (site) => {
    const before = find(site, ref);
    if (!before || outlineOf(before).length <= fewestPlaces(before)) return site;
    return replace(ref, (one) => withOutline(one, outlineOf(one).toSpliced(index, 1)))(site);
  };

const holesShifted = (feature: SketchFeature, eastM: number, northM: number): SketchFeature => {
  const { geometry } = feature;
  if (geometry?.type !== 'Polygon' || geometry.coordinates.length < 2) return feature;
  const [outer, ...holes] = geometry.coordinates;
  const moved = holes.map((ring) =>
    ring.map((at) => [...onto(lonLat(at), shifted(lonLat(at), eastM, northM))]),
  );
  return { ...feature, geometry: { ...geometry, coordinates: [outer ?? [], ...moved] } };
};

/** Moves a whole shape, metres east and north. The fittings on a line go with it. */
export const moveWhole =
  (ref: FeatureRef, eastM: number, northM: number): Change =>
  (site) => {
    const before = find(site, ref);
    if (!before) return site;
    const path = outlineOf(before);
    const outline = path.map((at) => onto(at, shifted(at, eastM, northM)));
    const changed = replace(ref, (one) => holesShifted(withOutline(one, outline), eastM, northM))(site);
    if (ref.kind !== 'drain') return changed;
    return carryFittings(changed, (at) =>
      farFrom(at, path) <= ON_LINE_M ? shifted(at, eastM, northM) : null,
    );
  };

/** Turns the flow of a line round. Its places and depths stay as drawn, so that what cameras saw stays too. */
export const turnFlow = (ref: FeatureRef): Change =>
  replace(ref, (one) => ({
    ...one,
    properties: {
      ...one.properties,
      flow: one.properties['flow'] === 'reversed' ? 'as-drawn' : 'reversed',
    },
  }));

/** Makes all corners of an area right angles; as it was where that cannot be. */
export const squareArea =
  (ref: FeatureRef): Change =>
  (site) => {
    const before = find(site, ref);
    const squared = before && isArea(before) ? squareUp(outlineOf(before)) : null;
    if (!squared) return site;
    return {
      ...site,
      features: site.features.map((one) => (isSame(refOf(one), ref) ? withOutline(one, squared) : one)),
    };
  };
