import type { Caution } from '../model/caution.js';
import type { PriceList, PriceTerms } from '../model/prices.js';
import type { Quantity } from '../model/quantity.js';
import type { QuoteOption, QuoteResult } from '../model/quote.js';
import type { RouteResult } from '../model/route.js';
import type { Units } from '../model/site.js';
import type { Choice, ChoiceId, DecideResult } from '../model/works.js';
import { demoPrices } from '../prices/demo-prices.js';
import { priceQuantities } from '../prices/price-quantities.js';
import { alongWords } from '../quantities/wording.js';

/** Something that can be offered: what is done, and what it takes. */
export interface Offer {
  readonly id: string;
  readonly name: string;
  /** One sentence: what is done. */
  readonly scope: string;
  readonly quantities: readonly Quantity[];
}

/** What an offer is for, and what it is priced by: the invented demo list where no prices are given. */
export interface QuoteOptions {
  readonly asOf: string;
  readonly site: { readonly name: string | null; readonly invented: boolean };
  readonly cautions: readonly Caution[];
  readonly prices?: PriceList;
  readonly terms?: PriceTerms;
}

/** Offers side by side (common practice: good, better, best). */
const MOST_OFFERS = 3;

const offerOf = ({ id, name, why, quantities }: Choice): Offer => ({ id, name, scope: why, quantities });

/** Recommended, runner-up, then by present value. */
function inOrder({ choices, recommended, runnerUp }: DecideResult): Choice[] {
  const place = ({ id, presentValue, breaks }: Choice): number => {
    if (id === recommended) return -2;
    if (id === runnerUp) return -1;
    return (presentValue ?? Infinity) + (breaks.length > 0 ? 1e12 : 0);
  };
  return [...choices].sort((a, b) => place(a) - place(b));
}

/**
 * Repairs to offer: those named, else the recommended one, the runner-up and the next by present value. To leave a
 * line as it is takes no quote.
 * @param decided as `decide` gives it.
 * @param ids of the choices wanted.
 */
export function offersOfChoices(decided: DecideResult, ids?: readonly ChoiceId[]): Offer[] {
  const offered = inOrder(decided).filter(({ possible, quantities }) => possible && quantities.length > 0);
  if (ids !== undefined) {
    return ids.flatMap((id) => offered.find((choice) => choice.id === id) ?? []).map(offerOf);
  }
  const within = offered.filter(({ breaks }) => breaks.length === 0);
  return within.slice(0, MOST_OFFERS).map(offerOf);
}

/**
 * Routes to offer, as they were planned.
 * @param result as `planRoute` gives it.
 * @param units that texts are worded in.
 */
export const offersOfRoutes = ({ alternatives }: RouteResult, units: Units = 'metric'): Offer[] =>
  alternatives.slice(0, MOST_OFFERS).map(({ id, name, lengthM, bends, priced }) => ({
    id,
    name,
    scope: `new line of ${alongWords(lengthM, units)} with ${bends} ${bends === 1 ? 'bend' : 'bends'}`,
    quantities: priced.lines.map(({ from }) => from),
  }));

function optionOf({ id, name, scope, quantities }: Offer, list: PriceList, terms: PriceTerms): QuoteOption {
  const { lines, subtotal, margin, tax, total, missing } = priceQuantities(quantities, list, terms);
  return { id, name, scope, items: lines, subtotal, margin, tax, total, missing };
}

function datesOf({ dated }: PriceList): string | null {
  if (dated === null) return null;
  return dated.from === dated.to ? dated.from : `${dated.from} to ${dated.to}`;
}

/**
 * Prices offers side by side, each with its quantity list. Money is decimal text, rounded as in `priceQuantities`.
 * @param offers up to three.
 * @param options the date, the site, and the prices.
 */
export function quoteOf(offers: readonly Offer[], options: QuoteOptions): QuoteResult {
  const list = options.prices ?? demoPrices();
  const { margin = 0, tax = 0, taxOn = 'all' } = options.terms ?? {};
  const terms = { margin, tax, taxOn };
  return {
    schema: 1,
    site: options.site,
    asOf: options.asOf,
    options: offers.map((offer) => optionOf(offer, list, terms)),
    currency: list.currency,
    pricesDated: datesOf(list),
    pricesInvented: list.invented,
    terms,
    cautions: options.cautions,
  };
}
