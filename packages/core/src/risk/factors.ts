import { nearestOn } from '../geometry/polyline.js';
import { depthAt } from '../line/line-model.js';
import type { Factor } from '../model/factor.js';
import type { Site, Tree } from '../model/site.js';
import { rootDensity } from '../roots/density.js';
import { GLOBAL_BETA, shareBelow, trenchDepthFactor } from '../roots/depth.js';
import { regrownShare, regrowthYears } from '../roots/regrowth.js';
import type { Cited } from '../sources/cited.js';
import { jointRow } from '../tables/joints.js';
import { type Judged, judgement } from '../tables/judgement.js';
import { modelConstants } from '../tables/model-constants.js';
import { toPsi } from '../units/pressure.js';
import { pascals } from '../units/quantity.js';
import { type PreparedLine, prepareLine, type RankOptions, type RiskContext } from './context.js';
import { jointFactor, stiffnessOf } from './openings.js';
import { seenContextOf } from './seen-context.js';
import { treeName } from './tree-name.js';

const ours = (what: string, value: number, unit: string, from: Judged<unknown>): Factor => ({
  what,
  value,
  unit,
  source: 'our-judgement',
  known: 'judgement',
  why: from.why,
});

const cited = (what: string, value: number, unit: string, from: Cited<unknown>): Factor => ({
  what,
  value,
  unit,
  source: from.source,
  known: from.known,
  why: from.place ?? '',
});

function lineFactors(prepared: PreparedLine, atM: number): Factor[] {
  const { line, clock } = prepared;
  const { drain, pipe } = line;
  const depth = depthAt(line, atM);
  const { entryRatePerJointYear, wetFactors, ageSlopeYears, depthScaleM } = judgement;
  const joint = line.joint === 'none' ? 'snap' : line.joint;
  const factors = [
    ours(
      'entries per open joint and year where roots are densest',
      entryRatePerJointYear.value,
      '',
      entryRatePerJointYear,
    ),
    cited(
      `openness of a ${jointRow(joint).name}`,
      jointFactor(drain, line.joint, null),
      '',
      jointRow(joint).factor,
    ),
    ours(
      `age of the joints (${Math.round(clock.ageYears)} years)`,
      clock.ageFactor[0] as number,
      '',
      ageSlopeYears,
    ),
    ours(`depth ${depth.toFixed(2)} m, along a trench`, trenchDepthFactor(depth), '', depthScaleM),
    {
      what: `share of roots deeper than ${depth.toFixed(2)} m in undisturbed ground, for comparison`,
      value: shareBelow(depth, GLOBAL_BETA),
      unit: '',
      source: 'jackson-1996',
      known: 'read',
      why: 'not used in the rate: roots follow the loose backfill down',
    } satisfies Factor,
    ours('water in the line', wetFactors.value[drain.wet ?? 'dry'], '', wetFactors),
    cited(`stiffness of ${pipe.name}`, toPsi(pascals(stiffnessOf(pipe, drain.sizeM))), 'psi', pipe.stiffness),
  ];
  const { factor: learned } = prepared.scale.entry;
  if (learned !== 1) {
    factors.push({
      what: 'rate at such openings against the one assumed, learned from findings',
      value: learned,
      unit: '',
      source: 'our-judgement',
      known: 'calculated',
      why: 'the mean of what the findings allow',
    });
  }
  if (drain.carries === 'foul') {
    factors.push(cited('foul water', modelConstants.foulFactor.value, '', modelConstants.foulFactor));
  }
  return factors;
}

function treeFactors(
  context: RiskContext,
  prepared: PreparedLine,
  near: number,
  fromM: number,
  toM: number,
): Factor[] {
  const { field } = context;
  const number = prepared.near.number[near] as number;
  const tree = field.trees[number] as Tree;
  const size = field.sizeOf(number);
  const { distance } = nearestOn(
    prepared.line.polyline,
    prepared.near.x[near] as number,
    prepared.near.y[near] as number,
    fromM,
    toM,
  );
  const pattern = field.pattern[number] as number;
  const reach = field.reachM[pattern * field.moments] as number;
  const tau = regrowthYears(distance, field.spreadMPerYear[pattern] as number);
  const since = prepared.clock.sinceDug[0] as number;
  const name = `${treeName(field, number)} (${tree.id})`;
  const vigour = size.row.vigour;
  return [
    { ...cited(`${name}: vigour class`, vigour.value, '', vigour) },
    ours(
      `${name}: weight of that class`,
      judgement.vigourWeights.value[vigour.value - 1] as number,
      '',
      judgement.vigourWeights,
    ),
    ours(`${name}: reach of its roots`, reach, 'm', judgement.reach),
    ours(
      `${name}: roots left at ${distance.toFixed(1)} m, of those at the trunk`,
      rootDensity(distance, reach),
      '',
      judgement.reach,
    ),
    ours(
      `${name}: share grown back since the trench was last open`,
      regrownShare(since, tau),
      '',
      judgement.regrowthMetresPerYear,
    ),
  ];
}

/**
 * The numbers behind one segment, each with where it comes from: what its joints and pipe bring, then its trees.
 * @param site as read.
 * @param options as for `rank`.
 * @param segmentId `main/4`, as in a result.
 * @param trees ids of the trees wanted.
 * @returns an empty list where there is no such segment.
 */
export function factorsOf(
  site: Site,
  options: RankOptions,
  segmentId: string,
  trees: readonly string[],
): Factor[] {
  const cut = segmentId.lastIndexOf('/');
  const drainId = segmentId.slice(0, cut);
  const i = Number(segmentId.slice(cut + 1)) - 1;
  const number = site.drains.findIndex((d) => d.id === drainId);
  if (number < 0) return [];
  const { context } = seenContextOf(site, options);
  const prepared = prepareLine(context, context.lines.at(number));
  const segment = prepared.line.segments[i];
  if (!segment) return [];
  const wanted = Array.from(prepared.near.numbers(), (n, near) => ({
    near,
    id: (context.field.trees[n] as Tree).id,
  }))
    .filter(({ id }) => trees.includes(id))
    .sort((a, b) => trees.indexOf(a.id) - trees.indexOf(b.id));
  return [
    ...lineFactors(prepared, (segment.fromM + segment.toM) / 2),
    ...wanted.flatMap(({ near }) => treeFactors(context, prepared, near, segment.fromM, segment.toM)),
  ];
}
