import { indexFrom, type PackedIndex } from '../geometry/box-index.js';
import { type LineLayout, type LineModel, layOutLines } from '../line/line-model.js';
import type { LearnedModel } from '../model/learned.js';
import type { Site } from '../model/site.js';
import { yearOf } from '../units/calendar.js';
import { type Ground, groundOf } from './between.js';
import { clockOf, type LineClock } from './clock.js';
import { type Horizon, horizonOf } from './horizon.js';
import type { LoadInputs } from './load.js';
import { NearTrees } from './near-trees.js';
import type { Observation } from './observed.js';
import { Openings } from './openings.js';
import { type LineScale, lineScaleOf } from './rate-scale.js';
import { fieldFrom, type GrownTrees, type TreeField, treeFieldOf } from './tree-field.js';

/** What a ranking is asked for. Only the date is needed. */
export interface RankOptions {
  /** Date the scores are for, ISO 8601. */
  readonly asOf: string;
  /** Years looked ahead; 10 where not given. */
  readonly horizonYears?: number;
  /** Longest segment, metres; one stick (3 m) where not given. */
  readonly segmentM?: number;
  /** How many segments to report, worst first; all where not given. */
  readonly top?: number;
  /** Report this one segment only, at its rank among all; nothing where there is no such segment. */
  readonly only?: string;
  /** Seed of the sampled intervals. */
  readonly seed?: number;
  /** What was learned from findings, here or elsewhere. */
  readonly learned?: LearnedModel;
}

/** One 10-foot stick, near enough: what a crew digs as one (common practice). */
const SEGMENT_M = 3;
/** How far an owner plans ahead (judgement). */
const HORIZON_YEARS = 10;

/** A site ready for scoring at one date and horizon. */
export interface RiskContext {
  readonly site: Site;
  readonly asOf: string;
  readonly nowYear: number;
  readonly horizon: Horizon;
  readonly segmentM: number;
  readonly field: TreeField;
  readonly lines: LineLayout;
  readonly learned: LearnedModel | null;
  /** What the camera saw of each line, by the line's id. */
  readonly own: ReadonlyMap<string, readonly Observation[]>;
}

/** A bare year stands for its middle: what is dated up to half a year ahead may be of this year. */
const DATE_SLACK_YEARS = 0.5;

/** The site without what was seen only after the date that the scores are for. */
export function asKnownBy(site: Site, nowYear: number): Site {
  const findings = site.findings.filter((f) => f.year === null || f.year <= nowYear + DATE_SLACK_YEARS);
  return findings.length === site.findings.length ? site : { ...site, findings };
}

/** Parts of a context that were made before, in another thread or an earlier run. */
export interface MadeBefore {
  readonly grown: GrownTrees;
  readonly treeIndex: PackedIndex;
  readonly lineIndex: PackedIndex;
}

/**
 * @param given the lines of the site where they are laid out already, with the same segment length; or its trees
 * grown and both indexes.
 * @throws RangeError when the date, horizon or segment length is unusable.
 */
export function contextOf(
  site: Site,
  options: RankOptions,
  given: { readonly laidOut?: LineLayout | undefined; readonly made?: MadeBefore | undefined } = {},
): RiskContext {
  const { laidOut, made } = given;
  const nowYear = yearOf(options.asOf);
  if (nowYear === undefined) throw new RangeError(`asOf must be an ISO date, got '${options.asOf}'`);
  const segmentM = options.segmentM ?? SEGMENT_M;
  if (!(segmentM >= 0.3 && Number.isFinite(segmentM))) {
    throw new RangeError(`segmentM must be at least 0.3 m, got ${segmentM}`);
  }
  const horizon = horizonOf(options.horizonYears ?? HORIZON_YEARS);
  const known = asKnownBy(site, nowYear);
  return {
    site: known,
    asOf: options.asOf,
    nowYear,
    horizon,
    segmentM,
    field: made
      ? fieldFrom(known.trees, made.grown, indexFrom(made.treeIndex), nowYear, horizon)
      : treeFieldOf(known, nowYear, horizon),
    lines: laidOut ?? layOutLines(known, segmentM, made?.lineIndex),
    learned: options.learned ?? null,
    own: new Map(),
  };
}

/** One line with all that its load depends on. */
export interface PreparedLine {
  readonly line: LineModel;
  readonly near: NearTrees;
  readonly clock: LineClock;
  readonly ground: Ground | null;
  readonly scale: LineScale;
  readonly inputs: LoadInputs;
}

/** Columns to use again for the next line; what was prepared with them before is then gone. */
export interface LineScratch {
  readonly near: NearTrees;
  readonly openings: Openings;
}

export const lineScratch = (): LineScratch => ({ near: new NearTrees(), openings: new Openings() });

export function prepareLine(
  context: RiskContext,
  line: LineModel,
  scratch: LineScratch = lineScratch(),
): PreparedLine {
  const { field, horizon, nowYear, site } = context;
  const { near, openings } = scratch;
  near.fill(field, line);
  const scale = lineScaleOf(line, context.learned, context.own.get(line.drain.id) ?? []);
  openings.fill(line, 0, line.segments.length, { scale });
  const clock = clockOf(line.drain, line.pipe, nowYear, horizon);
  const ground = groundOf(site, line.plane);
  return {
    line,
    near,
    clock,
    ground,
    scale,
    inputs: {
      openings,
      near,
      clock,
      horizon,
      ground,
      reachScale: 1,
      clockScale: 1,
      treeFactor: null,
    },
  };
}
