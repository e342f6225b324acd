import type { MaterialKey } from '../tables/pipe-row.js';
import type { Caution } from './caution.js';
import type { Assumption, Issue } from './issue.js';
import type { FittingType, Seen } from './site.js';

/** What to do about a stretch. */
export type Band = 'leave' | 'watch' | 'inspect' | 'act' | 'cannot-say';

/** A chance between 0 and 1 with an 80 % interval. */
export interface Chance {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** One tree near a segment, and its part in what is expected there. */
export interface TreeShare {
  readonly id: string;
  /** Share of the expected entries, 0..1. */
  readonly share: number;
  /** From the stem to the nearest point of the segment. */
  readonly distanceM: number;
  /** Display name: common name, or `tree of unknown kind`. */
  readonly name: string;
}

/** One thing that could be changed, and the score the model gives without it. */
export interface Driver {
  readonly code:
    | 'seal-joints'
    | 'basin-for-wye'
    | 'stouter-pipe'
    | 'deeper'
    | 'tree-absent'
    | 'root-barrier'
    | 'dig-and-clear';
  /** The tree concerned, for `tree-absent` and `root-barrier`. */
  readonly tree: string | null;
  /** Plain words: `joints sealed`. */
  readonly change: string;
  readonly scoreWithout: number;
}

/** Where a crew finds a segment. */
export interface Reach {
  /** Fitting id, or `outlet end` / `upper end` where the line has no way in. */
  readonly from: string;
  /** Plain name: `basin B1`. */
  readonly fromName: string;
  readonly direction: 'upstream' | 'downstream';
  /** Metres from there to the near end of the segment. */
  readonly atM: number;
  /** Metres from there to the far end. */
  readonly toM: number;
}

/** Metres of a segment inside circles of trees: canopy, 12 trunk diameters, structural roots, reach of roots. */
export interface OverlapM {
  readonly dripline: number;
  readonly trunkMultiple: number;
  readonly structural: number;
  readonly reach: number;
}

/** The worst that a camera saw in a segment and that is still there. */
export interface KnownTrouble {
  readonly seen: Seen;
  readonly year: number | null;
  readonly blockedShare: number | null;
  /** Where it is by the reel: what it went in at, the way it ran, and its counter. */
  readonly reel: {
    readonly from: string;
    readonly direction: 'upstream' | 'downstream';
    readonly atM: number;
    readonly toM: number;
  };
}

/** One segment: where it stands, why, what would change it, and where a crew finds it. */
export interface SegmentResult {
  readonly rank: number;
  /** `main/4`: the line's id and the segment's number from the outlet end, counted from 1. */
  readonly id: string;
  readonly drainId: string;
  readonly drainName: string | null;
  /** Stations: metres from the outlet end of the line, upward. */
  readonly startM: number;
  readonly endM: number;
  readonly lengthM: number;
  /** 100 x likely chance within the horizon. */
  readonly score: number;
  readonly chance: Chance;
  /** How the interval was made. */
  readonly interval: 'sampled' | 'closed-form';
  /** Chance that the segment is really among the worst tenth of all, made the same way. */
  readonly inWorstTenth: number;
  readonly band: Band;
  readonly known: KnownTrouble | null;
  readonly overlapM: OverlapM;
  readonly joints: { readonly count: number; readonly perM: number; readonly basis: string };
  /** Ids of the fittings in the segment. */
  readonly fittings: readonly { readonly id: string; readonly type: FittingType; readonly atM: number }[];
  readonly material: MaterialKey;
  readonly depthM: number;
  /** Expected entries within the horizon by way in. */
  readonly expectedEntries: { readonly joints: number; readonly slots: number; readonly crush: number };
  readonly trees: readonly TreeShare[];
  readonly drivers: readonly Driver[];
  readonly assumed: readonly Assumption[];
  readonly reach: Reach;
  /** Year of the next look, such as `2028`. */
  readonly nextLook: string;
  readonly geometry: { readonly type: 'LineString'; readonly coordinates: readonly (readonly number[])[] };
}

/** A circle on a tree, for drawing and overlap. */
export interface TreeZones {
  readonly id: string;
  readonly name: string;
  readonly lon: number;
  readonly lat: number;
  readonly stemDiameterM: number;
  readonly vigourClass: number;
  readonly driplineM: number;
  readonly trunkMultipleM: number;
  readonly structuralM: number;
  readonly reachM: number;
  /** Radius by the site's own protection rule. */
  readonly protectionM: number;
  readonly assumed: readonly Assumption[];
}

/** One line, for its profile. */
export interface LineResult {
  readonly drainId: string;
  readonly name: string | null;
  readonly lengthM: number;
  readonly material: MaterialKey;
  readonly materialName: string;
  /** True where station 0 is the last point as drawn. */
  readonly flowsAsDrawn: boolean;
  readonly flowBasis: 'given' | 'levels' | 'fittings' | 'branch' | 'as-drawn';
  readonly joints: readonly {
    readonly atM: number;
    readonly count: number;
    readonly fitting: string | null;
  }[];
  readonly fittings: readonly { readonly id: string; readonly type: FittingType; readonly atM: number }[];
  /** What cameras saw in it, by station from the outlet end. */
  readonly findings: readonly {
    readonly id: string;
    readonly seen: Seen;
    readonly fromM: number;
    readonly toM: number;
    readonly year: number | null;
  }[];
  readonly depth: { readonly outletEndM: number; readonly upperEndM: number; readonly assumed: boolean };
  /** Expected entries and likely chance of the line as a whole within the horizon. */
  readonly expectedEntries: number;
  readonly chance: number;
  /** Ids of the segments, from the outlet end. */
  readonly segments: readonly string[];
  /** Trees near the line: station of the nearest point and distance from it. */
  readonly trees: readonly { readonly id: string; readonly atM: number; readonly distanceM: number }[];
  readonly geometry: { readonly type: 'LineString'; readonly coordinates: readonly (readonly number[])[] };
}

/** Sums over every segment, reported or not. */
export interface RankTotals {
  readonly drains: number;
  readonly trees: number;
  readonly segments: number;
  readonly lengthM: number;
  /** Metres and segments by band. */
  readonly byBand: Readonly<Record<Band, { readonly segments: number; readonly lengthM: number }>>;
  /** Sum of the likely expected entries. */
  readonly expectedEntries: number;
}

/** A ranking as plain JSON: what `rank` gives, files hold and the page draws. */
export interface RankResult {
  readonly schema: 1;
  /** With the fingerprint of what was learned from findings, where that was used. */
  readonly model: { readonly version: string; readonly fingerprint: string; readonly learned?: string };
  readonly site: { readonly name: string | null; readonly invented: boolean };
  readonly asOf: string;
  readonly horizonYears: number;
  readonly segmentM: number;
  /** Worst first; all of them, or as many as were asked for. */
  readonly segments: readonly SegmentResult[];
  readonly lines: readonly LineResult[];
  readonly trees: readonly TreeZones[];
  readonly totals: RankTotals;
  readonly issues: readonly Issue[];
  readonly cautions: readonly Caution[];
}
