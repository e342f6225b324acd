/** Multiplier on the rate of a group of openings, as learned from findings. */
export interface LearnedGroup {
  readonly group: string;
  /** Entries counted and expected, and stretches with roots not counted. */
  readonly entries: number;
  readonly expected: number;
  readonly someStretches: number;
  /** 10 % point, mean and 90 % point. */
  readonly multiplier: { readonly low: number; readonly mean: number; readonly high: number };
  /** Standard deviation of ln multiplier, and what it was before anything was seen. */
  readonly logSd: number;
  readonly priorLogSd: number;
}

/** What was learned from findings: a plain versioned file. */
export interface LearnedModel {
  readonly schema: 1;
  readonly kind: 'rootreach-learned';
  /** Model that the multipliers belong to: they mean nothing with another one. */
  readonly model: { readonly version: string; readonly fingerprint: string };
  /** Of the findings learned from. */
  readonly data: {
    readonly fingerprint: string;
    readonly sites: number;
    readonly lines: number;
    readonly observations: number;
  };
  readonly groups: readonly LearnedGroup[];
  /** For a group of a known kind of opening in a material that nothing was seen of. */
  readonly kinds: readonly LearnedGroup[];
}
