import type { TreeZones } from '@rootreach/core';
import { girth, length } from '../measure.js';
import * as sketch from '../sketch/sketch.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { aboutValue } from './answers/about.js';
import { fillIn } from './answers/fill-in.js';
import { WhatIfNotice } from './answers/look-ahead.js';
import { Assumed } from './assumed.js';
import { Cautions } from './cautions.js';
import { BandWord } from './swatch.js';

const w = () => words.value.tree;
const MOST_STRETCHES = 8;

/** Stretches that this tree has a part in, worst first. */
function threatened(id: string) {
  return state.segments.value
    .flatMap((segment) => {
      const share = segment.trees.find((tree) => tree.id === id)?.share;
      return share === undefined ? [] : [{ segment, share }];
    })
    .slice(0, MOST_STRETCHES);
}

export function TreeCard({ tree }: { readonly tree: TreeZones }) {
  const units = state.units.value;
  const stretches = threatened(tree.id);
  const rows: readonly (readonly [string, string])[] = [
    [w().stem, aboutValue('tree', tree.id, ['dbh', 'girth', 'stems'], girth(tree.stemDiameterM, units))],
    [w().dripline, aboutValue('tree', tree.id, ['canopy_radius'], length(tree.driplineM, units))],
    [w().structural, length(tree.structuralM, units)],
    [w().protection, length(tree.protectionM, units)],
    [w().reach, length(tree.reachM, units)],
  ];
  return (
    <article class="card" aria-label={words.value.model.tree(tree.name)}>
      <button type="button" class="back" onClick={() => state.chooseTree(null)}>
        ‹ {w().back}
      </button>
      <h1 class="capital">{words.value.model.tree(tree.name)}</h1>
      <WhatIfNotice />
      <dl class="facts">
        {rows.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <section aria-labelledby="threatens-title">
        <h2 id="threatens-title">{w().threatens}</h2>
        {stretches.length === 0 && <p>{w().none}</p>}
        <ul class="plain">
          {stretches.map(({ segment, share }) => (
            <li key={segment.id}>
              <button type="button" class="line-button" onClick={() => state.chooseStretch(segment.id)}>
                <span>
                  <BandWord band={segment.band} /> {words.value.list.row(segment, units)}
                </span>
                <span class="number">{w().share(share, segment.score)}</span>
              </button>
            </li>
          ))}
        </ul>
      </section>
      {sketch.site.value && (
        <button type="button" class="button" onClick={() => fillIn({ of: 'tree', id: tree.id })}>
          {words.value.forms.edit.tree}
        </button>
      )}
      <Assumed rows={tree.assumed} />
      <Cautions />
    </article>
  );
}
