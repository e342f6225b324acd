import type { Feature, FeatureCollection, Geometry } from 'geojson';
import { type GeoJSONValidator, isFeature, isFeatureCollection, valid } from 'geojson-validation';
import type { Issue, Place } from '../model/issue.js';

/** Features that passed RFC 7946, with their number in the file. */
export interface Gated {
  readonly features: readonly { readonly index: number; readonly feature: Feature }[];
  readonly issues: readonly Issue[];
  /** The collection or feature itself, for its own members. */
  readonly root: Readonly<Record<string, unknown>>;
}

const fault = (place: Place, rule: string): Issue => ({
  code: 'not-geojson',
  severity: 'error',
  rule,
  place,
});

/** The checker looks a type up on a plain object, where `constructor` and its like are found as well. */
function hasOddType(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { type, geometry, features, geometries } = value as Record<string, unknown>;
  if ((typeof type === 'string' && type in {}) || hasOddType(geometry)) return true;
  return [features, geometries].some((list) => Array.isArray(list) && list.some(hasOddType));
}

/** Deep nesting can exhaust the checker's stack; that is a fault of the file, not ours. */
function traced(check: GeoJSONValidator, value: unknown): readonly string[] {
  try {
    if (hasOddType(value)) return ['there is no such type'];
    // it puts whatever stands in place of a number into its words, an object too
    return check(value as never, true).map((rule) => rule.replace(/ Item [\s\S]*/, ''));
  } catch (error) {
    return [error instanceof RangeError ? 'nested too deeply' : 'cannot be read as GeoJSON'];
  }
}

/** RFC 7946, 5: a bbox is a list of numbers; the checker looks only at how many there are. */
function boxRule(value: { readonly bbox?: unknown }): string | null {
  const { bbox } = value;
  if (bbox === undefined || (Array.isArray(bbox) && bbox.every(Number.isFinite))) return null;
  return 'bbox must be a list of numbers';
}

/** What the checker lets through though RFC 7946 does not: properties that are a list, an id that is an object. */
function ownRules(feature: Feature): string | null {
  const { properties, id } = feature as { properties: unknown; id?: unknown };
  if (Array.isArray(properties) || (properties !== null && typeof properties !== 'object')) {
    return 'properties must be an object or null';
  }
  if (id !== undefined && typeof id !== 'string' && typeof id !== 'number') {
    return 'id must be a string or a number';
  }
  return boxRule(feature) ?? (feature.geometry === null ? null : boxRule(feature.geometry));
}

/** The rule that a feature breaks, or null. */
export const ruleBrokenBy = (feature: Feature): string | null =>
  traced(isFeature, feature)[0] ?? ownRules(feature);

function gateCollection(file: string, value: FeatureCollection): Gated {
  const issues: Issue[] = [];
  const features: { index: number; feature: Feature }[] = [];
  const whole = traced(isFeatureCollection, value);
  if (!Array.isArray(value.features)) {
    const rule = whole[0] ?? 'features must be a list';
    return {
      features,
      issues: [fault({ file, index: null, feature: null, path: '' }, rule)],
      root: { ...value },
    };
  }
  // one bad feature must not take the rest with it: look one by one only where the whole failed
  value.features.forEach((feature: Feature | null, index) => {
    const place = { file, index, feature: null, path: '' };
    if (feature === null || typeof feature !== 'object') {
      issues.push(fault(place, 'a feature must be an object'));
      return;
    }
    const broken = whole.length > 0 ? ruleBrokenBy(feature) : ownRules(feature);
    if (broken === null) features.push({ index, feature });
    else issues.push(fault(place, broken));
  });
  const rule = whole[0] ?? boxRule(value);
  if (rule !== null && issues.length === 0) {
    issues.push(fault({ file, index: null, feature: null, path: '' }, rule));
  }
  return { features, issues, root: value as unknown as Record<string, unknown> };
}

/** First gate: is it GeoJSON by RFC 7946? A lone feature or geometry is taken as a collection of one. */
export function gate(file: string, value: unknown): Gated {
  const place = { file, index: null, feature: null, path: '' };
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return { features: [], issues: [fault(place, 'the top level must be a GeoJSON object')], root: {} };
  }
  const root = value as Record<string, unknown>;
  if (root['type'] === 'FeatureCollection') return gateCollection(file, value as FeatureCollection);
  const rule = traced(valid, value)[0] ?? boxRule(root) ?? undefined;
  if (rule !== undefined) return { features: [], issues: [fault(place, rule)], root };
  if (root['type'] === 'Feature') {
    const feature = value as Feature;
    const broken = ownRules(feature);
    if (broken !== null) return { features: [], issues: [fault(place, broken)], root };
    return { features: [{ index: 0, feature }], issues: [], root };
  }
  const geometry = value as Geometry;
  return {
    features: [{ index: 0, feature: { type: 'Feature', properties: null, geometry } }],
    issues: [{ code: 'bare-geometry', severity: 'warning', type: geometry.type, place }],
    root,
  };
}
