import type { JointKey, MaterialKey } from '../tables/pipe-row.js';
import type { SpeciesMatch } from './species-match.js';

/** Longitude and latitude in degrees, WGS 84. They stop at `geometry/`. */
export type LonLat = readonly [lon: number, lat: number];

/** Where a feature came from: the file's name and its number in it. */
export interface Origin {
  readonly file: string;
  readonly index: number;
}

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

export type Wetness = 'dry' | 'often' | 'standing';

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

export interface Fitting {
  readonly id: string;
  readonly origin: Origin;
  readonly type: FittingType;
  readonly position: LonLat;
  readonly sealed: boolean | null;
  /** Line it belongs to by name, else the nearest within a metre. */
  readonly drain: string | null;
}

export type Seen = 'clear' | 'fine' | 'mass' | 'full' | 'crushed' | 'sag' | 'offset';

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

export type ObstacleType = 'building' | 'paving' | 'pool' | 'wall' | 'utility' | 'boundary';

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

export interface Barrier {
  readonly id: string;
  readonly origin: Origin;
  readonly path: readonly LonLat[];
  readonly depthM: number | null;
  readonly installedYear: number | null;
}

export interface Level {
  readonly id: string;
  readonly origin: Origin;
  readonly position: LonLat;
  readonly elevationM: number;
}

export type Soil = 'sand' | 'loam' | 'clay';
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
  readonly units: 'us' | 'metric' | null;
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
