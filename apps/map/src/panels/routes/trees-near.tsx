import type { TreeHarm } from '@rootreach/core';
import * as measure from '../../measure.js';
import * as state from '../../state.js';
import { words } from '../../words/words.js';

const w = () => words.value.routes;

/** A tree by its kind, as the page calls it. */
export function treeName(id: string): string {
  const known = state.treeById.value.get(id)?.name;
  return known === undefined ? id : words.value.model.tree(known);
}

/** Trees that what is dug comes near: how near, and how much of their roots it takes. */
export function TreesNear({ trees }: { readonly trees: readonly TreeHarm[] }) {
  const units = state.units.value;
  const near = trees.filter(({ rule }) => rule !== 'clear');
  if (near.length === 0) return null;
  return (
    <section>
      <h2>{w().trees}</h2>
      <ul class="route-trees">
        {near.map(({ id, nearestM, severedShare, rule }) => (
          <li key={id}>
            <span class="capital">
              {w().tree(treeName(id), measure.length(Math.max(0, nearestM), units), severedShare)}
            </span>
            <b>{w().rules[rule]}</b>
          </li>
        ))}
      </ul>
    </section>
  );
}
