import { computed, signal } from '@preact/signals';
import type {
  Box,
  Issue,
  LineDetail,
  LineResult,
  SegmentResult,
  Severity,
  TreeZones,
  Units,
} from '@rootreach/core';
import type { View } from './large.js';
import type { Opened } from './tasks.js';
import type { Shared } from './url.js';

export type SheetHeight = 'low' | 'half' | 'full';

/** What the sheet shows: the ranking, the sketch, a new line, the work, the sites on this device. */
export type SheetPlace = 'find' | 'draw' | 'route' | 'work' | 'sites';

/** More features than this are drawn on canvas: one SVG element each would be slow on a phone. */
const CANVAS_FROM = 2000;

const SEVERITIES: readonly Severity[] = ['error', 'warning', 'notice'];

const SMALL_FROM_METRES_PER_PIXEL = 0.32;

/** All state of the page. Events write it; `layers/` and `panels/` draw it. */
export const opened = signal<Opened | null>(null);
/** Key of the bundled site that is open, or null for the user's own files. */
export const siteKey = signal<string | null>(null);
export const fileNames = signal<readonly string[]>([]);
/** True from the start: the first site is on its way. */
export const busy = signal(true);
/** Why the last file could not be opened; the open site stays. */
export const problem = signal<string | null>(null);
/** Of a large site the worker tells what is asked for: the part of the plan in view, what was tapped, what was chosen. */
export const viewWanted = signal<{ readonly box: Box; readonly metresPerPixel: number } | null>(null);
export const view = signal<View | null>(null);
export const tapped = signal<{ readonly lon: number; readonly lat: number; readonly withinM: number } | null>(
  null,
);
export const around = signal<LineDetail | null>(null);
export const chosenStretch = signal<string | null>(null);
export const chosenTree = signal<string | null>(null);
/** Stretch under the pointer, in the list or on the plan. */
export const hintedStretch = signal<string | null>(null);
/** Null until the user has switched: then the site's own units count. */
export const switchedUnits = signal<Units | null>(null);
export const sheetHeight = signal<SheetHeight>('half');
export const sheetPlace = signal<SheetPlace>('find');
/** Height of the sheet while a finger pulls it, pixels. */
export const pulledPixels = signal<number | null>(null);
/** Years from today that the ranking speaks for: trees grow, the clock runs. */
export const yearsAhead = signal(0);
/** What if every line were dug up and cleared of roots this year? */
export const clearedNow = signal(false);
export const keyOpen = signal(true);
/** Metres one pixel of the plan stands for; 0 before the plan is there. */
export const metresPerPixel = signal(0);
export const dark = signal(false);
/** The sheet lies beside the plan, not over it. */
export const wide = signal(true);
/** Height of the page, pixels. */
export const pageHeight = signal(800);

/** Heights of the sheet as it lies over the plan on a phone, pixels. */
export const sheetPixels = computed<Record<SheetHeight, number>>(() => ({
  low: 150,
  half: Math.round(pageHeight.value * 0.46),
  full: pageHeight.value - 76,
}));

/** Height of the bar of drawing tools with the gap under it. */
const BAR_PIXELS = 70;

/** Lower part of the plan that the sheet lies over. At full height the plan cannot be seen anyway. */
export const coveredBySheet = computed(() => {
  if (wide.value) return 0;
  return sheetHeight.value === 'low' ? sheetPixels.value.low : sheetPixels.value.half;
});

/** Lower part of the plan that the sheet and the drawing tools lie over. */
export const coveredBottom = computed(
  () => coveredBySheet.value + (sheetPlace.value === 'draw' ? BAR_PIXELS : 0),
);

/** The plan shows so much ground that full line weights would run together. */
export const smallScale = computed(() => metresPerPixel.value > SMALL_FROM_METRES_PER_PIXEL);

/** Room for the key between the buttons above it and the sheet, on a phone. */
export const keyPixels = computed(() => Math.max(120, pageHeight.value - coveredBottom.value - 186));

export const units = computed<Units>(() => switchedUnits.value ?? opened.value?.site.units ?? 'us');

const byId = <T, K extends string>(rows: readonly T[], key: (row: T) => K) =>
  new Map(rows.map((row) => [key(row), row] as const));

export const segments = computed<readonly SegmentResult[]>(() => opened.value?.result.segments ?? []);
export const segmentById = computed(() =>
  byId([...segments.value, ...(around.value?.segments ?? [])], (row) => row.id),
);
export const treeById = computed(() =>
  byId([...(opened.value?.result.trees ?? []), ...(around.value?.trees ?? [])], (row) => row.id),
);
export const lineById = computed(() =>
  byId(
    [...(opened.value?.result.lines ?? []), ...(around.value ? [around.value.line] : [])],
    (row) => row.drainId,
  ),
);

/** All that was found in the files, worst first, else in the order found. */
export const issues = computed<readonly Issue[]>(() => {
  const all = [...(opened.value?.issues ?? []), ...(opened.value?.result.issues ?? [])];
  return SEVERITIES.flatMap((severity) => all.filter((one) => one.severity === severity));
});

/** Something was set aside: then it is said before the list, not after. */
export const filesHaveErrors = computed(() => issues.value[0]?.severity === 'error');

export const segment = computed<SegmentResult | null>(
  () => segmentById.value.get(chosenStretch.value ?? '') ?? null,
);
export const tree = computed<TreeZones | null>(() => treeById.value.get(chosenTree.value ?? '') ?? null);
export const line = computed<LineResult | null>(
  () => lineById.value.get(segment.value?.drainId ?? '') ?? null,
);

/** The site is too large to be held here: the worker has it, the page has the worst of it and what is in view. */
export const isLarge = computed(() => Boolean(opened.value?.large));

export const onCanvas = computed(() => {
  const site = opened.value?.site;
  if (!site) return false;
  const drawn = [segments.value, site.trees, site.fittings, site.obstacles];
  return drawn.reduce((sum, rows) => sum + rows.length, 0) > CANVAS_FROM;
});

export const shared = computed<Shared>(() => ({
  site: siteKey.value,
  stretch: chosenStretch.value,
  units: switchedUnits.value,
}));

export function chooseStretch(id: string | null): void {
  chosenTree.value = null;
  chosenStretch.value = id;
  if (id !== null && sheetHeight.value === 'low') sheetHeight.value = 'half';
}

export function chooseTree(id: string | null): void {
  chosenStretch.value = null;
  chosenTree.value = id;
  if (id !== null && sheetHeight.value === 'low') sheetHeight.value = 'half';
}

/** One step along the line: up from the outlet or down towards it. */
export function stepAlong(by: 1 | -1): void {
  const ids = line.value?.segments ?? [];
  const next = ids[ids.indexOf(chosenStretch.value ?? '') + by];
  if (next !== undefined && segmentById.value.has(next)) chooseStretch(next);
}
