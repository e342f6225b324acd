import * as state from '../state.js';
import { words } from '../words/words.js';
import { LookAhead, WhatIfNotice } from './answers/look-ahead.js';
import { Card } from './card.js';
import { Cautions } from './cautions.js';
import { Headline } from './headline.js';
import { Issues } from './issues.js';
import { List } from './list.js';
import { Taken } from './taken.js';
import { TreeCard } from './tree-card.js';

/** The ranking, worst first, or the card of what was chosen from it. */
export function Find() {
  const segment = state.segment.value;
  const tree = state.tree.value;
  if (segment) return <Card segment={segment} />;
  if (tree) return <TreeCard tree={tree} />;
  if (!state.opened.value) {
    return <p class="loading">{state.busy.value ? words.value.loading : words.value.nothingOpen}</p>;
  }
  return (
    <>
      <Headline />
      <Taken />
      <WhatIfNotice />
      <LookAhead />
      {state.filesHaveErrors.value && <Issues />}
      <List />
      <Cautions />
      {!state.filesHaveErrors.value && <Issues />}
    </>
  );
}
