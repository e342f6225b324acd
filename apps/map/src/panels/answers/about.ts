import { type FeatureKind, find } from '../../sketch/document.js';
import * as sketch from '../../sketch/sketch.js';
import { words } from '../../words/words.js';

/**
 * A value said to be an estimate where the sketch marks it so.
 * @param bases Names of the properties it may stand under, without unit: `dbh`.
 */
export function aboutValue(kind: FeatureKind, id: string, bases: readonly string[], value: string): string {
  const site = sketch.site.value;
  const properties = site ? find(site, { kind, id })?.properties : undefined;
  const about = bases.some((base) => properties?.[`${base}_about`] === true);
  return about ? words.value.forms.aboutValue(value) : value;
}
