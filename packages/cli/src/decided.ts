import {
  type DecideResult,
  decide,
  demoPrices,
  type Issue,
  type NewRoute,
  type PriceIssue,
  type PriceList,
  type Site,
  type Units,
} from '@rootreach/core';
import type { Args } from './args.js';
import { asAsked } from './as-asked.js';
import { type Scoring, scoringFrom } from './common-options.js';
import type { Io } from './io.js';
import { learnedFrom } from './learned-from.js';
import { needLines } from './need-lines.js';
import { unitsFor } from './page.js';
import { bestRoute, routeIsAsked } from './planned-route.js';
import { type GivenPrices, pricesFrom } from './prices-from.js';
import { reportIssues } from './print/issues.js';
import { reportPriceIssues } from './print/price-issues.js';
import { Progress } from './progress.js';
import { readFiles } from './read-files.js';
import { assumeFrom, limitsFrom, requestFrom, termsFrom } from './work-asked.js';

/** What a call decided, with what it was decided on. */
export interface Decided {
  readonly site: Site;
  readonly result: DecideResult;
  readonly prices: GivenPrices;
  /** True where the caller named a list. */
  readonly pricesGiven: boolean;
  readonly units: Units;
  readonly issues: readonly Issue[];
  readonly priceIssues: readonly PriceIssue[];
}

/** A mistake in what was asked for is told as such. */
function decideAsAsked(
  site: Site,
  args: Args,
  scoring: Scoring,
  units: Units,
  prices: PriceList,
  newRoute: NewRoute | null,
): DecideResult {
  const { asOf, segmentM, learned } = scoring;
  return asAsked(() =>
    decide(site, requestFrom(args, site, scoring, units), {
      asOf,
      units,
      terms: termsFrom(args),
      limits: limitsFrom(args),
      assume: assumeFrom(args),
      prices,
      ...(newRoute === null ? {} : { newRoute }),
      ...(segmentM === undefined ? {} : { segmentM }),
      ...(learned === undefined ? {} : { learned }),
    }),
  );
}

/** Reads the files, decides on the stretch asked for, and says on stderr what was wrong with what was read. */
export async function decidedFrom(args: Args, io: Io): Promise<Decided> {
  const scoring = { ...scoringFrom(args, io), ...(await learnedFrom(args, io)) };
  const asked = args.choice('units', ['us', 'metric']);
  const given = await pricesFrom(args, io);
  const prices = given ?? { list: demoPrices(), issues: [] };
  const progress = new Progress(io);
  const { site, issues: found } = await readFiles(args, io);
  const units = unitsFor(asked, site);
  needLines(site, found, io, units);
  progress.step('Weighing the choices', site.trees.length + site.drains.length);
  const newRoute = routeIsAsked(args) ? bestRoute(args, site, scoring.asOf, prices.list, io) : null;
  const result = decideAsAsked(site, args, scoring, units, prices.list, newRoute);
  const issues = [...found, ...result.issues];
  reportIssues(issues, io, units);
  reportPriceIssues(prices.issues, args.text('prices') ?? '', io);
  return { site, result, prices, pricesGiven: given !== null, units, issues, priceIssues: prices.issues };
}
