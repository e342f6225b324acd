import type { Site } from '@rootreach/core';
import type { InputFile } from '../tasks.js';
import { freeId } from './changes.js';
import type { FeatureKind, SiteDocument, SketchFeature } from './document.js';

type Json = Readonly<Record<string, unknown>>;

const KINDS: readonly string[] = ['tree', 'drain', 'fitting', 'finding', 'obstacle', 'barrier', 'level'];

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function featuresOf(root: Json): readonly Json[] {
  if (root['type'] === 'FeatureCollection' && Array.isArray(root['features']))
    return root['features'].filter(isObject);
  if (root['type'] === 'Feature') return [root];
  return [];
}

/** A feature whose kind was not written down is what the model took it for. */
function kindOf(properties: Json, geometry: unknown): string | null {
  const given = properties['kind'];
  if (typeof given === 'string') return given;
  const type = isObject(geometry) ? geometry['type'] : null;
  if (type === 'Point') return 'tree';
  return type === 'LineString' ? 'drain' : null;
}

/**
 * The files as one document to edit; several are put together. Every thing of a known kind gets an id of its own.
 * @param site What the model read from the same files: its word counts on what the whole is called.
 */
export function readDocument(key: string, inputs: readonly InputFile[], site: Site): SiteDocument {
  const roots = inputs.map((input) => JSON.parse(input.text.replace(/^\uFEFF/, '')) as Json);
  const info = Object.assign(
    {},
    ...roots.toReversed().map((root) => (isObject(root['rootreach']) ? root['rootreach'] : {})),
  ) as Json;
  const members: Record<string, unknown> = {};
  for (const root of roots) {
    for (const [name, value] of Object.entries(root)) {
      if (root['type'] !== 'FeatureCollection') continue;
      if (!['type', 'features', 'rootreach', 'bbox'].includes(name)) members[name] ??= value;
    }
  }
  let document: SiteDocument = {
    key,
    features: [],
    info: site.units && info['units'] === undefined ? { ...info, units: site.units } : info,
    members,
  };
  const features: SketchFeature[] = [];
  document = { ...document, features };
  const taken = new Set<string>();
  for (const feature of roots.flatMap(featuresOf)) {
    const properties = isObject(feature['properties']) ? feature['properties'] : {};
    const kind = kindOf(properties, feature['geometry']);
    const known = kind !== null && KINDS.includes(kind);
    let id = properties['id'];
    if (known && (id === undefined || taken.has(`${kind}/${id}`))) {
      id = freeId(document, kind as FeatureKind);
    }
    if (known) taken.add(`${kind}/${id}`);
    const kept = known ? { ...properties, kind, id } : properties;
    features.push({ ...feature, properties: kept } as SketchFeature);
  }
  return document;
}
