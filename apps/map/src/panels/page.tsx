import { useSignal } from '@preact/signals';
import type { Opener } from '../open.js';
import * as state from '../state.js';
import { words } from '../words.js';
import { Header } from './header.js';
import { Problem } from './issues.js';
import { PlanView } from './plan-view.js';
import { Sheet } from './sheet.js';

const carriesFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;

export function Page({ opener }: { readonly opener: Opener }) {
  const dragging = useSignal(false);
  return (
    <div
      class="page"
      aria-busy={state.busy.value}
      onDragOver={(event) => {
        if (!carriesFiles(event)) return;
        event.preventDefault();
        dragging.value = true;
      }}
      onDragLeave={(event) => {
        if (event.relatedTarget === null) dragging.value = false;
      }}
      onDrop={(event) => {
        event.preventDefault();
        dragging.value = false;
        void opener.openFiles([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <a class="skip" href="#sheet-body" onClick={(event) => {
        event.preventDefault();
        document.getElementById('sheet-body')?.focus();
      }}>
        {words.skip}
      </a>
      <Header opener={opener} />
      <PlanView />
      <Sheet />
      <Problem />
      {state.busy.value && <p class="busy" role="status">{words.loading}</p>}
      {dragging.value && <p class="drop">{words.header.drop}</p>}
    </div>
  );
}
