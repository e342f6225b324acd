import type { PackedIndex } from '../geometry/box-index.js';
import { lonLatOf, type Plane } from '../geometry/plane.js';
import { type Polyline, polylineOf } from '../geometry/polyline.js';
import type { Issue } from '../model/issue.js';
import type { Drain, FittingType, Site } from '../model/site.js';
import { fittingJoints } from '../tables/fitting-joints.js';
import { judgement } from '../tables/judgement.js';
import type { JointKey, PipeRow } from '../tables/pipe-row.js';
import { pipeRow } from '../tables/pipes.js';
import { type EndFacts, type FlowBasis, flowOf } from './flow.js';
import { type JointPlace, jointsOf } from './joints.js';
import { pipeTopAt } from './pipe-top.js';
import { type Segment, segmentsOf } from './segments.js';
import {
  AT_END_M,
  endJoinsAnother,
  geometryOf,
  type LineNet,
  netOf,
  type SnappedFitting,
  snapFittings,
} from './snap.js';

/** A fitting on a line, by station from the outlet end. */
export interface PlacedFitting {
  readonly id: string;
  readonly type: FittingType;
  readonly stationM: number;
  readonly joints: number;
  readonly sealed: boolean | null;
}

/** A drain line made ready: laid out from its outlet end, with joints, segments and depths. */
export interface LineModel {
  readonly drain: Drain;
  readonly pipe: PipeRow;
  readonly plane: Plane;
  /** From the outlet end upward. */
  readonly polyline: Polyline;
  readonly lengthM: number;
  readonly flowsAsDrawn: boolean;
  readonly flowBasis: FlowBasis;
  readonly fittings: readonly PlacedFitting[];
  readonly joint: JointKey;
  readonly pieceM: number | null;
  readonly joints: readonly JointPlace[];
  readonly segments: readonly Segment[];
  /** Depth to the top of the pipe at the two ends; linear between. */
  readonly depthOutletM: number;
  readonly depthUpperM: number;
  readonly depthKnown: boolean;
}

/** Depth to the top of the pipe at a station. */
export function depthAt(line: LineModel, stationM: number): number {
  const t = line.lengthM > 0 ? stationM / line.lengthM : 0;
  return line.depthOutletM + (line.depthUpperM - line.depthOutletM) * t;
}

function endFacts(
  site: Site,
  net: LineNet,
  line: number,
  end: 'start' | 'end',
  snapped: readonly SnappedFitting[],
): EndFacts {
  const drain = net.drains[line] as Drain;
  return {
    topM: pipeTopAt(site, drain, end)?.topM ?? null,
    fittings: snapped.filter((s) => s.atEnd === end).map((s) => s.fitting.type),
    // asked only where nothing else tells the flow: it searches the whole net
    get joinsAnother() {
      return endJoinsAnother(net, line, end);
    },
  };
}

function placeFittings(
  snapped: readonly SnappedFitting[],
  lengthM: number,
  asDrawn: boolean,
): PlacedFitting[] {
  return snapped
    .map(({ fitting, stationM, owns, pipes }) => {
      const { joints, perPipeEnd } = fittingJoints[fitting.type];
      const drawn = asDrawn ? lengthM - stationM : stationM;
      return {
        id: fitting.id,
        type: fitting.type,
        stationM: drawn <= AT_END_M ? 0 : drawn >= lengthM - AT_END_M ? lengthM : drawn,
        joints: perPipeEnd ? joints * pipes : owns ? joints : 0,
        sealed: fitting.sealed,
      };
    })
    .sort((a, b) => a.stationM - b.stationM || (a.id < b.id ? -1 : 1));
}

/** Which end depth belongs to which end of the line when only one or none is given. */
function depthsOf(drain: Drain, asDrawn: boolean): [outlet: number, upper: number, known: boolean] {
  const start = drain.depthStartM ?? drain.depthEndM;
  const end = drain.depthEndM ?? drain.depthStartM;
  if (start === null || end === null) {
    const cover = judgement.assumedCoverM.value;
    return [cover, cover, false];
  }
  return asDrawn ? [end, start, true] : [start, end, true];
}

function lineOf(
  site: Site,
  net: LineNet,
  index: number,
  snapped: readonly SnappedFitting[],
  segmentM: number,
): LineModel {
  const drain = net.drains[index] as Drain;
  const { plane, lengthM, drawn } = geometryOf(net, index);
  const flow = flowOf(
    drain,
    endFacts(site, net, index, 'start', snapped),
    endFacts(site, net, index, 'end', snapped),
  );
  const pipe = pipeRow(drain.material);
  const joint = drain.joint ?? pipe.joint;
  const pieceM = joint === 'none' ? null : (drain.pieceM ?? pipe.pieceM.value);
  const fittings = placeFittings(snapped, lengthM, flow.asDrawn);
  const [depthOutletM, depthUpperM, depthKnown] = depthsOf(drain, flow.asDrawn);
  return {
    drain,
    pipe,
    plane,
    polyline: flow.asDrawn ? polylineOf(drain.path, plane, true) : drawn,
    lengthM,
    flowsAsDrawn: flow.asDrawn,
    flowBasis: flow.basis,
    fittings,
    joint,
    pieceM,
    joints: jointsOf(lengthM, pieceM, fittings),
    segments: segmentsOf(
      lengthM,
      fittings.map((f) => f.stationM),
      segmentM,
    ),
    depthOutletM,
    depthUpperM,
    depthKnown,
  };
}

/** The drains of a site, laid out one by one when asked for: a town does not hold all its joints in memory. */
export interface LineLayout {
  readonly count: number;
  readonly at: (number: number) => LineModel;
  readonly net: LineNet;
  /** Fittings that belong to no line. */
  readonly issues: readonly Issue[];
}

/** Up to this many lines are kept once laid out. */
const KEPT = 2000;

/**
 * Every drain of a site made ready for scoring.
 * @param segmentM longest segment, metres.
 * @param packed index over the lines, where it was made before.
 */
export function layOutLines(site: Site, segmentM: number, packed?: PackedIndex): LineLayout {
  const net = netOf(site.drains, packed);
  const { byLine, issues } = snapFittings(net, site.fittings);
  const kept: (LineModel | undefined)[] = [];
  const count = site.drains.length;
  return {
    count,
    net,
    issues,
    at: (number) => {
      const known = kept[number];
      if (known) return known;
      const line = lineOf(site, net, number, byLine.get(number) ?? [], segmentM);
      if (count <= KEPT) kept[number] = line;
      return line;
    },
  };
}

/** What must be said of a line whose lower end nobody knows, or null. */
export function flowIssue(line: LineModel): Issue | null {
  if (line.flowBasis !== 'as-drawn') return null;
  const place = { ...line.drain.origin, feature: line.drain.id, path: 'properties.flow' };
  return { code: 'flow-assumed', severity: 'notice', place };
}

/** A stretch of the line in degrees, in the direction of rising station. */
export function coordinatesOf(line: LineModel, points: readonly (readonly [number, number])[]): number[][] {
  return points.map(([x, y]) => lonLatOf(line.plane, x, y).map((v) => Math.round(v * 1e9) / 1e9));
}
