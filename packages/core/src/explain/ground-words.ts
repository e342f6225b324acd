import type { GroundBasis } from '../model/ground.js';

/**
 * What ground elevations rest on: `from 2 spot levels, straight between them`.
 * @param basis of a planned route.
 * @param length a length as the reader wants it, from metres: `3 ft`.
 */
export function wordGroundBasis(basis: GroundBasis, length: (lengthM: number) => string): string {
  switch (basis.kind) {
    case 'none':
      return 'no ground levels: nothing is said of fall and depth';
    case 'one-level':
      return 'one spot level tells no fall: take one more';
    case 'along-levels':
      return `from ${basis.levels} spot levels, straight between them, no fall across taken`;
    case 'plane-and-levels': {
      const missed =
        basis.missedByM === null ? '' : `; the others miss each by about ${length(basis.missedByM)}`;
      return `from ${basis.levels} spot levels, a sloping plane bent to meet them${missed}`;
    }
    case 'grid':
      return `from a grid of heights every ${length(basis.cellM)}`;
  }
}
