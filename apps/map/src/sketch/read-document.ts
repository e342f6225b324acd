import { guessKind, textOf } from '@rootreach/core';
import type { InputFile } from '../tasks.js';
import { ID_PREFIX } from './changes.js';
import type { FeatureKind, SiteDocument, SketchFeature } from './document.js';

type Json = Readonly<Record<string, unknown>>;

const KINDS: readonly string[] = ['tree', 'drain', 'fitting', 'finding', 'obstacle', 'barrier', 'level'];
const GEOMETRIES = ['Point', 'LineString', 'Polygon', 'MultiPoint', 'MultiLineString', 'MultiPolygon'];
/** Members of a collection that the document holds in places of their own. */
const OWN_PLACES = ['type', 'features', 'rootreach'];

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The top of a file; null where it is no object or no JSON: then it is set aside, as the model does. */
function rootOf(input: InputFile): Json | null {
  try {
    const value: unknown = JSON.parse(input.text.replace(/^\uFEFF/, ''));
    return isObject(value) ? value : null;
  } catch {
    return null;
  }
}

function featuresOf(root: Json): readonly Json[] {
  const type = root['type'];
  if (type === 'FeatureCollection' && Array.isArray(root['features']))
    return root['features'].filter(isObject);
  if (type === 'Feature') return [root];
  if (typeof type !== 'string' || !GEOMETRIES.includes(type)) return [];
  return [{ type: 'Feature', properties: {}, geometry: root }];
}

/** Type of a geometry; a multi-part of one part counts as that part. */
function shapeOf(geometry: unknown): string {
  if (!isObject(geometry) || typeof geometry['type'] !== 'string') return '';
  const { type, coordinates } = geometry as { readonly type: string; readonly coordinates?: unknown };
  const single = Array.isArray(coordinates) && coordinates.length === 1;
  return single && type !== 'MultiPolygon' ? type.replace(/^Multi/, '') : type;
}

/** A feature whose kind was not written down is what the model took it for. */
function kindOf(properties: Json, geometry: unknown): FeatureKind | null {
  const given = properties['kind'] ?? guessKind(shapeOf(geometry), properties);
  return typeof given === 'string' && KINDS.includes(given) ? (given as FeatureKind) : null;
}

/** Later entries give way to earlier ones. Written as entries, since a member may be called `__proto__`. */
function merged(parts: readonly Json[]): Json {
  return Object.fromEntries(new Map(parts.toReversed().flatMap((part) => Object.entries(part))));
}

/** Gives every thing of a known kind an id of its own. An id that the file gave stays with who had it first. */
function withIds(features: readonly Json[]): SketchFeature[] {
  const taken = new Set<string>();
  const found = features.map((feature) => {
    const properties = isObject(feature['properties']) ? feature['properties'] : {};
    const kind = kindOf(properties, feature['geometry']);
    const id = properties['id'] ?? feature['id'] ?? '';
    const ref = `${kind}/${textOf(id)}`;
    const isFirst = id !== '' && !taken.has(ref);
    if (isFirst) taken.add(ref);
    return { feature, properties, kind, id: isFirst ? id : null };
  });
  const counts = new Map<FeatureKind, number>();
  return found.map(({ feature, properties, kind, id }) => {
    if (kind === null) return { ...feature, properties } as SketchFeature;
    if (properties['kind'] === kind && id !== null && properties['id'] === id)
      return { ...feature, properties } as SketchFeature;
    let n = counts.get(kind) ?? 1;
    while (id === null && taken.has(`${kind}/${ID_PREFIX[kind]}${n}`)) n += 1;
    const given = id ?? `${ID_PREFIX[kind]}${n}`;
    taken.add(`${kind}/${textOf(given)}`);
    counts.set(kind, n);
    return { ...feature, properties: { ...properties, kind, id: given } } as unknown as SketchFeature;
  });
}

/**
 * The files as one document to edit; several are put together, the first one's word counts where they differ.
 * Every thing of a known kind gets an id of its own; all else stays as it stands in the file.
 * @param key Key of the document while it is open.
 * @returns the document, and whether every feature stands in it with the properties it has in the file.
 */
export function readDocument(
  key: string,
  inputs: readonly InputFile[],
): { readonly document: SiteDocument; readonly isAsGiven: boolean } {
  const roots = inputs.map(rootOf).filter((root) => root !== null);
  const info = merged(roots.map((root) => (isObject(root['rootreach']) ? root['rootreach'] : {})));
  const collections = roots.filter((root) => root['type'] === 'FeatureCollection');
  const members = merged(
    collections.map((root) =>
      Object.fromEntries(Object.entries(root).filter(([name]) => !OWN_PLACES.includes(name))),
    ),
  );
  const given = roots.flatMap(featuresOf);
  const features = withIds(given);
  const isAsGiven = features.every((one, i) => one.properties === given[i]?.['properties']);
  return { document: { key, features, info, members }, isAsGiven };
}
