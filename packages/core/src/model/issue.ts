/** Where in the input something stands. */
export interface Place {
  /** Name of the file or input the text came from. */
  readonly file: string;
  /** Index of the feature in its collection, or null for the file as a whole. */
  readonly index: number | null;
  /** The feature's own id where it has one. */
  readonly feature: string | null;
  /** Path of the property or coordinate, such as `properties.dbh_cm`. */
  readonly path: string;
}

/** How much an issue matters; see `Issue`. */
export type Severity = 'error' | 'warning' | 'notice';

/** Why a finding has no place on the lines. */
export type Misplaced =
  | { readonly kind: 'no-line'; readonly line: string }
  | { readonly kind: 'no-fitting'; readonly fitting: string }
  | { readonly kind: 'fitting-on-no-line'; readonly fitting: string }
  | { readonly kind: 'no-way'; readonly fitting: string; readonly line: string; readonly withinM: number }
  /** The reel ran past the end of the last line; `parts`: where several pipes go on. */
  | { readonly kind: 'past-end'; readonly line: string; readonly byM: number; readonly parts: boolean }
  /** The counter points at another line, before or past the named one. */
  | {
      readonly kind: 'before-line' | 'past-line';
      readonly pointsAt: string;
      readonly line: string;
      readonly byM: number;
    };

/**
 * What was found in the input, told apart by `code`; each code has its own fields.
 * `error`: breaks the standard, or the feature (or file) was set aside. `warning`: used, but look at it. `notice`: said so that you know.
 */
export type Issue = { readonly severity: Severity; readonly place: Place } & IssueDetail;

/** What an issue says beyond its place and severity: one shape for each code. */
export type IssueDetail =
  | { readonly code: 'not-json'; readonly reason: string }
  | { readonly code: 'not-geojson'; readonly rule: string }
  | { readonly code: 'ring-orientation'; readonly ring: 'exterior' | 'interior' }
  | { readonly code: 'ring-too-small' }
  | { readonly code: 'bare-geometry'; readonly type: string }
  | { readonly code: 'nested-collection' }
  | { readonly code: 'single-member'; readonly type: string }
  | { readonly code: 'null-geometry' }
  | { readonly code: 'crs-member'; readonly name: string }
  | { readonly code: 'extra-dimensions'; readonly dimensions: number }
  | { readonly code: 'excess-precision'; readonly decimals: number }
  | { readonly code: 'excess-vertices'; readonly count: number }
  | { readonly code: 'holes' }
  | { readonly code: 'duplicate-nodes' }
  | { readonly code: 'self-intersection' }
  | { readonly code: 'antimeridian' }
  | { readonly code: 'bbox-order' }
  | { readonly code: 'not-finite' }
  | { readonly code: 'out-of-range'; readonly lon: number; readonly lat: number }
  | { readonly code: 'projected-coordinates'; readonly x: number; readonly y: number }
  | { readonly code: 'zero-length' }
  | { readonly code: 'too-long'; readonly lengthKm: number }
  | { readonly code: 'bad-value'; readonly expected: string; readonly got: string }
  | { readonly code: 'misspelt-property'; readonly name: string; readonly meant: string }
  | { readonly code: 'odd-depth'; readonly depthM: number }
  | { readonly code: 'missing-value'; readonly expected: string }
  | { readonly code: 'wrong-geometry'; readonly expected: string; readonly got: string }
  | { readonly code: 'units-disagree'; readonly first: string; readonly second: string }
  | { readonly code: 'unit-guessed'; readonly column: string; readonly unit: string }
  | { readonly code: 'odd-diameter'; readonly diameterM: number }
  | { readonly code: 'duplicate-id'; readonly id: string; readonly renamed: string }
  | { readonly code: 'kind-guessed'; readonly kind: string }
  | { readonly code: 'kind-unknown'; readonly kind: string }
  | { readonly code: 'species-unknown'; readonly text: string }
  | { readonly code: 'species-uncertain'; readonly text: string; readonly taken: string }
  | { readonly code: 'material-unknown'; readonly text: string }
  | { readonly code: 'material-uncertain'; readonly text: string; readonly taken: string }
  | { readonly code: 'not-a-live-tree'; readonly text: string }
  | { readonly code: 'fitting-off-line'; readonly distanceM: number | null }
  | { readonly code: 'finding-misplaced'; readonly reason: Misplaced }
  | { readonly code: 'flow-assumed' }
  | { readonly code: 'nothing-to-score'; readonly missing: 'trees' | 'drains' }
  /** Stands for issues of one kind that are not listed one by one. */
  | { readonly code: 'more-of-the-same'; readonly of: string; readonly count: number };

/** Name of one kind of issue: what a program tells issues apart by. */
export type IssueCode = IssueDetail['code'];

/** Something that was missing and had to be taken as given. */
export interface Assumption {
  /** `trees/t2/canopyRadiusM`. */
  readonly path: string;
  readonly value: number | string;
  readonly why: string;
}
