import { useEffect, useRef } from 'preact/hooks';
import type { SheetHeight } from '../state.js';
import * as state from '../state.js';
import { words } from '../words.js';
import { Card } from './card.js';
import { Cautions } from './cautions.js';
import { Headline } from './headline.js';
import { Issues } from './issues.js';
import { List } from './list.js';
import { TreeCard } from './tree-card.js';

const NEXT: Record<SheetHeight, SheetHeight> = { low: 'half', half: 'full', full: 'low' };
/** A shorter pull than this is a tap. */
const TAP_PIXELS = 6;

/** The height whose pixels are nearest to where the finger let go. */
function nearest(pixels: number): SheetHeight {
  const heights = Object.entries(state.sheetPixels.value) as [SheetHeight, number][];
  const gap = ([, height]: [SheetHeight, number]) => Math.abs(height - pixels);
  return heights.reduce((best, one) => (gap(one) < gap(best) ? one : best))[0];
}

function Handle() {
  const start = useRef<{ y: number; height: number; moved: boolean } | null>(null);
  const height = state.sheetHeight.value;
  const pulled = (event: PointerEvent) => {
    const from = start.current;
    return from ? from.height + from.y - event.clientY : 0;
  };
  return (
    <button
      type="button"
      class="handle"
      aria-label={words.sheet.handle[height]}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        start.current = { y: event.clientY, height: state.sheetPixels.value[height], moved: false };
      }}
      onPointerMove={(event) => {
        const from = start.current;
        if (!from) return;
        if (Math.abs(event.clientY - from.y) > TAP_PIXELS) from.moved = true;
        if (from.moved) state.pulledPixels.value = pulled(event);
      }}
      onPointerUp={(event) => {
        if (start.current?.moved) state.sheetHeight.value = nearest(pulled(event));
        state.pulledPixels.value = null;
      }}
      onPointerCancel={() => {
        start.current = null;
        state.pulledPixels.value = null;
      }}
      onClick={() => {
        if (!start.current?.moved) state.sheetHeight.value = NEXT[height];
        start.current = null;
      }}
    >
      <span />
    </button>
  );
}

function Content() {
  const segment = state.segment.value;
  const tree = state.tree.value;
  if (segment) return <Card segment={segment} />;
  if (tree) return <TreeCard tree={tree} />;
  if (!state.opened.value) {
    return <p class="loading">{state.busy.value ? words.loading : words.nothingOpen}</p>;
  }
  return (
    <>
      <Headline />
      {state.filesHaveErrors.value && <Issues />}
      <List />
      <Cautions />
      {!state.filesHaveErrors.value && <Issues />}
    </>
  );
}

/** One sheet: beside the plan where there is room, else from the bottom in three heights. */
export function Sheet() {
  const body = useRef<HTMLDivElement>(null);
  const shown = state.chosenStretch.value ?? state.chosenTree.value;
  const last = useRef<string | null>(null);
  useEffect(() => {
    const before = last.current;
    last.current = shown;
    if (body.current) body.current.scrollTop = 0;
    if (shown !== null && before === null) {
      body.current?.querySelector<HTMLElement>('.back')?.focus({ preventScroll: true });
    }
    if (shown === null && before !== null) {
      const row = body.current?.querySelector<HTMLElement>(`[data-stretch="${CSS.escape(before)}"]`);
      row?.scrollIntoView({ block: 'center' });
      row?.focus({ preventScroll: true });
    }
  }, [shown]);
  const pixels = state.pulledPixels.value ?? state.sheetPixels.value[state.sheetHeight.value];
  const style = state.wide.value ? {} : { height: `${pixels}px` };
  const pulling = state.pulledPixels.value !== null;
  return (
    <aside class={pulling ? 'sheet pulling' : 'sheet'} style={style} aria-label={words.sheet.label}>
      {!state.wide.value && <Handle />}
      <div class="sheet-body" ref={body} id="sheet-body" tabIndex={-1}>
        <Content />
      </div>
    </aside>
  );
}
