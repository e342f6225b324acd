import type { Band } from '@rootreach/core';

/** Papers and inks of the drawings. */
export const ink = {
  paper: '#faf7ef',
  ink: '#23271f',
  soft: '#565b4e',
  rule: '#d9d4c4',
  grid: '#ece7d9',
  building: '#ddd8ca',
  buildingEdge: '#6f6c62',
  paving: '#ebe7db',
  pavingEdge: '#b5b0a1',
  pool: '#dbe2e1',
  tree: '#2f5a3c',
  root: '#4a7a3a',
  utility: '#1f5f78',
  pen: '#8a2f4a',
} as const;

/** How a stretch of line is drawn: weight and pattern say what the colour says, for grey prints and all eyes. */
export interface Stroke {
  readonly width: number;
  readonly color: string;
  readonly casing: { readonly width: number; readonly color: string } | null;
  readonly centre: { readonly width: number; readonly color: string } | null;
  readonly dash: string | null;
}

const plain = (width: number, color: string): Stroke => ({
  width,
  color,
  casing: null,
  centre: null,
  dash: null,
});

export const bandStroke: Readonly<Record<Band, Stroke>> = {
  leave: plain(1.8, '#8d9983'),
  watch: plain(3.4, '#b98d2e'),
  inspect: { ...plain(5.6, '#b04e2a'), centre: { width: 1.6, color: '#fbe3d0' } },
  act: { ...plain(5.6, '#4a1942'), casing: { width: 8.6, color: '#1f0a1c' } },
  'cannot-say': { ...plain(2.8, '#77776f'), dash: '5 4' },
};
