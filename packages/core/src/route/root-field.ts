import { lonLatOf, type Plane } from '../geometry/plane.js';
import type { RoutePipe } from '../model/route.js';
import type { Site } from '../model/site.js';
import { groundOf } from '../risk/between.js';
import { clockOf } from '../risk/clock.js';
import { horizonOf } from '../risk/horizon.js';
import { addLoad, Load, type LoadInputs } from '../risk/load.js';
import { NearTrees } from '../risk/near-trees.js';
import { jointFactor, Openings, stiffnessOf } from '../risk/openings.js';
import { treeFieldOf } from '../risk/tree-field.js';
import { WAY_CRUSH, WAY_JOINT, WAY_SLOT } from '../risk/ways.js';
import { trenchDepthFactor } from '../roots/depth.js';
import { judgement } from '../tables/judgement.js';
import { pipeRow } from '../tables/pipes.js';
import { gridOver, type RouteGrid } from './grid.js';

/** Entries expected of a new pipe anywhere on the ground, each year's discounted to now. */
export interface RootField {
  readonly grid: RouteGrid;
  /** Of a metre of the pipe with its joints, slots and wall. */
  readonly perM: Float64Array;
  /** Of one more joint. */
  readonly perJoint: Float64Array;
}

export interface RootFieldRequest {
  readonly pipe: RoutePipe;
  readonly nowYear: number;
  readonly horizonYears: number;
  readonly discountRate: number;
  /** To the top of the pipe. */
  readonly coverM: number;
}

/** Roots thin out over metres: nodes need not lie closer than this, metres. */
const CELL_M = 1;

/** Rates a year at root pressure 1: of a metre of pipe by joints, slots and crushing, and of one joint. */
interface Rates {
  readonly jointsPerM: number;
  readonly slotsPerM: number;
  readonly crushPerM: number;
  readonly joint: number;
}

function ratesOf(pipe: RoutePipe, coverM: number): Rates {
  const row = pipeRow(pipe.material);
  const deep = trenchDepthFactor(coverM);
  const entry = judgement.entryRatePerJointYear.value * deep;
  const kind = pipe.joint ?? row.joint;
  const joint = entry * jointFactor({ sealed: null, sealMPa: null }, kind, null);
  const slots = pipe.wrapped ? judgement.perforatedWrappedPerM : judgement.perforatedUnwrappedPerM;
  return {
    joint,
    jointsPerM: kind === 'none' ? 0 : joint / (pipe.pieceM ?? row.pieceM.value),
    slotsPerM: pipe.perforated ? entry * slots.value : 0,
    crushPerM:
      judgement.crushRatePerMetreYear.value *
      deep *
      (judgement.crushReferenceStiffness.value / stiffnessOf(row, pipe.sizeM)),
  };
}

/** A joint, a metre of slots and a metre of wall at each node. */
function openingsOver(grid: RouteGrid, { joint, slotsPerM, crushPerM }: Rates): Openings {
  const ways = slotsPerM > 0 ? 3 : 2;
  const count = grid.columns * grid.rows;
  const openings = new Openings();
  openings.x = new Float64Array(ways * count);
  openings.y = new Float64Array(ways * count);
  openings.way = new Uint8Array(ways * count);
  openings.rate = new Float64Array(ways * count);
  for (let node = 0; node < count; node++) {
    for (let way = 0; way < ways; way++) {
      const at = ways * node + way;
      openings.x[at] = grid.x0 + (node % grid.columns) * grid.cellM;
      openings.y[at] = grid.y0 + Math.floor(node / grid.columns) * grid.cellM;
      openings.way[at] = [WAY_JOINT, WAY_CRUSH, WAY_SLOT][way] as number;
      openings.rate[at] = [joint, crushPerM, slotsPerM][way] as number;
    }
  }
  return openings;
}

/**
 * Root trouble of a pipe over an area, by the relations that a line is scored with (`addLoad`), for a trench dug now
 * and a pipe that keeps to one depth.
 */
export function rootFieldOf(site: Site, plane: Plane, over: RouteGrid, request: RootFieldRequest): RootField {
  const { pipe, nowYear, horizonYears, discountRate, coverM } = request;
  const east = over.x0 + (over.columns - 1) * over.cellM;
  const north = over.y0 + (over.rows - 1) * over.cellM;
  const grid = gridOver(over.x0, over.y0, east, north, Math.max(CELL_M, over.cellM));
  const count = grid.columns * grid.rows;
  const perM = new Float64Array(count);
  const perJoint = new Float64Array(count);
  const horizon = horizonOf(horizonYears);
  const field = treeFieldOf(site, nowYear, horizon);
  const near = new NearTrees();
  near.fill(field, {
    plane,
    drain: { path: [lonLatOf(plane, over.x0, over.y0), lonLatOf(plane, east, north)] },
  });
  if (near.count === 0) return { grid, perM, perJoint };
  const rates = ratesOf(pipe, coverM);
  const openings = openingsOver(grid, rates);
  const dated = { installedYear: nowYear, dugYear: null, cutYear: null };
  const inputs: LoadInputs = {
    openings,
    near,
    clock: clockOf(dated, pipeRow(pipe.material), nowYear, horizon),
    horizon: {
      ...horizon,
      weights: horizon.weights.map(
        (weight, k) => weight / (1 + discountRate) ** (horizon.yearsAhead[k] as number),
      ),
    },
    ground: groundOf(site, plane),
    reachScale: 1,
    clockScale: 1,
    treeFactor: null,
  };
  const ways = openings.x.length / count;
  const load = new Load(horizon.weights.length, near.count);
  const jointsPerJoint = rates.jointsPerM / rates.joint;
  for (let node = 0; node < count; node++) {
    load.clear(near.count);
    addLoad(inputs, ways * node, ways * node + 1, load);
    perJoint[node] = load.total;
    addLoad(inputs, ways * node + 1, ways * (node + 1), load);
    perM[node] = load.total - (perJoint[node] as number) * (1 - jointsPerJoint);
  }
  return { grid, perM, perJoint };
}
