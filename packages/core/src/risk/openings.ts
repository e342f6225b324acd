import { pointAt } from '../geometry/polyline.js';
import type { JointPlace } from '../line/joints.js';
import { depthAt, type LineModel } from '../line/line-model.js';
import type { Drain } from '../model/site.js';
import { trenchDepthFactor } from '../roots/depth.js';
import { jointRow } from '../tables/joints.js';
import { judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';
import type { JointKey, PipeRow } from '../tables/pipe-row.js';
import { WAY_CRUSH, WAY_JOINT, WAY_SLOT } from './ways.js';

/** Places on a line where roots do harm, as columns, in the order of its segments. */
export interface Openings {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly way: Uint8Array;
  /** Rate a year at root pressure 1, before age and clock. */
  readonly rate: Float64Array;
  /** Joints of segment i are `first[i]` up to `first[i + 1]`. */
  readonly first: Int32Array;
}

/** Changes that a "what if" makes to the openings of a line. */
export interface OpeningChange {
  readonly jointFactor?: (place: JointPlace, usual: number) => number;
  readonly stiffnessPa?: number;
  readonly deeperM?: number;
}

/** Share of joints that roots can pass at a seal pressure (Sadler, Burn & Whittle 2001, logistic through their points). */
export function passableShare(sealMPa: number): number {
  const { sealMidpointMPa, sealScaleMPa } = modelConstants;
  return 1 / (1 + Math.exp((sealMPa - sealMidpointMPa.value) / sealScaleMPa.value));
}

/** Openness of a joint: its kind's factor, bent by what is said of its seal. */
export function jointFactor(
  drain: Pick<Drain, 'sealed' | 'sealMPa'>,
  joint: JointKey,
  own: boolean | null,
): number {
  if (drain.sealMPa !== null && own === null) return passableShare(drain.sealMPa);
  // a joint at a fitting on a coil or welded run is still a made joint
  const usual = joint === 'none' ? jointRow('snap').factor.value : jointRow(joint).factor.value;
  const sealed = own ?? drain.sealed;
  if (sealed === true) return Math.min(usual, judgement.sealedJointFactorMax.value);
  if (sealed === false) return Math.max(usual, judgement.unsealedJointFactorMin.value);
  return usual;
}

/** Stiffness of a pipe of this size, Pa: the size's own where it has one, else the row's. */
export function stiffnessOf(pipe: PipeRow, sizeM: number | null): number {
  const own = pipe.sizes.filter((s) => s.stiffness !== undefined);
  if (sizeM === null || own.length === 0) return pipe.stiffness.value;
  const nearest = own.reduce((best, s) =>
    Math.abs(s.nominalMm / 1000 - sizeM) < Math.abs(best.nominalMm / 1000 - sizeM) ? s : best,
  );
  return nearest.stiffness?.value ?? pipe.stiffness.value;
}

/** Two-point Gauss-Legendre rule on [0, 1]: for what happens all along the pipe. */
const ALONG = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6] as const;

/** Rates of a line that are the same all along it, before depth. */
interface LineRates {
  /** Times a joint's factor: rate of one joint. */
  readonly joint: number;
  readonly slotsPerM: number;
  readonly crushPerM: number;
}

function ratesOf(line: LineModel, change: OpeningChange): LineRates {
  const { drain, pipe } = line;
  const wet = judgement.wetFactors.value[drain.wet ?? 'dry'];
  const foul = drain.carries === 'foul' ? modelConstants.foulFactor.value : 1;
  const entry = judgement.entryRatePerJointYear.value * wet * foul;
  const slots = drain.wrapped ? judgement.perforatedWrappedPerM : judgement.perforatedUnwrappedPerM;
  const stiffness = change.stiffnessPa ?? stiffnessOf(pipe, drain.sizeM);
  return {
    joint: entry,
    slotsPerM: drain.perforated ? entry * slots.value : 0,
    crushPerM: judgement.crushRatePerMetreYear.value * (judgement.crushReferenceStiffness.value / stiffness),
  };
}

class Columns {
  readonly x: number[] = [];
  readonly y: number[] = [];
  readonly way: number[] = [];
  readonly rate: number[] = [];

  add([x, y]: readonly [number, number], way: number, rate: number): void {
    this.x.push(x);
    this.y.push(y);
    this.way.push(way);
    this.rate.push(rate);
  }
}

/** Openings of the segments `from` up to `to` (numbers) of a line. */
export function openingsOf(line: LineModel, from: number, to: number, change: OpeningChange = {}): Openings {
  const rates = ratesOf(line, change);
  const columns = new Columns();
  const first = new Int32Array(to - from + 1);
  const deeper = change.deeperM ?? 0;
  let j = 0;
  for (let i = from; i < to; i++) {
    const { fromM, toM } = line.segments[i] as LineModel['segments'][number];
    const last = i === line.segments.length - 1;
    first[i - from] = columns.x.length;
    while (j < line.joints.length && (line.joints[j] as JointPlace).stationM < fromM) j++;
    for (; j < line.joints.length; j++) {
      const place = line.joints[j] as JointPlace;
      if (place.stationM >= toM && !last) break;
      const usual = jointFactor(line.drain, line.joint, place.sealed);
      const factor = change.jointFactor?.(place, usual) ?? usual;
      const depth = trenchDepthFactor(depthAt(line, place.stationM) + deeper);
      columns.add(
        pointAt(line.polyline, place.stationM),
        WAY_JOINT,
        rates.joint * factor * place.count * depth,
      );
    }
    addAlong(line, fromM, toM, rates, deeper, columns);
  }
  first[to - from] = columns.x.length;
  return {
    x: Float64Array.from(columns.x),
    y: Float64Array.from(columns.y),
    way: Uint8Array.from(columns.way),
    rate: Float64Array.from(columns.rate),
    first,
  };
}

/** Slots and crushing of a stretch, straight part by straight part. */
function addAlong(
  line: LineModel,
  fromM: number,
  toM: number,
  rates: LineRates,
  deeperM: number,
  columns: Columns,
): void {
  const { s, x, y } = line.polyline;
  for (let i = 0; i + 1 < s.length; i++) {
    const s0 = s[i] as number;
    const s1 = s[i + 1] as number;
    const lo = Math.max(fromM, s0);
    const hi = Math.min(toM, s1);
    if (hi <= lo) continue;
    for (const at of ALONG) {
      const station = lo + at * (hi - lo);
      const t = (station - s0) / (s1 - s0);
      const point = [
        (x[i] as number) + t * ((x[i + 1] as number) - (x[i] as number)),
        (y[i] as number) + t * ((y[i + 1] as number) - (y[i] as number)),
      ] as const;
      const share = ((hi - lo) / 2) * trenchDepthFactor(depthAt(line, station) + deeperM);
      columns.add(point, WAY_CRUSH, rates.crushPerM * share);
      if (rates.slotsPerM > 0) columns.add(point, WAY_SLOT, rates.slotsPerM * share);
    }
  }
}
