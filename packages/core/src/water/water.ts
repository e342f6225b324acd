import { flowIssue, type LineLayout, layOutLines } from '../line/line-model.js';
import type { Assumption, Issue } from '../model/issue.js';
import type { Site } from '../model/site.js';
import type { LineWater, WaterResult } from '../model/water-result.js';
import { asKnownBy } from '../risk/context.js';
import { placeFindings } from '../risk/known.js';
import { pipeFlow } from '../tables/pipe-flow.js';
import { runoffRow, type SurfaceKey } from '../tables/runoff.js';
import { yearOf } from '../units/calendar.js';
import { checkPositive } from '../units/check-positive.js';
import { waterAssumptions } from './assumptions.js';
import { waterCautions } from './cautions.js';
import { lineSlope } from './line-slope.js';
import { lineWater, type WaterInputs } from './line-water.js';
import { pipeBore } from './pipe-bore.js';
import { rainLookUp } from './rain-look-up.js';
import { waterRelations } from './relations.js';
import { worstPlace } from './seen-blockage.js';
import { servedAreas } from './served-areas.js';

/** What water is reckoned with; everything may be left out. */
export interface WaterOptions {
  /** Rain to carry; the site's own where not given. It is never made up. */
  readonly rainMmPerHour?: number;
  /** Fall of lines whose own is not known, as a ratio. */
  readonly slopeRatio?: number;
  /** What the rain falls on; roof or paving where not given. */
  readonly surface?: SurfaceKey;
  /** Findings after this date are left out; all count where not given. */
  readonly asOf?: string;
}

/** Joints and segments play no part here: one segment a line is enough. */
const WHOLE_LINE_M = 1e9;

function knownSite(site: Site, asOf: string | undefined): Site {
  if (asOf === undefined) return site;
  const year = yearOf(asOf);
  if (year === undefined) throw new RangeError(`asOf must be an ISO date, got '${asOf}'`);
  return asKnownBy(site, year);
}

function rainOf(site: Site, given: number | undefined): WaterResult['rain'] {
  const mmPerHour = given ?? site.rainMmPerHour;
  if (mmPerHour === null) return { mmPerHour, from: null, lookUp: rainLookUp };
  return { mmPerHour, from: given === undefined ? 'site' : 'given', lookUp: null };
}

function inputsOf(
  site: Site,
  lines: LineLayout,
  options: WaterOptions,
  common: Pick<WaterInputs, 'rainMmPerHour' | 'runoff'>,
): { inputs: WaterInputs[]; issues: Issue[] } {
  const { byLine, issues } = placeFindings(site, lines);
  const inputs = servedAreas(site, lines).map((served, number): WaterInputs => {
    const line = lines.at(number);
    return {
      ...common,
      line,
      served,
      bore: pipeBore(line.drain, line.pipe),
      slope: lineSlope(site, line, options.slopeRatio ?? null),
      findings: byLine.get(number) ?? [],
      idOf: (other) => site.drains[other]?.id ?? '',
    };
  });
  const assumedFlows = inputs.map(({ line }) => flowIssue(line)).filter((issue) => issue !== null);
  return { inputs, issues: [...assumedFlows, ...issues] };
}

/**
 * What each line carries as its pipe, fall and roughness have it, what the rain brings, and what roots leave of it.
 * @param given as `readSite` gives it.
 * @param options rain, and what stands in for what is not known.
 * @throws RangeError for options that make no sense; bad data never throws.
 */
export function waterOf(given: Site, options: WaterOptions = {}): WaterResult {
  if (options.rainMmPerHour !== undefined) checkPositive(options.rainMmPerHour, 'rainMmPerHour');
  if (options.slopeRatio !== undefined) checkPositive(options.slopeRatio, 'slopeRatio');
  const site = knownSite(given, options.asOf);
  const { key, name, low, mid, high } = runoffRow(options.surface ?? 'roof-or-paving');
  const runoff = { low: low.value, mid: mid.value, high: high.value };
  const rain = rainOf(site, options.rainMmPerHour);
  const lines = layOutLines(site, WHOLE_LINE_M);
  const common = { rainMmPerHour: rain.mmPerHour, runoff };
  const { inputs, issues } = inputsOf(site, lines, options, common);
  const results: LineWater[] = [];
  const assumed: Assumption[] = [];
  for (const each of inputs) {
    results.push(lineWater(each));
    assumed.push(...waterAssumptions(each, worstPlace(each.line, each.findings)));
  }
  return {
    schema: 1,
    site: { name: site.name, invented: site.invented },
    rain,
    runoff: { surface: key, name, ...runoff },
    selfCleansingMs: pipeFlow.selfCleansingMs.value,
    lines: results,
    assumed,
    issues: [...lines.issues, ...issues],
    basis: waterRelations,
    cautions: waterCautions,
  };
}
