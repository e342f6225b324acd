/**
 * JSON as it is written, so that what a value of the language cannot hold can be kept: a member twice, `__proto__` as
 * a member of its own, `1e999`.
 */
export type Tree = { raw: string } | { items: Tree[] } | { members: [string, Tree][] };

export function treeOf(value: unknown): Tree {
  if (Array.isArray(value)) return { items: value.map(treeOf) };
  if (typeof value === 'object' && value !== null) {
    return { members: Object.entries(value).map(([name, part]) => [name, treeOf(part)]) };
  }
  return { raw: JSON.stringify(value) };
}

export function textOfTree(tree: Tree): string {
  if ('raw' in tree) return tree.raw;
  if ('items' in tree) return `[${tree.items.map(textOfTree).join(',')}]`;
  return `{${tree.members.map(([name, part]) => `${JSON.stringify(name)}:${textOfTree(part)}`).join(',')}}`;
}

/** A place in a tree: the list or object that holds it, and its number there. */
export interface Slot {
  readonly holder: Exclude<Tree, { raw: string }>;
  readonly at: number;
}

/** All places below a tree. */
export function slotsOf(tree: Tree): Slot[] {
  const slots: Slot[] = [];
  const walk = (one: Tree): void => {
    if ('raw' in one) return;
    const parts = 'items' in one ? one.items : one.members.map(([, part]) => part);
    parts.forEach((part, at) => {
      slots.push({ holder: one, at });
      walk(part);
    });
  };
  walk(tree);
  return slots;
}

export const treeAt = ({ holder, at }: Slot): Tree =>
  'items' in holder ? (holder.items[at] as Tree) : (holder.members[at] as [string, Tree])[1];

export function putAt({ holder, at }: Slot, tree: Tree): void {
  if ('items' in holder) holder.items[at] = tree;
  else (holder.members[at] as [string, Tree])[1] = tree;
}

export const copyOf = (tree: Tree): Tree => {
  if ('raw' in tree) return { raw: tree.raw };
  if ('items' in tree) return { items: tree.items.map(copyOf) };
  return { members: tree.members.map(([name, part]) => [name, copyOf(part)]) };
};
