import type { Caution } from './caution.js';
import type { PricedLine, PricedLines, PriceTerms } from './prices.js';

/** One offer with its quantity list. Money is decimal text. */
export interface QuoteOption {
  readonly id: string;
  readonly name: string;
  /** One sentence: what is done. */
  readonly scope: string;
  readonly items: readonly PricedLine[];
  readonly subtotal: string;
  readonly margin: string;
  readonly tax: string;
  readonly total: string;
  readonly missing: PricedLines['missing'];
}

/** Up to three offers side by side. */
export interface QuoteResult {
  readonly schema: 1;
  readonly site: { readonly name: string | null; readonly invented: boolean };
  readonly asOf: string;
  readonly options: readonly QuoteOption[];
  readonly currency: string;
  /** Date or dates of the price list, null where it has none. */
  readonly pricesDated: string | null;
  readonly pricesInvented: boolean;
  readonly terms: Required<PriceTerms>;
  readonly cautions: readonly Caution[];
}
