import type { IndexRoom } from '../geometry/box-index.js';
import { packNet } from '../line/snap.js';
import type { Site } from '../model/site.js';
import type { MadeBefore, RankOptions } from '../risk/context.js';
import { horizonOf } from '../risk/horizon.js';
import { type ScoreColumns, scoreLines } from '../risk/score-all.js';
import { ScoredSite } from '../risk/scored-site.js';
import { seenContextOf } from '../risk/seen-context.js';
import { type GrownTrees, growTrees, packSearch } from '../risk/tree-field.js';
import { patternsOf } from '../risk/tree-patterns.js';
import { yearOf } from '../units/calendar.js';
import { joinColumns } from './columns.js';
import { lazyList } from './lazy-list.js';
import {
  drainReader,
  joinDrains,
  type PackedDrains,
  packDrains,
  pathIn,
  type TownDrains,
} from './packed-drains.js';
import { joinTrees, type PackedTrees, packTrees, type TownTrees, treeReader } from './packed-trees.js';
import { uniqueIds } from './unique-ids.js';

/** What a town has few of, as objects. */
type Few = Omit<Site, 'trees' | 'drains'>;

/** One piece of a town's files, read and packed; its trees grown. Can be handed from thread to thread. */
export interface TownPiece {
  readonly few: Few;
  readonly trees: PackedTrees;
  readonly grown: GrownTrees;
  readonly drains: PackedDrains;
}

/** A town in columns: what threads share, and what a cache keeps. */
export interface Town {
  readonly few: Few;
  readonly trees: TownTrees;
  readonly drains: TownDrains;
  readonly made: MadeBefore;
  /** Ids that several pieces had: the later ones were given a number. */
  readonly renamed: readonly string[];
}

/** When and how far ahead trees are grown. */
export type GrowOptions = Pick<RankOptions, 'asOf' | 'horizonYears'>;

const HORIZON_YEARS = 10;

function growthOf({
  asOf,
  horizonYears,
}: GrowOptions): [nowYear: number, horizon: ReturnType<typeof horizonOf>] {
  const nowYear = yearOf(asOf);
  if (nowYear === undefined) throw new RangeError(`asOf must be an ISO date, got '${asOf}'`);
  return [nowYear, horizonOf(horizonYears ?? HORIZON_YEARS)];
}

/**
 * Packs one piece of a town, its trees grown over the horizon.
 * @param site what one piece of the files came to.
 * @param options date and horizon; the same for all pieces.
 * @throws RangeError for a date or horizon that makes no sense.
 */
export function packPiece(site: Site, options: GrowOptions): TownPiece {
  const { trees, drains, ...few } = site;
  const patterns = patternsOf(trees);
  const grown = growTrees(trees, patterns, site.soil, ...growthOf(options));
  return { few, trees: packTrees(trees, patterns, grown), grown, drains: packDrains(drains) };
}

/** @param trees The same trees, put together: places and patterns are theirs. */
function joinGrown(
  pieces: readonly GrownTrees[],
  { lon, lat, pattern }: TownTrees,
  room: (bytes: number) => ArrayBufferLike,
): GrownTrees {
  const floats = (name: 'reachM' | 'weight' | 'structuralM' | 'spreadMPerYear' | 'searchM' | 'extraLogSd') =>
    joinColumns(
      pieces,
      (piece) => piece[name],
      (length) => new Float64Array(room(8 * length)),
    );
  return {
    lon,
    lat,
    pattern,
    reachM: floats('reachM'),
    weight: floats('weight'),
    vigour: joinColumns(
      pieces,
      (piece) => piece.vigour,
      (length) => new Uint8Array(room(length)),
    ),
    structuralM: floats('structuralM'),
    spreadMPerYear: floats('spreadMPerYear'),
    searchM: floats('searchM'),
    extraLogSd: floats('extraLogSd'),
  };
}

/** The first piece that says something of the whole speaks for it; what is listed is put together. */
function joinFew(pieces: readonly Few[]): Few {
  const said = <K extends keyof Few>(name: K): Few[K] =>
    (pieces.find((piece) => piece[name] !== null) ?? (pieces[0] as Few))[name];
  return {
    name: said('name'),
    invented: pieces.some((piece) => piece.invented),
    units: said('units'),
    soil: said('soil'),
    biome: said('biome'),
    protection: said('protection'),
    rainMmPerHour: said('rainMmPerHour'),
    fittings: pieces.flatMap((piece) => piece.fittings),
    findings: pieces.flatMap((piece) => piece.findings),
    obstacles: pieces.flatMap((piece) => piece.obstacles),
    barriers: pieces.flatMap((piece) => piece.barriers),
    levels: pieces.flatMap((piece) => piece.levels),
  };
}

/**
 * Puts the pieces of a town together in their order.
 * @param pieces as `packPiece` gives them.
 * @param Room kind of buffer: of threads that share the town, or of one alone.
 */
export function joinTown(pieces: readonly TownPiece[], Room: IndexRoom = ArrayBuffer): Town {
  const room = (bytes: number): ArrayBufferLike => new Room(bytes);
  const trees = joinTrees(
    pieces.map((piece) => piece.trees),
    room,
  );
  const drains = joinDrains(
    pieces.map((piece) => piece.drains),
    room,
  );
  const grown = joinGrown(
    pieces.map((piece) => piece.grown),
    trees,
    room,
  );
  const paths = lazyList(drains.count, (i) => pathIn(drains, i));
  const treeIds = uniqueIds(trees.ids);
  const drainIds = uniqueIds(drains.ids);
  return {
    few: joinFew(pieces.map((piece) => piece.few)),
    trees: { ...trees, ids: treeIds.ids },
    drains: { ...drains, ids: drainIds.ids },
    renamed: [...treeIds.renamed, ...drainIds.renamed],
    made: {
      grown,
      treeIndex: packSearch(grown, Room),
      lineIndex: packNet(paths, Room),
    },
  };
}

/** The town as a site whose trees and lines are made when they are looked at. */
export function siteOfTown({ few, trees, drains }: Town): Site {
  return {
    ...few,
    trees: lazyList(trees.count, treeReader(trees)),
    drains: lazyList(drains.count, drainReader(drains)),
  };
}

/** Scores of some lines of a town, and the entries that the trees of each kind bring to them. */
export interface TownBlock extends ScoreColumns {
  /** By the number of the kind in `treeKinds`. */
  readonly byKind: Float64Array;
}

/** Keys of the species table that the town's trees come to, in alphabetical order. */
export const treeKinds = ({ trees }: Town): readonly string[] =>
  [...new Set(trees.names.map(({ key }) => key))].sort();

/**
 * Scores lines of a town in one thread, block after block.
 * @param town as joined.
 * @param options as for `rank`; date and horizon as the pieces were packed with.
 * @returns a function from the number of a block's first line and of the one after its last to its scores.
 * @throws RangeError for options that make no sense.
 */
export function townScorer(town: Town, options: RankOptions): (from: number, to: number) => TownBlock {
  const { context } = seenContextOf(siteOfTown(town), options, town.made);
  const numberOf = new Map(treeKinds(town).map((key, i) => [key, i]));
  const { species, names, pattern } = town.trees;
  const kindOfPattern = Int32Array.from(
    species,
    (name) => numberOf.get(names[name]?.key as string) as number,
  );
  return (from, to) => {
    const byKind = new Float64Array(numberOf.size);
    const scores = scoreLines(context, from, to, ({ near }, load) => {
      for (let t = 0; t < near.count; t++) {
        const kind = kindOfPattern[pattern[near.number[t] as number] as number] as number;
        byKind[kind] = (byKind[kind] as number) + (load.byTree[t] as number);
      }
    });
    return { ...scores, byKind };
  };
}

/**
 * The town scored, from the scores of all its lines.
 * @param town as joined.
 * @param options as for `rank`; date and horizon as the pieces were packed with.
 * @param columns as `joinBlocks` gives them.
 */
export const scoredTown = (town: Town, options: RankOptions, columns: TownBlock): ScoredSite =>
  new ScoredSite(siteOfTown(town), options, { made: town.made, columns });

/** Blocks of lines put together in their order. */
export function joinBlocks(blocks: readonly TownBlock[]): TownBlock {
  const int = (name: 'line' | 'segment') =>
    joinColumns(
      blocks,
      (block) => block[name],
      (length) => new Int32Array(length),
    );
  const float = (name: 'lengthM' | 'expected' | 'logSd') =>
    joinColumns(
      blocks,
      (block) => block[name],
      (length) => new Float64Array(length),
    );
  const byKind = new Float64Array(blocks[0]?.byKind.length ?? 0);
  for (const block of blocks)
    for (const [i, sum] of block.byKind.entries()) byKind[i] = (byKind[i] as number) + sum;
  return {
    count: blocks.reduce((sum, block) => sum + block.count, 0),
    line: int('line'),
    segment: int('segment'),
    lengthM: float('lengthM'),
    expected: float('expected'),
    logSd: float('logSd'),
    unsaid: joinColumns(
      blocks,
      (block) => block.unsaid,
      (length) => new Uint8Array(length),
    ),
    issues: blocks.flatMap((block) => block.issues),
    byKind,
  };
}
