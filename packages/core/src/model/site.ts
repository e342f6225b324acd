import type { JointKey, MaterialKey } from '../tables/pipe-row.js';
import type { SpeciesMatch } from './species-match.js';

/** Longitude and latitude in degrees, WGS 84. They stop at `geometry/`. */
export type LonLat = readonly [lon: number, lat: number];

/** Where a feature came from: the file's name and its number in it. */
export interface Origin {
  readonly file: string;
  readonly index: number;
}

/** One tree as it was given, in SI units; null for what was not. */
export interface Tree {
  readonly id: string;
  readonly position: LonLat;
  readonly species: SpeciesMatch;
  /** Stem diameter at breast height, several stems already combined; null when not given. */
  readonly stemDiameterM: number | null;
  readonly canopyRadiusM: number | null;
  readonly heightM: number | null;
  /** Fractional years. */
  readonly plantedYear: number | null;
  readonly felledYear: number | null;
  readonly condition: string | null;
  readonly note: string | null;
  /** Street that it stands in, where it is named. */
  readonly street?: string;
}

/** How wet the ground at a line is: dry, often wet, or water standing. */
export type Wetness = 'dry' | 'often' | 'standing';

/**
 * One drain line as it was given, in SI units: depths from the ground to the top of the pipe, years fractional, null
 * for what was not given.
 */
export interface Drain {
  readonly id: string;
  readonly origin: Origin;
  readonly name: string | null;
  readonly path: readonly LonLat[];
  readonly material: MaterialKey;
  /** False where the material was not given or not understood. */
  readonly materialKnown: boolean;
  readonly sizeM: number | null;
  readonly perforated: boolean;
  readonly wrapped: boolean;
  readonly pieceM: number | null;
  readonly joint: JointKey | null;
  readonly sealed: boolean | null;
  /** Contact pressure of the joint's seal, MPa, where it is known. */
  readonly sealMPa: number | null;
  readonly depthStartM: number | null;
  readonly depthEndM: number | null;
  readonly installedYear: number | null;
  readonly dugYear: number | null;
  readonly cutYear: number | null;
  readonly flow: 'as-drawn' | 'reversed' | null;
  readonly carries: 'storm' | 'foul' | null;
  readonly servesM2: number | null;
  readonly wet: Wetness | null;
  /** Street that it lies in, where it is named. */
  readonly street?: string;
}

/** What stands on a line or at its end. */
export type FittingType =
  | 'wye'
  | 'tee'
  | 'bend'
  | 'coupling'
  | 'reducer'
  | 'basin'
  | 'cleanout'
  | 'downspout'
  | 'outlet'
  | 'cap';

/** One fitting and where it stands. */
export interface Fitting {
  readonly id: string;
  readonly origin: Origin;
  readonly type: FittingType;
  readonly position: LonLat;
  readonly sealed: boolean | null;
  /** Line it belongs to by name, else the nearest within a metre. */
  readonly drain: string | null;
}

/** What a camera saw: nothing, fine roots, a mass, a bore full of roots, a crushed pipe, a sag, a joint out of line. */
export type Seen = 'clear' | 'fine' | 'mass' | 'full' | 'crushed' | 'sag' | 'offset';

/** What a camera saw at its counter: metres of reel from where it went in. */
export interface Finding {
  readonly id: string;
  readonly origin: Origin;
  readonly drain: string;
  /** Fitting id anywhere along the pipes, `start` or `end` of the line as drawn; null: `start`. */
  readonly from: string | null;
  /** Which way the reel went from a place on the line itself; null: not said. */
  readonly direction: 'upstream' | 'downstream' | null;
  readonly atM: number;
  readonly toM: number | null;
  readonly seen: Seen;
  readonly blockedShare: number | null;
  /** Places at which roots come in, as counted on the stretch. */
  readonly entries: number | null;
  readonly year: number | null;
  /** A picture from the camera, as it stood in the file: a data URL, or a name. */
  readonly photo?: string;
}

/** What stands in the way of roots or of a new trench. */
export type ObstacleType = 'building' | 'paving' | 'pool' | 'wall' | 'utility' | 'boundary';

/** One obstacle with its outline or its path. */
export interface Obstacle {
  readonly id: string;
  readonly origin: Origin;
  readonly type: ObstacleType;
  readonly name: string | null;
  /** Outer rings for areas, one path for lines. */
  readonly shape:
    | { readonly type: 'area'; readonly rings: readonly (readonly LonLat[])[] }
    | { readonly type: 'path'; readonly path: readonly LonLat[] };
}

/** A root barrier in the ground; `depthM` from the ground to its lower edge, metres. */
export interface Barrier {
  readonly id: string;
  readonly origin: Origin;
  readonly path: readonly LonLat[];
  readonly depthM: number | null;
  readonly installedYear: number | null;
}

/** Height of the ground at one place, metres above any mark that all levels of the site share. */
export interface Level {
  readonly id: string;
  readonly origin: Origin;
  readonly position: LonLat;
  readonly elevationM: number;
}

/** What lengths are said in: feet and inches, or metres. */
export type Units = 'us' | 'metric';

/** The soil of the site; loam is what the relations are scaled to. */
export type Soil = 'sand' | 'loam' | 'clay';
/** Which rule draws the protection circle round a tree. */
export type ProtectionRule =
  | 'trunk-multiple'
  | 'trunk-multiple-min-2m'
  | 'foot-per-inch'
  | 'foot-and-half-per-inch'
  | 'tolerance-and-age';

/** Everything on one piece of ground, checked and in SI units. */
export interface Site {
  readonly name: string | null;
  /** True where the file says that the site is invented. */
  readonly invented: boolean;
  readonly units: Units | null;
  readonly soil: Soil | null;
  readonly biome: string | null;
  readonly protection: ProtectionRule;
  readonly rainMmPerHour: number | null;
  readonly trees: readonly Tree[];
  readonly drains: readonly Drain[];
  readonly fittings: readonly Fitting[];
  readonly findings: readonly Finding[];
  readonly obstacles: readonly Obstacle[];
  readonly barriers: readonly Barrier[];
  readonly levels: readonly Level[];
}
