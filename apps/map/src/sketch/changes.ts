import {
  type FeatureKind,
  type FeatureRef,
  isSame,
  refOf,
  type SiteDocument,
  type SketchFeature,
} from './document.js';

/** A change makes a new document from the one before. */
export type Change = (site: SiteDocument) => SiteDocument;

/** How ids of a kind begin. */
export const ID_PREFIX: Readonly<Record<FeatureKind, string>> = {
  tree: 't',
  drain: 'line',
  fitting: 'f',
  finding: 'look',
  obstacle: 'o',
  barrier: 'b',
  level: 'z',
};

/** The next id of a kind that nothing has yet: `t4`. */
export function freeId(site: SiteDocument, kind: FeatureKind): string {
  const taken = new Set(site.features.map(refOf).flatMap((ref) => (ref.kind === kind ? [ref.id] : [])));
  let n = taken.size + 1;
  while (taken.has(`${ID_PREFIX[kind]}${n}`)) n += 1;
  return `${ID_PREFIX[kind]}${n}`;
}

export const add =
  (...made: readonly SketchFeature[]): Change =>
  (site) => ({ ...site, features: [...site.features, ...made] });

export const remove =
  (ref: FeatureRef): Change =>
  (site) => ({ ...site, features: site.features.filter((one) => !isSame(refOf(one), ref)) });

export const replace =
  (ref: FeatureRef, make: (before: SketchFeature) => SketchFeature): Change =>
  (site) => ({
    ...site,
    features: site.features.map((one) => (isSame(refOf(one), ref) ? make(one) : one)),
  });

/** Sets properties; `undefined` takes one away. */
export const setProperties = (ref: FeatureRef, values: Readonly<Record<string, unknown>>): Change =>
  replace(ref, (before) => {
    const properties: Record<string, unknown> = { ...before.properties, ...values };
    for (const [name, value] of Object.entries(values)) if (value === undefined) delete properties[name];
    return { ...before, properties };
  });

export const setInfo =
  (values: Readonly<Record<string, unknown>>): Change =>
  (site) => {
    const info: Record<string, unknown> = { ...site.info, ...values };
    for (const [name, value] of Object.entries(values)) if (value === undefined) delete info[name];
    return { ...site, info };
  };
