import { Network } from '../line/network.js';
import type { Caution } from '../model/caution.js';
import type { Site } from '../model/site.js';
import type { Choice, DecideResult } from '../model/works.js';
import { demoPrices } from '../prices/demo-prices.js';
import { cautionsFor } from '../risk/cautions.js';
import { seenContextOf } from '../risk/seen-context.js';
import { zonesOfTree } from '../risk/tree-zones.js';
import { yearOf } from '../units/calendar.js';
import { fromInches } from '../units/length.js';
import { type AssessOptions, assess, eventCostsOf } from './assess.js';
import { type Assumed, assumedWith, listAssumptions } from './assumptions.js';
import { barrier } from './choices/barrier.js';
import { basinForWye } from './choices/basin-for-wye.js';
import { clearAgain } from './choices/clear-again.js';
import { fellTree } from './choices/fell-tree.js';
import { inletAtLowSpot } from './choices/inlet-at-low-spot.js';
import { leave } from './choices/leave.js';
import { lineInside } from './choices/line-inside.js';
import { move } from './choices/move.js';
import { replaceHeavier, replaceLike } from './choices/replace.js';
import { spotRepair } from './choices/spot-repair.js';
import { surroundingsOf } from './dig-stretch.js';
import { mainTreeOf } from './main-tree.js';
import type { DecideOptions } from './options.js';
import type { Case, Plan } from './plan.js';
import { siteAround } from './site-around.js';
import { stretchOf, targetOf, type WorkRequest } from './stretch.js';
import { switchesOf } from './switches.js';
import type { Assessed } from './value-under.js';

/** Welds let fewer roots through than any other joint that a yard crew makes (see the table of joints). */
const BETTER_PIPE = 'pvc-sch40';
/** What most yard lines are. */
const USUAL_SIZE_M = fromInches(4);

function caseOf(whole: Site, request: WorkRequest, options: DecideOptions, assumed: Assumed): Case {
  const nowYear = yearOf(options.asOf);
  if (nowYear === undefined) throw new RangeError(`asOf must be an ISO date, got '${options.asOf}'`);
  const id =
    'segment' in request ? request.segment.slice(0, request.segment.lastIndexOf('/')) : request.drain;
  const drain = whole.drains.find((other) => other.id === id);
  const seen = seenContextOf(drain === undefined ? whole : siteAround(whole, drain), options);
  const { context } = seen;
  const stretch = stretchOf(context.site, seen, request);
  const zones = context.field.trees.map((_, i) => zonesOfTree(context, i));
  return {
    site: context.site,
    seen,
    network: new Network(context.site, context.lines),
    stretch,
    around: surroundingsOf(context.site, stretch.line, zones),
    mainTree: mainTreeOf(seen, stretch),
    assumed,
    nowYear,
    newRoute: options.newRoute ?? null,
    sizeM: stretch.line.drain.sizeM ?? USUAL_SIZE_M,
  };
}

const plansOf = (c: Case, { betterPipe = BETTER_PIPE }: DecideOptions): Plan[] => [
  leave(c),
  clearAgain(c),
  spotRepair(c),
  replaceLike(c),
  replaceHeavier(c, betterPipe),
  basinForWye(c),
  lineInside(c),
  move(c),
  barrier(c),
  fellTree(c),
  inletAtLowSpot(c),
];

/** Lowest present value first; only what is possible, within the limits and priced. */
const eligibleOf = (assessed: readonly Assessed[]): Assessed[] =>
  assessed
    .filter(({ choice }) => choice.possible && choice.breaks.length === 0 && choice.presentValue !== null)
    .sort((a, b) => (a.choice.presentValue as number) - (b.choice.presentValue as number));

/** Cautions for all that may be done, by the deepest trench and the nearest stem. */
function cautionsOf(c: Case, choices: readonly Choice[]): readonly Caution[] {
  const digs = choices.flatMap(({ digs }) => digs.filter(({ bored }) => !bored));
  const deepest = Math.max(0, ...digs.map(({ depthStartM, depthEndM }) => Math.max(depthStartM, depthEndM)));
  const diameters = c.around.trees.flatMap(({ id, stemDiameterM }) =>
    choices.flatMap(({ tree }) =>
      tree.harm.filter((harm) => harm.id === id).map(({ nearestM }) => nearestM / stemDiameterM),
    ),
  );
  return cautionsFor({
    digging: digs.length > 0,
    trenchDepthM: deepest,
    unstableGround: c.site.soil === 'sand' || c.stretch.line.drain.wet === 'standing',
    rootCutting: diameters.length > 0,
    ...(diameters.length > 0 ? { trunkDiametersAway: Math.min(...diameters) } : {}),
    sawing: diameters.length > 0,
    entry: choices.some(({ work }) => work?.fittings.some(({ type }) => type === 'basin') ?? false),
    discharge: choices.some(({ id, possible }) => id === 'move' && possible),
  });
}

/**
 * What can be done about a stretch of line, each with price, odds, what recurs and present value; which to take, the
 * runner-up, and what would change that.
 * @param site as `readSite` gives it.
 * @param request one segment, or a line, whole or from station to station (metres from its outlet end).
 * @param options the date, prices, and limits of the owner.
 * @throws RangeError for a stretch that is not there, a date or a number that makes no sense.
 */
export function decide(site: Site, request: WorkRequest, options: DecideOptions): DecideResult {
  const given = options.assume ?? {};
  const assumed = assumedWith(given);
  const c = caseOf(site, request, options, assumed);
  const list = options.prices ?? demoPrices();
  const pricing = { list, terms: options.terms ?? {}, units: options.units ?? site.units ?? 'metric' };
  const horizonYears = Math.round(assumed['horizon-years']);
  const discountRate = assumed['discount-rate'];
  const limits = options.limits ?? {};
  const { asOf, segmentM, learned } = options;
  const shared: AssessOptions = {
    pricing,
    limits,
    scoring: {
      asOf,
      ...(segmentM === undefined ? {} : { segmentM }),
      ...(learned === undefined ? {} : { learned }),
    },
    costs: eventCostsOf(c, pricing),
    terms: { horizonYears, discountRate, nowFactor: 1, troubleFactor: 1, rootFactor: 1 },
  };
  const assessed = plansOf(c, options).map((plan) => assess(c, plan, shared));
  const choices = assessed.map(({ choice }) => choice);
  const eligible = eligibleOf(assessed);
  const recommended = eligible[0]?.choice.id ?? null;
  return {
    schema: 1,
    site: { name: site.name, invented: site.invented },
    asOf,
    target: targetOf(c.stretch),
    horizonYears,
    discountRate,
    currency: list.currency,
    prices: { invented: list.invented, dated: list.dated },
    limits,
    choices,
    recommended,
    runnerUp: eligible[1]?.choice.id ?? null,
    switches: recommended === null ? [] : switchesOf(eligible, shared.costs, shared.terms, recommended),
    assumed: listAssumptions(assumed, given),
    missing: missingOf(choices, shared),
    issues: [...c.seen.context.lines.issues, ...c.seen.misplaced],
    cautions: cautionsOf(c, choices),
  };
}

const ALWAYS_NEEDED = ['emergency-call', 'flood-clean-up', 'clear-by-jet', 'camera-look'] as const;

function missingOf(choices: readonly Choice[], { pricing }: AssessOptions): string[] {
  const listed = new Set(pricing.list.rows.map(({ code }) => code));
  const ofChoices = choices.flatMap(({ priced }) => priced?.missing.map(({ code }) => code) ?? []);
  return [...new Set([...ofChoices, ...ALWAYS_NEEDED.filter((code) => !listed.has(code))])];
}
