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

const TOO_DEEP = 'nested too deeply';

/** The checker puts whatever stands in place of a number into its words, an object too. */
const worded = (rule: string): string =>
  rule.replace(/ Item [\s\S]*? at index (\d+) is invalid\./g, ' The one at index $1 is none.');

/** Deep nesting can exhaust the checker's stack; that is a fault of the file, not ours. */
function traced(check: GeoJSONValidator, value: unknown): readonly string[] {
  try {
    const rules = check(value as never, true);
    return rules.length === 0 ? rules : rules.map(worded);
  } catch (error) {
    return [error instanceof RangeError ? TOO_DEEP : 'cannot be read as GeoJSON'];
  }
}

/** RFC 7946, 5: a bbox is a list of numbers; the checker looks only at how many there are. */
function boxRule(value: { readonly bbox?: unknown }): string | null {
  const { bbox } = value;
  if (bbox === undefined || (Array.isArray(bbox) && bbox.every(Number.isFinite))) return null;
  return 'bbox must be a list of numbers';
}

/** The checker looks a type up on a plain object, where `constructor` and its like are found as well. */
function typeRule(geometry: unknown): string | null {
  const { type, geometries } = (geometry ?? {}) as { type?: unknown; geometries?: unknown };
  if (typeof type === 'string' && type in {}) return `there is no geometry of type "${type}"`;
  if (!Array.isArray(geometries)) return null;
  for (const one of geometries) {
    const rule = typeRule(one);
    if (rule !== null) return rule;
  }
  return null;
}

function ruleOfTypes(geometry: unknown): string | null {
  try {
    return typeRule(geometry);
  } catch (error) {
    if (error instanceof RangeError) return TOO_DEEP;
    throw error;
  }
}

/** What the checker lets through though RFC 7946 does not: properties that are a list, an id that is an object. */
function ownRules(feature: Feature): string | null {
  const { properties, id, geometry } = feature as { properties: unknown; id?: unknown; geometry: unknown };
  const type = ruleOfTypes(geometry);
  if (type !== null) return type;
  if (Array.isArray(properties) || (properties !== null && typeof properties !== 'object')) {
    return 'properties must be an object or null';
  }
  if (id !== undefined && typeof id !== 'string' && typeof id !== 'number') {
    return 'id must be a string or a number';
  }
  return boxRule(feature) ?? (geometry === null || geometry === undefined ? null : boxRule(geometry));
}

/** The rule that a feature breaks, or null. */
export const ruleBrokenBy = (feature: Feature): string | null =>
  ruleOfTypes(feature.geometry) ?? traced(isFeature, feature)[0] ?? ownRules(feature);

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
  const rule =
    (root['type'] === 'Feature' ? null : ruleOfTypes(root)) ?? traced(valid, value)[0] ?? boxRule(root);
  if (rule !== null) return { features: [], issues: [fault(place, rule)], root };
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
