import type { Change } from '../../sketch/changes.js';
import { setInfo, setProperties } from '../../sketch/changes.js';
import { refOf, type SketchFeature } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';

export type Values = Readonly<Record<string, unknown>>;

/** What a form writes to: the properties of one feature, or what the site says of itself. */
export interface Target {
  readonly key: string;
  readonly values: Values;
  /** `undefined` takes a value away. */
  readonly set: (values: Values) => Change;
}

export function targetOf(feature: SketchFeature): Target {
  const ref = refOf(feature);
  return {
    key: `${ref.kind}/${ref.id}`,
    values: feature.properties,
    set: (values) => setProperties(ref, values),
  };
}

export function siteTarget(): Target {
  return { key: 'site', values: sketch.site.value?.info ?? {}, set: setInfo };
}
