import type { PriceList, PriceTerms } from '../model/prices.js';
import type { Quantity } from '../model/quantity.js';
import type { Units } from '../model/site.js';
import type { TreeHarm } from '../model/tree-harm.js';
import type { Choice, GardenEffect, OwnerLimits, Recurring, TreeEffect } from '../model/works.js';
import { priceQuantities } from '../prices/price-quantities.js';
import { quantitiesOf } from '../quantities/quantities-of.js';
import type { RankOptions } from '../risk/context.js';
import { chanceOf } from '../risk/interval.js';
import { harmOf } from '../roots/harm.js';
import { judgement } from '../tables/judgement.js';
import { stoppagesFrom } from './assumptions.js';
import { choiceName, wordEffect, wordReasons } from './choice-words.js';
import { breaksOf, forbidsDigging } from './limits.js';
import { type Case, type ExtraCode, extra, type Plan } from './plan.js';
import { type StretchOdds, stretchOdds, withRate } from './stretch-odds.js';
import { type Assessed, type EventCosts, type Terms, totalOf, valueUnder } from './value-under.js';

/** Prices and terms of a comparison. */
export interface Pricing {
  readonly list: PriceList;
  readonly terms: PriceTerms;
  readonly units: Units;
}

/** Years of the curve that is handed on for drawing. */
const CURVE_YEARS: readonly number[] = [0, 1, 2, 3, 5, 7, 10, 15, 20, 25];
/** A hole shorter than this is no trench, metres (judgement). */
const HOLE_M = 4;
/** A bare half year apart nobody plans visits. */
const VISIT_STEP = 4;

const VISIT_CODE = { jet: 'clear-by-jet', cutter: 'clear-by-cutter', look: 'camera-look' } as const;

/** Price of one thing with margin and tax; null where the list lacks it. */
export function priceOf(code: ExtraCode, { list, terms }: Pricing): number | null {
  const { missing, total } = priceQuantities([extra(code)], list, terms);
  return missing.length > 0 ? null : Number(total);
}

export function eventCostsOf(c: Case, pricing: Pricing): EventCosts {
  const [call, cleanUp, jet] = (['emergency-call', 'flood-clean-up', 'clear-by-jet'] as const).map((code) =>
    priceOf(code, pricing),
  ) as [number | null, number | null, number | null];
  const stoppage = call === null || cleanUp === null ? null : call + cleanUp;
  const share = c.assumed['entry-stops-share'];
  return { stoppage, entry: stoppage === null || jet === null ? null : share * stoppage + (1 - share) * jet };
}

function harmBy(c: Case, { stretches }: Plan): TreeHarm[] {
  if (stretches.length === 0) return [];
  return harmOf(c.around.trees, stretches).filter(({ rule }) => rule !== 'clear');
}

function treeEffect(plan: Plan, harm: readonly TreeHarm[]): TreeEffect {
  if (plan.felled !== null) return 'tree-goes';
  if (harm.some(forbidsDigging)) return 'must-not';
  if (harm.some(({ rule }) => rule === 'arborist' || rule === 'no-dig')) return 'arborist-says';
  return harm.length > 0 ? 'few-roots-cut' : 'none';
}

function gardenEffect({ digs }: Plan): GardenEffect {
  const open = digs.filter(({ bored }) => !bored);
  if (digs.length === 0) return 'none';
  if (open.some(({ surface }) => surface === 'paving')) return 'paving-opened';
  return digs.reduce((sum, { lengthM }) => sum + lengthM, 0) > HOLE_M ? 'trench' : 'one-hole';
}

function measuredOf({ site }: Case, { digs, pieceM }: Plan, units: Units): Quantity[] {
  if (digs.length === 0) return [];
  return quantitiesOf(digs, { soil: site.soil, units, ...(pieceM === null ? {} : { pieceM }) });
}

function billOf(c: Case, plan: Plan, harm: readonly TreeHarm[], { units }: Pricing): Quantity[] {
  const dug = plan.measured ?? measuredOf(c, plan, units);
  const asks = harm.some(({ rule }) => rule === 'arborist' || rule === 'no-dig');
  return [...dug, ...(asks ? [extra('arborist-visit')] : []), ...plan.extras];
}

/** First year by which a chance has passed, on the straight lines between whole years; null: not within the years. */
function yearsTo(chance: number, expectedBy: readonly number[]): number | null {
  const wanted = -Math.log1p(-chance);
  const year = expectedBy.findIndex((expected) => expected >= wanted);
  if (year < 0) return null;
  if (year === 0) return 0;
  const [before, after] = [expectedBy[year - 1] as number, expectedBy[year] as number];
  return year - 1 + (wanted - before) / (after - before);
}

function recurringOf(c: Case, plan: Plan, odds: StretchOdds, pricing: Pricing): Recurring[] {
  if (plan.visits === 'none') return [];
  const code = VISIT_CODE[plan.visits];
  const each = priceOf(code, pricing);
  if (plan.visits === 'look') {
    const { minYears, maxYears } = judgement.nextLook.value;
    const at = yearsTo(c.assumed['look-target-chance'], odds.expectedBy) ?? maxYears;
    const everyYears = Math.min(maxYears, Math.max(minYears, Math.ceil(at)));
    return [{ what: code, everyYears, each, because: 'look-target' }];
  }
  const inPipe = c.stretch.slices.length > 0;
  const half = yearsTo(0.5, odds.expectedBy);
  const years = inPipe ? c.assumed['clearing-years'] : half;
  if (years === null) return [];
  const everyYears = Math.max(1 / VISIT_STEP, Math.round(years * VISIT_STEP) / VISIT_STEP);
  return [{ what: code, everyYears, each, because: inPipe ? 'regrowth' : 'half-likely' }];
}

/** Events a year that the model does not know of: what stays, and what happens between clearings. */
function rateOf(c: Case, { left, visits }: Plan, recurring: readonly Recurring[]): number {
  const stays = left === null ? 0 : stoppagesFrom(left.trouble.seen, c.assumed);
  const [first] = recurring;
  if (first === undefined || (visits !== 'jet' && visits !== 'cutter')) return stays;
  return stays + c.assumed['stoppages-between-clearings'] / first.everyYears;
}

function notPossible(plan: Plan): Assessed {
  return {
    choice: {
      id: plan.id,
      name: choiceName(plan.id),
      possible: false,
      reasons: plan.reasons,
      why: wordReasons(plan.reasons),
      breaks: [],
      work: null,
      digs: [],
      quantities: [],
      priced: null,
      now: null,
      recurring: [],
      chance: null,
      curve: [],
      presentValue: null,
      parts: null,
      tree: { effect: 'none', harm: [], felled: null },
      garden: 'none',
      effect: '',
    },
    expectedBy: [0],
    ratePerYear: 0,
  };
}

export interface AssessOptions {
  readonly pricing: Pricing;
  readonly limits: OwnerLimits;
  readonly scoring: Pick<RankOptions, 'asOf' | 'segmentM' | 'learned'>;
  readonly costs: EventCosts;
  readonly terms: Terms;
}

/** A plan with its quantities, price, odds, what recurs, and present value. */
export function assess(
  c: Case,
  plan: Plan,
  { pricing, limits, scoring, costs, terms }: AssessOptions,
): Assessed {
  if (!plan.possible) return notPossible(plan);
  const harm = harmBy(c, plan);
  const quantities = billOf(c, plan, harm, pricing);
  const priced = priceQuantities(quantities, pricing.list, pricing.terms);
  const odds = stretchOdds(plan.site, plan.parts, scoring);
  const recurring = recurringOf(c, plan, odds, pricing);
  const ratePerYear = rateOf(c, plan, recurring);
  const garden = gardenEffect(plan);
  const effect = treeEffect(plan, harm);
  const bare: Choice = {
    id: plan.id,
    name: choiceName(plan.id),
    possible: true,
    reasons: plan.reasons,
    why: wordReasons(plan.reasons),
    breaks: [],
    work: plan.work,
    digs: plan.digs,
    quantities,
    priced,
    now: priced.missing.length > 0 ? null : Number(priced.total),
    recurring,
    chance: {
      '10': withRate(odds.chance['10'], 10 * ratePerYear),
      '25': withRate(odds.chance['25'], 25 * ratePerYear),
    },
    curve: CURVE_YEARS.map((yearsAhead) => ({
      yearsAhead,
      chance: chanceOf((odds.expectedBy[yearsAhead] as number) + ratePerYear * yearsAhead),
    })),
    presentValue: null,
    parts: null,
    tree: { effect, harm, felled: plan.felled },
    garden,
    effect: wordEffect(effect, garden),
  };
  const assessed = { choice: bare, expectedBy: odds.expectedBy, ratePerYear };
  const parts = valueUnder(assessed, costs, terms);
  const breaks = breaksOf(limits, bare, harm);
  return { ...assessed, choice: { ...bare, breaks, parts, presentValue: totalOf(parts) } };
}
