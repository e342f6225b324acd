import type { Band, Box } from '@rootreach/core';

/** A site too large to be held by the page: drawn from what the worker says of the part in view. */
export interface Large {
  readonly bounds: Box;
}

/** Strokes of one band: pairs of longitude and latitude, and where each stroke begins in them (in pairs). */
export interface Strokes {
  readonly points: Float64Array;
  readonly starts: Int32Array;
}

/** What to draw of a part of a large site, in columns that are handed over, not copied. */
export interface View {
  readonly box: Box;
  readonly strokes: Readonly<Record<Band, Strokes>>;
  /** Five numbers a tree: longitude, latitude, stem radius, dripline and reach, metres. */
  readonly trees: Float64Array;
}

export const TREE_COLUMNS = 5;
