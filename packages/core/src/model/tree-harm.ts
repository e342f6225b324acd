/** What a trench may do to one tree, from the mildest to the gravest. */
export type HarmRule = 'clear' | 'caution' | 'arborist' | 'no-dig';

/** Why a rule was given. */
export type HarmReason =
  | 'inside-3-diameters'
  | 'inside-structural'
  | 'inside-6-diameters'
  | 'inside-12-diameters'
  | 'severs-over-10'
  | 'severs-over-25'
  | 'bore-starts-too-near'
  | 'bore-too-shallow'
  | 'bore-depth-unknown';

/** Share of the protection circle lost: none, up to a tenth, up to a quarter, more. */
export type Encroachment = 'none' | 'minor' | 'major' | 'too-much';

/** Harm of a route to one tree. */
export interface TreeHarm {
  readonly id: string;
  /** From the middle of the stem to the near side of trench or bore, metres; below 0 inside it. */
  readonly nearestM: number;
  /** The same to what is dug open; null where nothing is. */
  readonly nearestDugM: number | null;
  /** Share of the protection circle that what is dug takes or cuts off from the stem, 0..1. */
  readonly severedShare: number;
  readonly encroachment: Encroachment;
  readonly rule: HarmRule;
  /** Empty where the rule is `clear`; the gravest first. */
  readonly reasons: readonly HarmReason[];
}
