import type { ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { SheetHeight, SheetPlace } from '../state.js';
import * as state from '../state.js';
import { words } from '../words/words.js';
import { Find } from './find.js';
import { Later } from './later.js';
import { Places } from './places.js';

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
      aria-label={words.value.sheet.handle[height]}
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

const PANELS: Record<Exclude<SheetPlace, 'find'>, () => Promise<ComponentType>> = {
  draw: async () => (await import('./draw/draw.js')).Draw,
  route: async () => (await import('./routes/routes.js')).Routes,
  work: async () => (await import('./works/works.js')).Works,
  sites: async () => (await import('./sites/sites.js')).Sites,
};

function Content() {
  const place = state.sheetPlace.value;
  return place === 'find' ? <Find /> : <Later key={place} load={PANELS[place]} />;
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
    <aside class={pulling ? 'sheet pulling' : 'sheet'} style={style} aria-label={words.value.sheet.label}>
      {!state.wide.value && <Handle />}
      <Places />
      <div class="sheet-body" ref={body} id="sheet-body" tabIndex={-1}>
        <Content />
      </div>
    </aside>
  );
}
