import type { Caution } from './caution.js';
import type { FallRemedy, LaidPipe } from './fall.js';
import type { GroundBasis } from './ground.js';
import type { Assumption } from './issue.js';
import type { NetworkJunction } from './network.js';
import type { PipeForArea } from './pipe-for-area.js';
import type { PricedLines } from './prices.js';
import type { Chance } from './result.js';
import type { RoutePlace, RouteRequest, RouteStretch } from './route.js';
import type { LonLat } from './site.js';
import type { TreeHarm } from './tree-harm.js';

/** A place that water comes from. */
export interface SharedSource {
  readonly place: RoutePlace;
  /** Roof, paving or ground that drains there; what the shared pipe is sized by. */
  readonly servesM2: number;
  /** Invert there, at most; metres. */
  readonly invertMostM?: number;
}

/** Several sources to be drained together. */
export interface SharedRouteRequest extends Omit<RouteRequest, 'from' | 'via' | 'sourceInvertM'> {
  readonly from: readonly SharedSource[];
}

/** One line of a shared route, from its upper end. */
export interface SharedLine {
  readonly id: string;
  /** Ids of a source, junction or outlet. */
  readonly from: string;
  readonly to: string;
  readonly lengthM: number;
  readonly servesM2: number;
  /** Nominal size of its pipe, metres. */
  readonly sizeM: number;
  /** The water that it was sized by; null where rain or areas were not given. */
  readonly sized: PipeForArea | null;
  /** Null where the ground is not known, or it cannot fall. */
  readonly pipe: LaidPipe | null;
  readonly stretches: readonly RouteStretch[];
  readonly geometry: { readonly type: 'LineString'; readonly coordinates: readonly LonLat[] };
}

/** What a set of lines costs. */
export interface SharedCost {
  /** To lay them. */
  readonly now: number;
  /** Of root trouble over the horizon, discounted. */
  readonly roots: number;
  /** Set on the harm to trees; not paid, but weighed. */
  readonly treeHarm: number;
  /** Now and roots. */
  readonly presentValue: number;
}

/** Lines from several sources, with everything to be known before they are chosen. */
export interface SharedWay {
  readonly shape: 'shared' | 'separate';
  readonly lines: readonly SharedLine[];
  /** Places where lines meet, each with its wyes. */
  readonly junctions: readonly (Omit<NetworkJunction, 'x' | 'y'> & { readonly position: LonLat })[];
  readonly lengthM: number;
  readonly joints: {
    readonly count: number;
    /** Joints inside the dripline or the 12-diameter circle of any tree. */
    readonly nearRoots: number;
  };
  /** Chance that roots get into any of the lines within so many years, with its 80 % interval. */
  readonly chance: { readonly '10': Chance; readonly '25': Chance };
  /** Expected entries within the horizon. */
  readonly expectedEntries: number;
  /** Harm of all lines together to each tree. */
  readonly trees: readonly TreeHarm[];
  /** What it takes, priced by the list. */
  readonly priced: PricedLines;
  readonly cost: SharedCost;
  /** False where its lines cannot all fall within the limits; null where the ground is not known. */
  readonly falls: boolean | null;
}

/** What was chosen, beside a line of its own for each source. */
export interface SharedRoute extends SharedWay {
  readonly separate: SharedWay;
}

/** Why there is no shared route. */
export type NoSharedRoute =
  | { readonly reason: 'blocked'; readonly shortfallM: null }
  | {
      readonly reason: 'no-fall';
      /** Least by which fall, cover or depth fail. */
      readonly shortfallM: number;
      readonly line: string;
      readonly at: LonLat;
      readonly remedies: readonly FallRemedy[];
    };

/** New lines that share trenches, or why there are none. Plain JSON. */
export interface SharedRouteResult {
  readonly schema: 1;
  readonly asOf: string;
  readonly horizonYears: number;
  readonly currency: string;
  readonly pricesInvented: boolean;
  readonly route: SharedRoute | null;
  readonly none: NoSharedRoute | null;
  /** What the ground elevations rest on. */
  readonly ground: GroundBasis;
  readonly assumed: readonly Assumption[];
  readonly cautions: readonly Caution[];
  /** True where it was stopped before all was tried. */
  readonly stopped: boolean;
}
