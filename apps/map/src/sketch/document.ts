import { textOf } from '@rootreach/core';
import type { Feature } from 'geojson';

export type FeatureKind = 'tree' | 'drain' | 'fitting' | 'finding' | 'obstacle' | 'barrier' | 'level';

/** One thing on the sketch. Ids are unique within a kind: given at opening where they were missing. */
export interface FeatureRef {
  readonly kind: FeatureKind;
  readonly id: string;
}

/** A GeoJSON feature as it stands in the file; what the page does not know stays in it. */
export type SketchFeature = Feature & { readonly properties: Readonly<Record<string, unknown>> };

/** A site as it is saved: the members of its FeatureCollection. Never changed in place. */
export interface SiteDocument {
  /** Key in the store of this device; not part of the file. */
  readonly key: string;
  readonly features: readonly SketchFeature[];
  /** Collection member `rootreach`: name, units, soil, rain, pictures and the rest. */
  readonly info: Readonly<Record<string, unknown>>;
  /** Other members of the collection, kept as they are. */
  readonly members: Readonly<Record<string, unknown>>;
}

export const refOf = (feature: SketchFeature): FeatureRef => ({
  kind: feature.properties['kind'] as FeatureKind,
  id: textOf(feature.properties['id']),
});

export const isSame = (a: FeatureRef | null, b: FeatureRef | null): boolean =>
  a !== null && b !== null && a.kind === b.kind && a.id === b.id;

export const find = (site: SiteDocument, ref: FeatureRef): SketchFeature | undefined =>
  site.features.find((one) => isSame(refOf(one), ref));

/**
 * The document as one GeoJSON text for the model. The collection's own box is left out: it may be out of date.
 */
export function toGeoJson({ features, info, members }: SiteDocument, indent?: number): string {
  const { bbox: _, ...others } = members;
  return JSON.stringify({ type: 'FeatureCollection', rootreach: info, ...others, features }, null, indent);
}
