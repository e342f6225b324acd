import { type Density, summaryOf } from '../infer/density.js';
import { evidenceOf, sumAscending } from '../infer/likelihood.js';
import { type GroupEvidence, pooledPosterior } from '../infer/pooled.js';
import type { LearnedGroup, LearnedModel } from '../model/learned.js';
import type { Site } from '../model/site.js';
import { contextOf, type RankOptions } from '../risk/context.js';
import { seedFrom } from '../risk/draws.js';
import { MODEL_VERSION, modelFingerprint } from '../risk/fingerprint.js';
import { kindOf } from '../risk/groups.js';
import { placeFindings } from '../risk/known.js';
import { type Observation, observationsOf } from '../risk/observed.js';

/**
 * Observations of one site, by line, with what could not be placed.
 * @param site with its findings.
 * @param options as for `rank`; findings after its date are left out.
 */
export function observe(
  site: Site,
  options: RankOptions,
): { observations: Observation[]; issues: ReturnType<typeof placeFindings>['issues'] } {
  const context = contextOf(site, options);
  const { byLine, issues } = placeFindings(context.site, context.lines);
  return { observations: observationsOf(context, byLine), issues };
}

function learnedGroup(
  group: string,
  lines: GroupEvidence,
  density: Density,
  priorLogSd: number,
): LearnedGroup {
  const { low, mean, high, logSd } = summaryOf(density);
  return {
    group,
    entries: lines.reduce((sum, line) => sum + line.entries, 0),
    expected: sumAscending(lines.map((line) => line.expected)),
    someStretches: lines.reduce((sum, line) => sum + line.some.length, 0),
    multiplier: { low, mean, high },
    logSd,
    priorLogSd,
  };
}

/** What was seen of the lines of one group, in an order that does not hang on how they came. */
function evidenceByLine(observations: readonly Observation[]): GroupEvidence {
  const byLine = new Map<string, Observation[]>();
  for (const o of observations) {
    const known = byLine.get(o.line);
    if (known) known.push(o);
    else byLine.set(o.line, [o]);
  }
  return [...byLine].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, ofLine]) => evidenceOf(ofLine));
}

/** Same digits whatever the order in which sites and findings came. */
function fingerprintOf(observations: readonly Observation[]): string {
  const rows = observations
    .map((o) => [o.group, o.saw, o.entries, o.expected, o.year].join(' '))
    .sort()
    .join('\n');
  return (seedFrom(rows, 0) >>> 0).toString(16).padStart(8, '0');
}

/**
 * Learns the rate multipliers of every group that anything was seen of.
 * @param observations from any number of sites; see `observe`.
 * @param counts how many sites and lines, for the file.
 */
export function learn(
  observations: readonly Observation[],
  counts: { readonly sites: number; readonly lines: number },
): LearnedModel {
  const [prior] = pooledPosterior([]);
  const priorLogSd = summaryOf(prior as Density).logSd;
  const names = [...new Set(observations.filter((o) => o.expected > 0).map((o) => o.group))].sort();
  const groups: LearnedGroup[] = [];
  const kinds: LearnedGroup[] = [];
  for (const kind of [...new Set(names.map(kindOf))].sort()) {
    const ofKind = names.filter((name) => kindOf(name) === kind);
    const evidence = ofKind.map((name) => evidenceByLine(observations.filter((o) => o.group === name)));
    const densities = pooledPosterior(evidence);
    ofKind.forEach((name, i) => {
      groups.push(learnedGroup(name, evidence[i] as GroupEvidence, densities[i] as Density, priorLogSd));
    });
    kinds.push(learnedGroup(kind, [], densities[ofKind.length] as Density, priorLogSd));
  }
  return {
    schema: 1,
    kind: 'rootreach-learned',
    model: { version: MODEL_VERSION, fingerprint: modelFingerprint() },
    data: { fingerprint: fingerprintOf(observations), ...counts, observations: observations.length },
    groups,
    kinds,
  };
}
