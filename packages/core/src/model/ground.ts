import type { LonLat } from './site.js';

/**
 * Ground elevations on a grid of rows and columns. The places of its four corner cells say where it lies: between
 * them cells are spread evenly, which holds for grids in degrees and, over a few kilometres, for grids of a
 * projected survey.
 */
export interface ElevationGrid {
  readonly columns: number;
  readonly rows: number;
  /** Middles of the corner cells: first row north, first column west. */
  readonly corners: {
    readonly northWest: LonLat;
    readonly northEast: LonLat;
    readonly southWest: LonLat;
    readonly southEast: LonLat;
  };
  /** Metres, row by row from the first; null where not known. */
  readonly elevationsM: readonly (number | null)[];
}

/** What ground elevations rest on. */
export type GroundBasis =
  | { readonly kind: 'none' }
  /** One level tells a height and no fall. */
  | { readonly kind: 'one-level' }
  /** Straight between two levels, or along a row of levels that stand in line; no fall across. */
  | { readonly kind: 'along-levels'; readonly levels: number }
  /** A sloping plane, and what is left over by inverse distance. */
  | {
      readonly kind: 'plane-and-levels';
      readonly levels: number;
      /** How far a level is missed when the others alone speak, root mean square, metres; null below 5 levels. */
      readonly missedByM: number | null;
    }
  /** Between the cells of a grid. */
  | { readonly kind: 'grid'; readonly cellM: number };

/** Ground along a path, from its upper end. */
export interface GroundProfile {
  readonly stationM: readonly number[];
  /** Null where not known. */
  readonly groundM: readonly (number | null)[];
}
