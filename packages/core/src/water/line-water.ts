import type { PlacedFinding } from '../line/find.js';
import type { LineModel } from '../line/line-model.js';
import type { LineWater, Range, SeenBlockage, WaterGap } from '../model/water-result.js';
import { waterJudgement } from '../tables/judgement.js';
import { pipeFlow } from '../tables/pipe-flow.js';
import type { Metres } from '../units/quantity.js';
import { headLossAtBall } from './blockage.js';
import type { LineSlope } from './line-slope.js';
import { depthForFlow, manningFull, slopeForVelocity } from './manning.js';
import type { PipeBore } from './pipe-bore.js';
import { rationalPeakM3s } from './rational.js';
import { roughness } from './roughness.js';
import { type WorstPlace, worstPlace } from './seen-blockage.js';
import type { ServedArea } from './served-areas.js';
import { warningsOf } from './warnings.js';

/** What is known of a line before its water is worked out. */
export interface WaterInputs {
  readonly line: LineModel;
  readonly bore: PipeBore | null;
  readonly slope: LineSlope;
  readonly served: ServedArea;
  readonly findings: readonly PlacedFinding[];
  readonly rainMmPerHour: number | null;
  readonly runoff: Range;
  /** Id of a line by its number. */
  readonly idOf: (line: number) => string;
}

const eachOf = (range: Range, change: (value: number) => number): Range => ({
  low: change(range.low),
  mid: change(range.mid),
  high: change(range.high),
});

/** Low and high change places where what grows with one falls with the other. */
const turned = ({ low, mid, high }: Range): Range => ({ low: high, mid, high: low });

const share = (flow: Range, capacity: Range): Range => ({
  low: flow.low / capacity.high,
  mid: flow.mid / capacity.mid,
  high: flow.high / capacity.low,
});

type Clear = Pick<
  LineWater,
  'n' | 'fullFlowM3s' | 'fullVelocityMs' | 'selfCleansing' | 'selfCleansingIsSure' | 'selfCleansingSlope'
>;

/** The clear pipe running full. */
function clearPipe({ line, bore, slope: { slope } }: WaterInputs): Clear {
  const n = roughness(line.drain, line.pipe);
  const limit = pipeFlow.selfCleansingMs.value;
  const selfCleansingSlope =
    bore === null ? null : eachOf(n, (value) => slopeForVelocity(bore.insideDiameterM, value, limit));
  if (bore === null || slope === null || slope <= 0) {
    return {
      n,
      fullFlowM3s: null,
      fullVelocityMs: null,
      selfCleansing: null,
      selfCleansingIsSure: null,
      selfCleansingSlope,
    };
  }
  const full = (value: number) => manningFull(bore.insideDiameterM, slope, value);
  const fullVelocityMs = turned(eachOf(n, (value) => full(value).velocityMs));
  return {
    n,
    fullFlowM3s: turned(eachOf(n, (value) => full(value).flowM3s)),
    fullVelocityMs,
    selfCleansing: fullVelocityMs.mid >= limit,
    selfCleansingIsSure: fullVelocityMs.low >= limit === fullVelocityMs.high >= limit,
    selfCleansingSlope,
  };
}

function whyNoFlow({ line, served, rainMmPerHour }: WaterInputs): WaterGap | null {
  if (served.inRing) return 'ring';
  if (served.areaM2 === null) return line.drain.carries === 'foul' ? 'foul' : 'area-not-given';
  return rainMmPerHour === null ? 'rain-not-given' : null;
}

function designFlow({ served, rainMmPerHour, runoff }: WaterInputs): Range | null {
  const { areaM2 } = served;
  if (areaM2 === null || rainMmPerHour === null) return null;
  return eachOf(runoff, (value) => rationalPeakM3s(value, rainMmPerHour, areaM2));
}

/** A mass at one place holds water back; over a stretch, or where the pipe itself has given way, it narrows the line. */
function headLoss(place: WorstPlace, flow: Range | null, diameter: Metres | undefined): number | null {
  const isBall = place.fromM === place.toM && ['fine', 'mass', 'full'].includes(place.seen);
  if (!isBall || flow === null || diameter === undefined || place.share >= 1) return null;
  return headLossAtBall(place.share, flow.mid / ((Math.PI * diameter ** 2) / 4));
}

function blockageOf(place: WorstPlace, flow: Range | null, diameter: Metres | undefined): SeenBlockage {
  const { flowLeft: _, ...seen } = place;
  return { ...seen, headLossM: headLoss(place, flow, diameter) };
}

type Unknown = LineWater['unknown'][number];

function gapsOf(inputs: WaterInputs, place: WorstPlace | null): Unknown[] {
  const gaps: Unknown[] = [];
  const say = (field: string, why: WaterGap | null): void => {
    if (why !== null) gaps.push({ field, why });
  };
  say('insideDiameterM', inputs.bore === null ? 'size-not-given' : null);
  say(inputs.slope.why === 'no-fall' ? 'fullFlowM3s' : 'slope', inputs.slope.why);
  say('designFlowM3s', whyNoFlow(inputs));
  say('withRootsM3s', place === null ? 'nothing-seen' : null);
  return gaps;
}

/** What one line carries, has to carry, and carries with what was seen in it. */
export function lineWater(inputs: WaterInputs): LineWater {
  const { line, bore, slope, served, idOf } = inputs;
  const { drain } = line;
  const clear = clearPipe(inputs);
  const { fullFlowM3s } = clear;
  const designFlowM3s = designFlow(inputs);
  const place = worstPlace(line, inputs.findings);
  const withRootsM3s = fullFlowM3s && place ? eachOf(fullFlowM3s, (flow) => flow * place.flowLeft) : null;
  const usedShare = designFlowM3s && fullFlowM3s ? share(designFlowM3s, fullFlowM3s) : null;
  const clogged = withRootsM3s === null || withRootsM3s.high <= 0;
  const water: Omit<LineWater, 'warnings'> = {
    drainId: drain.id,
    name: drain.name,
    material: drain.material,
    materialName: line.pipe.name,
    carries: drain.carries,
    lengthM: line.lengthM,
    sizeM: drain.sizeM,
    insideDiameterM: bore?.insideDiameterM ?? null,
    slope: slope.slope,
    slopeFrom: slope.from,
    ...clear,
    drainsInto: served.into === null ? null : idOf(served.into),
    servesM2: drain.servesM2,
    servedM2: served.areaM2,
    notCounted: { lines: served.notCounted.lines, examples: served.notCounted.examples.map(idOf) },
    designFlowM3s,
    usedShare,
    depthRatio: usedShare && depthForFlow(usedShare.mid),
    blockage: place && blockageOf(place, designFlowM3s, bore?.insideDiameterM),
    withRootsM3s,
    usedShareWithRoots: designFlowM3s && !clogged ? share(designFlowM3s, withRootsM3s) : null,
    unknown: gapsOf(inputs, place),
  };
  return { ...water, warnings: warningsOf(water, waterJudgement.usualSlope.value) };
}
