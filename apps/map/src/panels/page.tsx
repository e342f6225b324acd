import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Opener } from '../open.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { Header } from './header.js';
import { Problem } from './issues.js';
import { PlanView } from './plan-view.js';
import { Sheet } from './sheet.js';

const carriesFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;

/** Files may be dropped anywhere on the page. */
function takeDrops(opener: Opener, over: (dragging: boolean) => void): () => void {
  const controller = new AbortController();
  const on = (name: 'dragover' | 'dragleave' | 'drop', act: (event: DragEvent) => void) =>
    window.addEventListener(name, act, { signal: controller.signal });
  on('dragover', (event) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    over(true);
  });
  on('dragleave', (event) => {
    if (event.relatedTarget === null) over(false);
  });
  on('drop', (event) => {
    event.preventDefault();
    over(false);
    void opener.openFiles([...(event.dataTransfer?.files ?? [])]);
  });
  return () => controller.abort();
}

function SkipLink() {
  return (
    <button type="button" class="skip" onClick={() => document.getElementById('sheet-body')?.focus()}>
      {words.value.skip}
    </button>
  );
}

export function Page({ opener }: { readonly opener: Opener }) {
  const dragging = useSignal(false);
  useEffect(
    () =>
      takeDrops(opener, (over) => {
        dragging.value = over;
      }),
    [opener, dragging],
  );
  return (
    <div class="page" aria-busy={state.busy.value}>
      <SkipLink />
      <Header opener={opener} />
      <PlanView />
      <Sheet />
      <Problem />
      {state.busy.value && (
        <p class="busy" role="status">
          {words.value.loading}
        </p>
      )}
      {dragging.value && <p class="drop">{words.value.header.drop}</p>}
    </div>
  );
}
