import { editDistance, slipsAllowed } from '../names/edit-distance.js';
import type { Properties } from './columns.js';
import { type FeatureKind, featureSchemas } from './schemas.js';

const remembered = new Map<FeatureKind, Map<string, string | null>>();

/** The known property that a name was probably meant to be, or null: files may carry columns of their own. */
function meantBy(kind: FeatureKind, name: string): string | null {
  const known = Object.keys(featureSchemas[kind].shape);
  const slips = slipsAllowed(name);
  if (slips === 0 || name === 'kind' || known.includes(name)) return null;
  return known.find((other) => editDistance(name.toLowerCase(), other, slips) <= slips) ?? null;
}

/** Properties of a feature that look like a slip of the pen, each with what it was meant to be. */
export function misspelt(kind: FeatureKind, properties: Properties): { name: string; meant: string }[] {
  const found: { name: string; meant: string }[] = [];
  const names = remembered.get(kind) ?? new Map<string, string | null>();
  remembered.set(kind, names);
  for (const name in properties) {
    let meant = names.get(name);
    if (meant === undefined) {
      meant = meantBy(kind, name);
      names.set(name, meant);
    }
    if (meant !== null && properties[meant] === undefined) found.push({ name, meant });
  }
  return found;
}
