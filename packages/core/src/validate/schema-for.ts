import { z } from 'zod';
import type { Properties } from './columns.js';
import { type FeatureKind, featureSchemas } from './schemas.js';

/** Sets of columns that are remembered: a file has a handful. */
const REMEMBERED = 500;
const known = new Map<string, z.ZodType>();

/** Properties that a kind cannot do without. */
const needed = Object.fromEntries(
  Object.entries(featureSchemas).map(([kind, schema]) => [
    kind,
    Object.entries(schema.shape)
      .filter(([, property]) => !property.safeParse(undefined).success)
      .map(([name]) => name),
  ]),
);

/** Names of the properties of the last feature of each kind, and their schema: features mostly follow others like them. */
const last: Partial<Record<FeatureKind, { readonly names: readonly string[]; readonly schema: z.ZodType }>> =
  {};

const sameNames = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((name, i) => name === b[i]);

function remembered(kind: FeatureKind, names: readonly string[]): z.ZodType {
  const key = `${kind} ${names.join(' ')}`;
  let schema = known.get(key);
  if (schema === undefined) {
    const shape = featureSchemas[kind].shape as Record<string, z.ZodType>;
    const wanted = [...new Set([...names, ...(needed[kind] ?? [])])].filter((name) =>
      Object.hasOwn(shape, name),
    );
    schema = z.object(Object.fromEntries(wanted.map((name) => [name, shape[name] as z.ZodType])));
    if (known.size >= REMEMBERED) known.clear();
    known.set(key, schema);
  }
  return schema;
}

/**
 * Schema of a kind cut down to the properties that a feature has and those it must have: the same verdict as the
 * whole one, without asking for twenty properties that are not there.
 */
export function schemaFor(kind: FeatureKind, values: Properties): z.ZodType {
  const names = Object.keys(values);
  const before = last[kind];
  if (before !== undefined && sameNames(before.names, names)) return before.schema;
  const schema = remembered(kind, names);
  last[kind] = { names, schema };
  return schema;
}
