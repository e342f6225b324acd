import type { HowKnown } from '../sources/how-known.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import type { Caution } from './caution.js';
import type { Dig } from './dig.js';
import type { Issue } from './issue.js';
import type { PricedLines } from './prices.js';
import type { Quantity } from './quantity.js';
import type { Chance, KnownTrouble } from './result.js';
import type { FittingType, Seen } from './site.js';
import type { TreeHarm } from './tree-harm.js';

/** What can be done about a stretch of line. */
export type ChoiceId =
  | 'leave'
  | 'clear-again'
  | 'spot-repair'
  | 'replace-like'
  | 'replace-heavier'
  | 'basin-for-wye'
  | 'line-inside'
  | 'move'
  | 'barrier'
  | 'fell-tree'
  | 'inlet-at-low-spot';

/** Why a choice is possible or not; `explain` words it. */
export type ChoiceReason =
  /** Not possible. */
  | 'full-cannot-be-cleared'
  | 'crushed-cannot-be-cleared'
  | 'cutting-does-not-mend-shape'
  | 'full-cannot-be-lined'
  | 'lost-shape-cannot-be-lined'
  | 'corrugated-cannot-be-lined'
  | 'perforated-cannot-be-lined'
  | 'too-small-to-line'
  | 'trouble-too-long-for-a-spot'
  | 'nothing-known-to-mend'
  | 'not-sold-any-more'
  | 'pipe-not-known'
  | 'already-the-better-pipe'
  | 'no-branch-here'
  | 'no-route-given'
  | 'no-tree-near'
  | 'barrier-too-near-stem'
  | 'pipe-stays-blocked'
  | 'no-low-spot'
  | 'size-not-known'
  /** Possible, and what to know about it. */
  | 'nothing-is-done'
  | 'leaves-it-blocked'
  | 'opens-come-back'
  | 'cutters-tear-corrugated'
  | 'look-first'
  | 'old-joints-stay'
  | 'same-joints-as-before'
  | 'fewer-tighter-joints'
  | 'whole-stretch-new'
  | 'access-where-lines-meet'
  | 'way-in-to-all-lines'
  | 'joints-inside-gone-ends-stay'
  | 'connections-cut-open-again'
  | 'away-from-the-trees'
  | 'roots-pass-under-and-round'
  | 'old-roots-fade'
  | 'other-trees-stay'
  | 'takes-water-at-the-low-spot';

/** Effect on the trees near by, the mildest first. */
export type TreeEffect = 'none' | 'few-roots-cut' | 'arborist-says' | 'must-not' | 'tree-goes';

/** Effect on the garden, the mildest first. */
export type GardenEffect = 'none' | 'one-hole' | 'trench' | 'paving-opened';

/** What comes again, and how often. */
export interface Recurring {
  readonly what: 'camera-look' | 'clear-by-jet' | 'clear-by-cutter';
  readonly everyYears: number;
  /** Price each time; null where the list has none. */
  readonly each: number | null;
  /** In-pipe regrowth, the chance since the last visit at 50 %, or at the target of a look. */
  readonly because: 'regrowth' | 'half-likely' | 'look-target';
}

/** What a choice changes on the line, for drawing and for the crew. */
export interface ChoiceWork {
  readonly fromM: number;
  readonly toM: number;
  readonly pipe: MaterialKey | null;
  readonly sizeM: number | null;
  /** New fittings by station from the outlet end. */
  readonly fittings: readonly {
    readonly type: FittingType;
    readonly atM: number;
    readonly replaces: string | null;
  }[];
}

/** One thing that can be done: what it takes, costs and leaves of the risk. Money in the list's currency. */
export interface Choice {
  readonly id: ChoiceId;
  /** English. */
  readonly name: string;
  readonly possible: boolean;
  readonly reasons: readonly ChoiceReason[];
  /** The reasons in English. */
  readonly why: string;
  /** Limits of the owner that it breaks. */
  readonly breaks: readonly LimitCode[];
  readonly work: ChoiceWork | null;
  readonly digs: readonly Dig[];
  readonly quantities: readonly Quantity[];
  readonly priced: PricedLines | null;
  /** With margin and tax; null where not possible or a price is missing. */
  readonly now: number | null;
  readonly recurring: readonly Recurring[];
  /** Chance of trouble in the stretch within so many years; null where not possible. */
  readonly chance: { readonly '10': Chance; readonly '25': Chance } | null;
  /** Likely chance of trouble by years from now, for a curve. */
  readonly curve: readonly { readonly yearsAhead: number; readonly chance: number }[];
  /** Over the owner's horizon at the discount rate; null where a price is missing. */
  readonly presentValue: number | null;
  readonly parts: { readonly now: number; readonly recurring: number; readonly trouble: number } | null;
  readonly tree: {
    readonly effect: TreeEffect;
    readonly harm: readonly TreeHarm[];
    readonly felled: string | null;
  };
  readonly garden: GardenEffect;
  /** English: what it does to tree and garden. */
  readonly effect: string;
}

/** What the owner will not go beyond. */
export interface OwnerLimits {
  /** Most money now. */
  readonly mostNow?: number;
  /** Highest chance of trouble within 10 years, 0..1. */
  readonly mostChance10?: number;
  /** No tree is felled; true where not given. */
  readonly keepTrees?: boolean;
  /** Nothing is dug open. */
  readonly noTrench?: boolean;
}

/** A limit of the owner that a choice may break. */
export type LimitCode = 'most-now' | 'most-chance-10' | 'keep-trees' | 'no-trench' | 'tree-must-stand';

/** A number that the answer rests on, which the user may set. */
export interface WorkAssumption {
  readonly key: string;
  readonly value: number;
  readonly unit: string;
  readonly why: string;
  readonly known: HowKnown;
  /** True where the caller set it. */
  readonly given: boolean;
}

/** The value of one number at which another choice comes first, the rest left as it is. */
export interface Switch {
  readonly what: 'horizon-years' | 'discount-rate' | 'price-now' | 'trouble-cost' | 'root-rate';
  readonly value: number;
  /** null: nothing within the range looked at changes the answer. */
  readonly at: number | null;
  readonly becomes: ChoiceId | null;
  readonly range: readonly [low: number, high: number];
}

/** The stretch that is decided on, by stations from the outlet end of its line. */
export interface WorkTarget {
  readonly drainId: string;
  readonly drainName: string | null;
  readonly fromM: number;
  readonly toM: number;
  readonly lengthM: number;
  /** Of the line as a whole. */
  readonly lineLengthM: number;
  readonly segmentIds: readonly string[];
  readonly material: MaterialKey;
  readonly sizeM: number | null;
  /** The gravest that was seen in it and not dealt with, and how many metres of it. */
  readonly known: { readonly seen: Seen; readonly lengthM: number; readonly trouble: KnownTrouble } | null;
}

/** Choices for one stretch weighed against each other. Plain JSON. */
export interface DecideResult {
  readonly schema: 1;
  readonly site: { readonly name: string | null; readonly invented: boolean };
  readonly asOf: string;
  readonly target: WorkTarget;
  readonly horizonYears: number;
  readonly discountRate: number;
  readonly currency: string;
  readonly prices: {
    readonly invented: boolean;
    readonly dated: { readonly from: string; readonly to: string } | null;
  };
  readonly limits: OwnerLimits;
  readonly choices: readonly Choice[];
  readonly recommended: ChoiceId | null;
  readonly runnerUp: ChoiceId | null;
  readonly switches: readonly Switch[];
  readonly assumed: readonly WorkAssumption[];
  /** Codes that the price list lacks. */
  readonly missing: readonly string[];
  readonly issues: readonly Issue[];
  readonly cautions: readonly Caution[];
}
