import type { SourceKey } from '../sources/bibliography.js';
import type { JointKey, MaterialKey } from '../tables/pipe-row.js';
import type { Caution } from './caution.js';
import type { FallRemedy } from './fall.js';
import type { ElevationGrid, GroundBasis } from './ground.js';
import type { Assumption, Issue } from './issue.js';
import type { PricedLines, PriceList } from './prices.js';
import type { Chance } from './result.js';
import type { LonLat } from './site.js';
import type { TreeHarm } from './tree-harm.js';

/** The pipe to be laid. */
export interface RoutePipe {
  readonly material: MaterialKey;
  /** Nominal size, metres. */
  readonly sizeM: number;
  /** The material's usual joint where not given; `none` for a coil that needs no joint on the way. */
  readonly joint?: JointKey;
  /** The material's usual length where not given. */
  readonly pieceM?: number;
  readonly perforated?: boolean;
  readonly wrapped?: boolean;
}

/** What a metre and a piece of a route are worth, all in one currency: what the search weighs ways by. */
export interface RouteCosts {
  /** A metre laid in an open trench under lawn at the depth of least cover: pipe, digging, filling, clearing away. */
  readonly laidPerM: number;
  /** More for each metre of depth past that. */
  readonly deeperPerM: number;
  /** More for a metre through what lies on top, beyond lawn. */
  readonly surfacePerM: Readonly<Record<RouteSurface, number>>;
  /** More for a metre dug by hand instead of by machine. */
  readonly handDigPerM: number;
  /** More for a metre bored instead of dug through lawn, and once for the pits of a bore. */
  readonly borePerM: number;
  readonly boreEach: number;
  readonly bendEach: number;
  /** Uncovering a buried utility by hand and passing it square. */
  readonly utilityCrossingEach: number;
  /** One dig-up where roots came in. */
  readonly repairEach: number;
  /** Worth of the harm that a metre of trench does right beside a trunk's no-dig circle; fades to 0 at 12 diameters. */
  readonly treeHarmPerM: number;
  /** A year; 0.03 is 3 %. */
  readonly discountRate: number;
}

/** What lies on top of a trench. */
export type RouteSurface = 'lawn' | 'bed' | 'paving';

/** A place that a route starts or ends at: a feature of the site by its id, or a position. */
export type RoutePlace = { readonly id: string } | { readonly position: LonLat };

/** What a new line must keep to; usual values stand in for what is not given. */
export interface RouteLimits {
  /** Metre per metre. */
  readonly minFall?: number;
  /** From the ground to the top of the pipe, metres. */
  readonly minCoverM?: number;
  /** From the ground to the invert, metres. */
  readonly maxDepthM?: number;
}

/** A new line that is asked for: from where, to where, with which pipe, by which limits and prices. */
export interface RouteRequest {
  /** Date that the line would be finished, ISO 8601. */
  readonly asOf: string;
  readonly from: RoutePlace;
  /** Allowed outlets; the cheapest to reach is taken. */
  readonly to: readonly RoutePlace[];
  /** One more alternative that passes through this place. */
  readonly via?: LonLat;
  readonly pipe: RoutePipe;
  readonly limits?: RouteLimits;
  /** Elevation of the pipe's invert at the upper end, at most, and at the outlet, at least; metres. */
  readonly sourceInvertM?: number;
  readonly outletInvertM?: number;
  /** The firm's own prices; an invented list where not given. */
  readonly prices?: PriceList;
  /** Weights that are not to follow from the prices. */
  readonly costs?: Partial<RouteCosts>;
  /** Years over which trouble is counted and priced; 25 where not given. */
  readonly horizonYears?: number;
  /** Areas dug as a planted bed: outlines. */
  readonly beds?: readonly (readonly LonLat[])[];
  /** Ground heights beside the levels of the site. */
  readonly grid?: ElevationGrid;
  /** Side of a cell of the search, metres; from the size of the lot where not given. */
  readonly cellM?: number;
  /** Cross paving by boring under it where that is cheaper; true where not given. */
  readonly boring?: boolean;
}

/** A stretch of a route by stations from its upper end. */
export interface RouteStretch {
  readonly fromM: number;
  readonly toM: number;
  readonly way: RouteWay;
  readonly surface: RouteSurface;
}

/** How a stretch of a new line is laid. */
export type RouteWay = 'trench' | 'hand-dug' | 'bored';

/** A bend of the route made of fittings, or swept by the pipe itself. */
export interface RouteBend {
  readonly atM: number;
  readonly turnDegrees: number;
  /** Angles of the fittings, degrees; empty where the pipe is bent. */
  readonly fittings: readonly number[];
  /** Radius in which the pipe is laid round, metres; null for fittings. */
  readonly radiusM: number | null;
}

/** A buried service under the route. */
export interface RouteCrossing {
  readonly id: string;
  readonly name: string | null;
  readonly atM: number;
  /** Between route and service; 90 is square. */
  readonly angleDegrees: number;
}

/** Least and greatest depth along a stretch, metres. */
export interface RouteDepth {
  readonly min: number;
  readonly max: number;
}

/** One way to lay the line, with everything to be known before it is chosen. */
export interface RouteAlternative {
  readonly id: string;
  readonly name: string;
  /** What it is the best for of those shown; `via` through the asked point, `drawn` by hand. */
  readonly aim: RouteAim;
  readonly lengthM: number;
  /** Bends made of fittings or swept, of the whole route. */
  readonly bends: number;
  readonly bendList: readonly RouteBend[];
  readonly joints: {
    readonly count: number;
    /** Joints inside the dripline or the 12-diameter circle of any tree. */
    readonly nearRoots: number;
  };
  /** Chance that roots get into the line within so many years, with its 80 % interval. */
  readonly chance: { readonly '10': Chance; readonly '25': Chance };
  /** Expected entries within the horizon. */
  readonly expectedEntries: number;
  /** Ground to invert; null where the ground is not known. */
  readonly depthM: RouteDepth | null;
  readonly coverM: RouteDepth | null;
  readonly fall: { readonly min: number; readonly max: number } | null;
  /**
   * From the ground at the outlet down to the invert there: where that is more than the pipe's height, a riser brings
   * the water up under a grate and the pipe below stays full. Null where the ground is not known.
   */
  readonly outletBelowM: number | null;
  readonly trees: readonly TreeHarm[];
  readonly stretches: readonly RouteStretch[];
  readonly crossings: readonly RouteCrossing[];
  /** What it takes, priced by the list. */
  readonly priced: PricedLines;
  readonly cost: {
    /** To lay it: the total of what is priced. */
    readonly now: number;
    /** Of root trouble over the horizon, discounted. */
    readonly roots: number;
    /** Set on the harm to trees; not paid, but weighed. */
    readonly treeHarm: number;
    /** Now and roots. */
    readonly presentValue: number;
  };
  /** Limits that it breaks, for one given by hand; empty for one that was planned. */
  readonly breaks: readonly RouteBreak[];
  /** From the upper end. */
  readonly geometry: { readonly type: 'LineString'; readonly coordinates: readonly (readonly number[])[] };
  /** Invert and ground at stations; null where the ground is not known. */
  readonly profile: {
    readonly stationM: readonly number[];
    readonly groundM: readonly number[];
    readonly invertM: readonly number[];
  } | null;
}

/** What an alternative is best for, or that it was asked for: by way of a place, or as drawn. */
export type RouteAim = 'cheapest' | 'fewest-roots' | 'spares-trees' | 'balanced' | 'via' | 'drawn';

/** A rule that a drawn route breaks, and at which station from its upper end, metres. */
export type RouteBreak =
  | { readonly kind: 'obstacle'; readonly id: string; readonly atM: number }
  | { readonly kind: 'outside-lot'; readonly atM: number }
  | { readonly kind: 'no-dig'; readonly tree: string; readonly atM: number }
  | { readonly kind: 'fall'; readonly shortfallM: number; readonly atM: number }
  | { readonly kind: 'tight-bend'; readonly atM: number };

/** Why there is no route. */
export type NoRoute =
  /** Not even without a thought to fall can the outlets be reached. */
  | { readonly reason: 'blocked'; readonly message: string; readonly shortfallM: null }
  | {
      readonly reason: 'no-fall';
      readonly message: string;
      /** Least by which fall, cover or depth fail, on the way that fails least. */
      readonly shortfallM: number;
      readonly at: LonLat;
      readonly atM: number;
      readonly remedies: readonly FallRemedy[];
      /** The way that fails least. */
      readonly geometry: {
        readonly type: 'LineString';
        readonly coordinates: readonly (readonly number[])[];
      };
    };

/** What solid stretches of a pipe with holes go by. */
export interface SolidRule {
  /** From a stem; null where each tree has its own root zone. */
  readonly radiusM: number | null;
  readonly source: SourceKey;
}

/** The same route laid with another pipe. */
export interface PipeChoice {
  readonly id: string;
  readonly name: string;
  readonly material: MaterialKey;
  readonly joint: JointKey;
  readonly joints: number;
  /** Stretches laid solid where the rest is perforated; stations from the upper end. */
  readonly solid: readonly (readonly [fromM: number, toM: number])[];
  /** Null where nothing is laid solid for the sake of trees. */
  readonly solidBy: SolidRule | null;
  readonly perforatedM: number;
  /**
   * Of what has holes, metres nearer to a tree than guidance on farm drains wants a drain with holes: 100 ft from
   * willow, soft maple, elm, poplar and trees of unknown kind, 50 ft from others.
   */
  readonly holesNearTreesM: number;
  readonly chance: { readonly '10': Chance; readonly '25': Chance };
  readonly cost: { readonly now: number; readonly roots: number; readonly presentValue: number };
}

/** Ways for a new line, side by side, or why there is none. Plain JSON. */
export interface RouteResult {
  readonly schema: 1;
  readonly asOf: string;
  readonly horizonYears: number;
  readonly currency: string;
  readonly pricesInvented: boolean;
  readonly alternatives: readonly RouteAlternative[];
  readonly none: NoRoute | null;
  /** Pipes compared on the alternative with the lowest present value. */
  readonly pipes: readonly PipeChoice[];
  /** What the ground elevations rest on. */
  readonly ground: GroundBasis;
  readonly assumed: readonly Assumption[];
  readonly issues: readonly Issue[];
  readonly cautions: readonly Caution[];
  /** True where it was stopped before all alternatives were tried. */
  readonly stopped: boolean;
}
