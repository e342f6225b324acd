import { type Metres, metres } from '../units/quantity.js';

/**
 * Radius of the roots that hold the tree up: AS 4970-2009 (3.3.5), 0.64 (50 D)^0.42 with D in metres above
 * the root flare, at least 1.5 m. We use the diameter at breast height, which is a little smaller than the
 * diameter above the flare.
 */
export function structuralRadius(stemDiameter: Metres): Metres {
  return metres(Math.max(1.5, 0.64 * (50 * stemDiameter) ** 0.42));
}
