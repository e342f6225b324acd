import { SAME_STATION_M } from '../line/holds.js';
import type { JointPlace } from '../line/joints.js';
import { depthAt, type LineModel } from '../line/line-model.js';
import type { Segment } from '../line/segments.js';
import type { Drain } from '../model/site.js';
import { trenchDepthFactor } from '../roots/depth.js';
import { jointRow } from '../tables/joints.js';
import { judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';
import type { JointKey, PipeRow } from '../tables/pipe-row.js';
import { type LineScale, NO_SCALE } from './rate-scale.js';
import { WAY_CRUSH, WAY_JOINT, WAY_SLOT } from './ways.js';

/** Places on a line where roots do harm, as columns, in the order of its segments. */
export class Openings {
  x = new Float64Array(0);
  y = new Float64Array(0);
  way = new Uint8Array(0);
  /** Rate a year at root pressure 1, before age and clock. */
  rate = new Float64Array(0);
  /** Openings of segment i are `first[i]` up to `first[i + 1]`. */
  first = new Int32Array(0);
  private length = 0;

  private makeRoom(openings: number, segments: number): void {
    this.length = 0;
    if (this.first.length < segments + 1) this.first = new Int32Array(2 * segments + 1);
    if (this.x.length >= openings) return;
    const room = 2 * openings;
    this.x = new Float64Array(room);
    this.y = new Float64Array(room);
    this.way = new Uint8Array(room);
    this.rate = new Float64Array(room);
  }

  private add(at: Walker, way: number, rate: number): void {
    const i = this.length++;
    this.x[i] = at.x;
    this.y[i] = at.y;
    this.way[i] = way;
    this.rate[i] = rate;
  }

  /** Takes the openings of the segments `from` up to `to` (numbers) of a line, in place of those before. */
  fill(line: LineModel, from: number, to: number, change: OpeningChange = {}): void {
    const rates = ratesOf(line, change);
    const deeper = change.deeperM ?? 0;
    const lengthM =
      to > from ? (line.segments[to - 1] as Segment).toM - (line.segments[from] as Segment).fromM : 0;
    const parts = to - from + line.polyline.s.length + Math.ceil(lengthM / ALONG_M);
    this.makeRoom(line.joints.length + 2 * ALONG.length * parts, to - from);
    const atJoint = new Walker(line);
    const along = new Walker(line);
    let j = 0;
    for (let i = from; i < to; i++) {
      const { fromM, toM } = line.segments[i] as LineModel['segments'][number];
      const last = i === line.segments.length - 1;
      this.first[i - from] = this.length;
      while (j < line.joints.length && (line.joints[j] as JointPlace).stationM < fromM - SAME_STATION_M) j++;
      for (; j < line.joints.length; j++) {
        const place = line.joints[j] as JointPlace;
        if (!last && place.stationM >= toM - SAME_STATION_M) break;
        const usual = jointFactor(line.drain, line.joint, place.sealed);
        const factor = change.jointFactor?.(place, usual) ?? usual;
        const depth = trenchDepthFactor(depthAt(line, place.stationM) + deeper);
        atJoint.goTo(place.stationM);
        this.add(atJoint, WAY_JOINT, rates.joint * factor * place.count * depth);
      }
      this.addAlong(line, fromM, toM, rates, deeper, along);
    }
    this.first[to - from] = this.length;
  }

  /** Slots and crushing of a stretch, straight part by straight part. */
  private addAlong(
    line: LineModel,
    fromM: number,
    toM: number,
    rates: LineRates,
    deeperM: number,
    walker: Walker,
  ): void {
    walker.goTo(fromM);
    for (let lo = fromM; lo < toM; ) {
      const end = Math.min(toM, walker.edgeEnd(lo));
      if (end <= lo) break;
      // the next of the equal parts of what is left of this straight
      const parts = Math.ceil((end - lo) / ALONG_M - 1e-9);
      const hi = parts > 1 ? lo + (end - lo) / parts : end;
      for (const at of ALONG) {
        const station = lo + at * (hi - lo);
        walker.goTo(station);
        const share = ((hi - lo) / 2) * trenchDepthFactor(depthAt(line, station) + deeperM);
        this.add(walker, WAY_CRUSH, rates.crushPerM * share);
        if (rates.slotsPerM > 0) this.add(walker, WAY_SLOT, rates.slotsPerM * share);
      }
      lo = hi;
    }
  }
}

/** Changes that a "what if" makes to the openings of a line. */
export interface OpeningChange {
  readonly jointFactor?: (place: JointPlace, usual: number) => number;
  readonly stiffnessPa?: number;
  readonly deeperM?: number;
  /** What findings make of the line's rates. */
  readonly scale?: LineScale;
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

/** Stiffness of a pipe of this size, Pa: that of the nearest size where it has its own, else the row's. */
export function stiffnessOf(pipe: PipeRow, sizeM: number | null): number {
  if (sizeM === null || pipe.sizes.length === 0) return pipe.stiffness.value;
  const nearest = pipe.sizes.reduce((best, s) =>
    Math.abs(s.nominalMm / 1000 - sizeM) < Math.abs(best.nominalMm / 1000 - sizeM) ? s : best,
  );
  return nearest.stiffness?.value ?? pipe.stiffness.value;
}

/** Two-point Gauss-Legendre rule on [0, 1]: for what happens all along the pipe. */
const ALONG = [0.5 - Math.sqrt(3) / 6, 0.5 + Math.sqrt(3) / 6] as const;
/** Longest part that the rule is laid on: within 4 % for crushing beside the smallest structural radius, 1.5 m. */
const ALONG_M = 3;

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
  const scale = change.scale ?? NO_SCALE;
  const entry = judgement.entryRatePerJointYear.value * wet * foul * scale.entry.factor;
  const slots = drain.wrapped ? judgement.perforatedWrappedPerM : judgement.perforatedUnwrappedPerM;
  const stiffness = change.stiffnessPa ?? stiffnessOf(pipe, drain.sizeM);
  return {
    joint: entry,
    slotsPerM: drain.perforated ? entry * slots.value : 0,
    crushPerM:
      judgement.crushRatePerMetreYear.value *
      scale.crush.factor *
      (judgement.crushReferenceStiffness.value / stiffness),
  };
}

/** Walks along a line so that a long one is not searched from its start for every point. */
class Walker {
  private edge = 0;
  x = 0;
  y = 0;

  constructor(private readonly line: LineModel) {}

  /** Moves on to a station, which must not lie before the last one. */
  goTo(stationM: number): void {
    const { s, x, y } = this.line.polyline;
    while (this.edge + 2 < s.length && (s[this.edge + 1] as number) < stationM) this.edge++;
    const i = this.edge;
    const from = s[i] as number;
    const span = (s[i + 1] as number) - from;
    const t = span > 0 ? Math.min(1, Math.max(0, (stationM - from) / span)) : 0;
    this.x = (x[i] as number) + t * ((x[i + 1] as number) - (x[i] as number));
    this.y = (y[i] as number) + t * ((y[i + 1] as number) - (y[i] as number));
  }

  /** Station of the end of the edge that holds `stationM`, or of the one after where it ends there. */
  edgeEnd(stationM: number): number {
    const { s } = this.line.polyline;
    let i = this.edge;
    while (i + 2 < s.length && (s[i + 1] as number) <= stationM) i++;
    return s[i + 1] as number;
  }
}
