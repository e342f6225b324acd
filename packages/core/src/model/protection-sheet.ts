import type { Caution } from './caution.js';
import type { Encroachment, HarmReason, HarmRule } from './tree-harm.js';

/** How a stretch of a trench near trees is to be opened, the gravest first. */
export type SheetWay =
  /** Not at all: within three trunk diameters. */
  | 'do-not-dig'
  /** Only as an arborist says, who stands by: within six diameters or among the roots that hold the tree. */
  | 'arborist'
  /** Bored under the roots. */
  | 'bore'
  /** By hand or with air: within twelve diameters. */
  | 'hand-or-air';

/** A stretch that is not dug like the rest, stations from the upper end of its line. */
export interface SheetStretch {
  /** Id of the line, where several are dug. */
  readonly line?: string;
  readonly fromM: number;
  readonly toM: number;
  readonly way: SheetWay;
  /** Ids of the trees that it is for. */
  readonly trees: readonly string[];
}

/** One tree that the route comes near. */
export interface SheetTree {
  readonly id: string;
  readonly name: string;
  readonly stemDiameterM: number;
  /** True where nobody measured the trunk. */
  readonly stemAssumed: boolean;
  /** Id of the line that is nearest, where several are dug. */
  readonly line?: string;
  /** Where the route is nearest, by station. */
  readonly atM: number;
  /** From the middle of the stem to the near side of trench or bore. */
  readonly nearestM: number;
  readonly rule: HarmRule;
  readonly reasons: readonly HarmReason[];
  readonly severedShare: number;
  readonly encroachment: Encroachment;
  /** Circles about the stem: no digging, arborist, hand or air, and the one to fence off where nothing is dug. */
  readonly rings: {
    readonly noDigM: number;
    readonly arboristM: number;
    readonly careM: number;
    readonly fenceM: number;
  };
  /** For a bore in place of the trench: where open ground ends, and how deep. */
  readonly boring: { readonly startM: number; readonly depthM: number };
}

/** What a crew has to know of the trees along a route, of one line or several. */
export interface ProtectionSheet {
  readonly lengthM: number;
  /** Trees that the route may harm, nearest first; the others are left out. */
  readonly trees: readonly SheetTree[];
  readonly stretches: readonly SheetStretch[];
  /** Ids of the trees for which an arborist is called before anything is opened. */
  readonly arboristFor: readonly string[];
  /** Roots from this thickness on are not cut without an arborist, metres. */
  readonly askBeforeCuttingM: number;
  readonly cautions: readonly Caution[];
}
