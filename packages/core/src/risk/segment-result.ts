import { lengthWithin } from '../geometry/intervals.js';
import { type Circle, stretchesInside } from '../geometry/overlap.js';
import { nearestOn, sliceOf } from '../geometry/polyline.js';
import { reachFor } from '../line/access.js';
import type { PlacedFinding } from '../line/find.js';
import { holds } from '../line/holds.js';
import { coordinatesOf, depthAt, type LineModel } from '../line/line-model.js';
import type { Assumption } from '../model/issue.js';
import type { Chance, OverlapM, SegmentResult, TreeShare } from '../model/result.js';
import type { Tree } from '../model/site.js';
import { soilFactor } from '../roots/reach.js';
import { treeAssumptions } from '../roots/tree-size.js';
import { type Zones, zonesOf } from '../roots/zones.js';
import { judgement } from '../tables/judgement.js';
import { bandOf } from './band.js';
import type { PreparedLine, RiskContext } from './context.js';
import { driversOf } from './drivers.js';
import { knownIn, lastSeenClear } from './known.js';
import { lineAssumptions } from './line-assumptions.js';
import type { Load } from './load.js';
import { nextLookYear } from './next-look.js';
import { tooLittleKnown } from './too-little-known.js';
import { treeName } from './tree-name.js';
import { WAY_CRUSH, WAY_JOINT, WAY_SLOT } from './ways.js';

/** Trees listed for a segment: at most this many, and none below this share of the load (judgement). */
const MOST_TREES = 5;
const LEAST_SHARE = 0.01;

/** Circles of the trees near a line, by zone, in the line's plane. */
export type ZoneCircles = Readonly<Record<keyof OverlapM, ReturnType<typeof stretchesInside>>>;

/** Stretches of a line inside each zone of any tree. */
export function zoneStretches(context: RiskContext, prepared: PreparedLine): ZoneCircles {
  const ground = soilFactor(context.site.soil);
  const zones = Array.from(prepared.near.numbers(), (number) => {
    const size = context.field.sizeOf(number);
    return zonesOf(size.row, size.stemDiameter, size.crownRadius, ground);
  });
  const inside = (zone: keyof Zones) => {
    const circles = zones.map(
      (z, i): Circle => ({
        x: prepared.near.x[i] as number,
        y: prepared.near.y[i] as number,
        radiusM: z[zone],
      }),
    );
    return stretchesInside(prepared.line.polyline, circles);
  };
  return {
    dripline: inside('dripline'),
    trunkMultiple: inside('trunkMultiple'),
    structural: inside('structural'),
    reach: inside('reach'),
  };
}

function overlapOf(stretches: ZoneCircles, fromM: number, toM: number): OverlapM {
  return {
    dripline: lengthWithin(stretches.dripline, fromM, toM),
    trunkMultiple: lengthWithin(stretches.trunkMultiple, fromM, toM),
    structural: lengthWithin(stretches.structural, fromM, toM),
    reach: lengthWithin(stretches.reach, fromM, toM),
  };
}

function sharesOf(context: RiskContext, prepared: PreparedLine, i: number, load: Load): TreeShare[] {
  const { fromM, toM } = prepared.line.segments[i] as LineModel['segments'][number];
  return Array.from(load.byTree, (value, t) => ({ t, share: load.total > 0 ? value / load.total : 0 }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((a, b) => b.share - a.share)
    .slice(0, MOST_TREES)
    .map(({ t, share }) => {
      const number = prepared.near.number[t] as number;
      const x = prepared.near.x[t] as number;
      const y = prepared.near.y[t] as number;
      return {
        id: (context.field.trees[number] as Tree).id,
        share,
        distanceM: nearestOn(prepared.line.polyline, x, y, fromM, toM).distance,
        name: treeName(context.field, number),
      };
    });
}

function assumedFor(context: RiskContext, prepared: PreparedLine, trees: readonly TreeShare[]): Assumption[] {
  const ids = new Set(trees.map((t) => t.id));
  const ofTrees = Array.from(prepared.near.numbers()).flatMap((number) => {
    const tree = context.field.trees[number] as Tree;
    return ids.has(tree.id) ? treeAssumptions(tree, context.field.sizeOf(number)) : [];
  });
  return [...lineAssumptions(prepared), ...ofTrees];
}

/** `main/4`: segments count from 1 at the outlet end. */
export const segmentId = (drainId: string, i: number): string => `${drainId}/${i + 1}`;

/** What the ranking already knows of a segment. */
export interface RankedSegment {
  readonly prepared: PreparedLine;
  /** Number of the segment in its line, from 0. */
  readonly i: number;
  readonly load: Load;
  readonly rank: number;
  readonly chance: Chance;
  readonly interval: SegmentResult['interval'];
  readonly inWorstTenth: number;
  readonly findings: readonly PlacedFinding[];
  readonly stretches: ZoneCircles;
}

/** Years since a stretch was last seen clear, dug or laid, where that is on record; else 0. */
export function yearsUnseen(context: RiskContext, line: LineModel, seenClear: number | null): number {
  const { dugYear, installedYear } = line.drain;
  const last = Math.max(dugYear ?? installedYear ?? -Infinity, seenClear ?? -Infinity);
  return Number.isFinite(last) ? Math.max(0, context.nowYear - last) : 0;
}

/** Everything that is said about one segment. */
export function segmentResult(context: RiskContext, ranked: RankedSegment): SegmentResult {
  const { prepared, i, load, findings } = ranked;
  const { line } = prepared;
  const { fromM, toM } = line.segments[i] as LineModel['segments'][number];
  const lengthM = toM - fromM;
  const last = i === line.segments.length - 1;
  const inside = (at: number): boolean => holds({ fromM, toM }, at, last);
  const joints = line.joints.filter((j) => inside(j.stationM));
  const count = joints.reduce((sum, j) => sum + j.count, 0);
  const fittings = line.fittings.filter((f) => inside(f.stationM));
  const known = knownIn(line, findings, fromM, toM);
  const trees = sharesOf(context, prepared, i, load);
  const score = 100 * ranked.chance.likely;
  const unseen = yearsUnseen(context, line, lastSeenClear(findings, fromM, toM));
  return {
    rank: ranked.rank,
    id: segmentId(line.drain.id, i),
    drainId: line.drain.id,
    drainName: line.drain.name,
    startM: fromM,
    endM: toM,
    lengthM,
    score,
    chance: ranked.chance,
    interval: ranked.interval,
    inWorstTenth: ranked.inWorstTenth,
    band: bandOf(score, known, tooLittleKnown(context, prepared, load)),
    known,
    overlapM: overlapOf(ranked.stretches, fromM, toM),
    joints: { count, perM: count / lengthM, basis: jointBasis(line, fittings.length > 0) },
    fittings: fittings.map((f) => ({ id: f.id, type: f.type, atM: f.stationM })),
    material: line.drain.material,
    depthM: depthAt(line, (fromM + toM) / 2),
    expectedEntries: {
      joints: load.byWay(WAY_JOINT),
      slots: load.byWay(WAY_SLOT),
      crush: load.byWay(WAY_CRUSH),
    },
    trees,
    drivers: driversOf(context, prepared, i, load),
    assumed: assumedFor(context, prepared, trees),
    reach: reachFor(line, fromM, toM),
    nextLook: String(
      known === null
        ? nextLookYear(load.perYear, context.horizon, context.nowYear, unseen)
        : Math.floor(context.nowYear + judgement.nextLook.value.minYears),
    ),
    geometry: { type: 'LineString', coordinates: coordinatesOf(line, sliceOf(line.polyline, fromM, toM)) },
  };
}

function jointBasis(line: LineModel, hasFitting: boolean): string {
  const pieces =
    line.pieceM === null ? 'no pipe joints' : line.drain.pieceM === null ? 'usual pieces' : 'pieces';
  return hasFitting ? `fittings and ${pieces}` : pieces;
}
