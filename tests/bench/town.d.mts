/** A seeded town as two GeoJSON texts. */
export function makeTown(counts: { readonly trees: number; readonly lines: number; readonly seed: number }): {
  readonly trees: string;
  readonly lines: string;
};
