import { demoPrices, offersOfRoutes, type QuoteResult, quoteOf } from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import { asOfFrom } from './common-options.js';
import type { Decided } from './decided.js';
import type { Io } from './io.js';
import { unitsFor } from './page.js';
import { planAsked } from './planned-route.js';
import { pricesFrom } from './prices-from.js';
import { reportIssues } from './print/issues.js';
import { reportPriceIssues } from './print/price-issues.js';
import { readFiles } from './read-files.js';
import { termsFrom } from './work-asked.js';

/** A quote with what it was made from. */
export interface Quoted extends Pick<Decided, 'site' | 'pricesGiven' | 'units' | 'issues' | 'priceIssues'> {
  readonly result: QuoteResult;
}

/** Plans the routes asked for and quotes them side by side. */
export async function quotedRoutes(args: Args, io: Io): Promise<Quoted> {
  const asOf = asOfFrom(args, io);
  const asked = args.choice('units', ['us', 'metric']);
  const given = await pricesFrom(args, io);
  const prices = given?.list ?? demoPrices();
  const { site, issues: found } = await readFiles(args, io);
  const units = unitsFor(asked, site);
  const planned = planAsked(args, site, asOf, prices, io);
  const issues = [...found, ...planned.issues];
  reportIssues(issues, io, units);
  reportPriceIssues(given?.issues ?? [], args.text('prices') ?? '', io);
  const offers = offersOfRoutes(planned, units);
  if (offers.length === 0) throw new CannotDo('there is nothing to quote: there is no such route');
  const { name, invented } = site;
  const result = quoteOf(offers, {
    asOf,
    site: { name, invented },
    cautions: planned.cautions,
    prices,
    terms: termsFrom(args),
  });
  return { site, result, pricesGiven: given !== null, units, issues, priceIssues: given?.issues ?? [] };
}
