import type { SourceKey } from '../sources/bibliography.js';
import type { CautionCode } from '../tables/cautions.js';

/** A caution that must stand beside any result that could lead to the act. */
export interface Caution {
  readonly code: CautionCode;
  /** In English; `wordCaution` has the other languages. */
  readonly text: string;
  readonly source: SourceKey;
}

/**
 * What somebody may be led to do. What is not said counts as not done; what is done but not known in size (`null`)
 * counts as the worst.
 */
export interface CautionConditions {
  /** The ground is opened. */
  readonly digging?: boolean;
  /** Greatest depth of the trench, metres; null where not known. Counts only with `digging`. */
  readonly trenchDepthM?: number | null;
  /** Ground that may cave in: sand, fill, wet or dug before; null where not known. */
  readonly unstableGround?: boolean | null;
  /** Roots are cut, or a tree stands so near that they may be. */
  readonly rootCutting?: boolean;
  /** Nearest edge of the trench to a stem, in trunk diameters; null where not known. */
  readonly trunkDiametersAway?: number | null;
  /** A saw runs in the soil. */
  readonly sawing?: boolean;
  /** Something is poured or foamed into the line against roots. */
  readonly chemicals?: boolean;
  /** Water comes out elsewhere, or more of it. */
  readonly discharge?: boolean;
  /** A basin, pit or pipe that a person could climb into. */
  readonly entry?: boolean;
}
