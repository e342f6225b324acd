import type { TreeField } from './tree-field.js';

/** Usual common name of a tree of the field: `American elm`. */
export function treeName(field: TreeField, number: number): string {
  return field.sizeOf(number).row.common[0];
}
