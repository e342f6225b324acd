import { batch, computed, signal } from '@preact/signals';
import type { Change } from './changes.js';
import { type FeatureRef, find, type SiteDocument } from './document.js';

/** One step that can be taken back: what it was called and the document before it. */
interface Step {
  readonly label: string;
  readonly before: SiteDocument;
}

/** Steps kept; documents share what did not change, so that a step costs little. */
const MOST_STEPS = 300;

/** The site that can be edited; null where none is open or it is too large to edit here. */
export const site = signal<SiteDocument | null>(null);
const past = signal<readonly Step[]>([]);
const future = signal<readonly Step[]>([]);

/** What the user has taken up to edit. */
export const chosen = signal<FeatureRef | null>(null);
export const chosenFeature = computed(() =>
  site.value && chosen.value ? (find(site.value, chosen.value) ?? null) : null,
);

/** A shape that is being drawn place by place: until it is done, undo and redo speak of its places. */
export const underWay = signal<{
  readonly undo: () => void;
  readonly redo: () => void;
  readonly canRedo: () => boolean;
} | null>(null);

export const canUndo = computed(() => underWay.value !== null || past.value.length > 0);
export const canRedo = computed(() => underWay.value?.canRedo() ?? future.value.length > 0);
export const lastLabel = computed(() => past.value.at(-1)?.label ?? null);
export const nextLabel = computed(() => future.value.at(-1)?.label ?? null);

/** Opens a document with an empty history. */
export function openDocument(document: SiteDocument | null): void {
  batch(() => {
    site.value = document;
    past.value = [];
    future.value = [];
    underWay.value = null;
    chosen.value = null;
  });
}

function remember(label: string, before: SiteDocument): void {
  past.value = [...past.value.slice(1 - MOST_STEPS), { label, before }];
  future.value = [];
}

/** Makes one change that can be undone. @param label What it did, in plain words of the user's language. */
export function edit(label: string, change: Change): void {
  const before = site.value;
  if (!before) return;
  const after = change(before);
  if (after === before) return;
  batch(() => {
    remember(label, before);
    site.value = after;
  });
}

/** A change in many small moves, such as a drag: one step of history when it is done. */
export function startMove(label: string): { move(change: Change): void; done(): void; cancel(): void } {
  const before = site.value;
  return {
    move(change) {
      if (before) site.value = change(before);
    },
    done() {
      if (before && site.value !== before) remember(label, before);
    },
    cancel() {
      site.value = before;
    },
  };
}

export function undo(): void {
  if (underWay.value) {
    underWay.value.undo();
    return;
  }
  const step = past.value.at(-1);
  if (!step || !site.value) return;
  const now = site.value;
  batch(() => {
    past.value = past.value.slice(0, -1);
    future.value = [...future.value, { label: step.label, before: now }];
    site.value = step.before;
  });
}

export function redo(): void {
  if (underWay.value) {
    underWay.value.redo();
    return;
  }
  const step = future.value.at(-1);
  if (!step || !site.value) return;
  const now = site.value;
  batch(() => {
    future.value = future.value.slice(0, -1);
    past.value = [...past.value, { label: step.label, before: now }];
    site.value = step.before;
  });
}
