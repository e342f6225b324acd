import { rootDensity } from '@rootreach/core';

/** Strength of the wash at the stem. */
const FULL = 0.44;
const STOPS = 16;

/** Opacity from the stem outward, as shares of the reach: the picture is the model's own curve. */
export const washStops: readonly { readonly at: number; readonly opacity: number }[] = Array.from(
  { length: STOPS + 1 },
  (_, i) => {
    const at = i / STOPS;
    // The last five hundredths are let down to nothing so that no edge is seen where none is.
    const faded = at > 0.9 ? (1 - at) / 0.1 : 1;
    return { at, opacity: FULL * rootDensity(at, 1) * faded };
  },
);
