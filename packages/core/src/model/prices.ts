import type { Quantity, QuantityUnit } from './quantity.js';

/** Units that a price may be for; a firm lists in those that it buys and sells in. */
export type PriceUnit = QuantityUnit | 'ft' | 'ft2' | 'yd2' | 'ft3' | 'yd3' | 'ton';

/** The price of one thing, by the code of the quantity that it belongs to. */
export interface PriceRow {
  readonly code: string;
  readonly text: string;
  readonly unit: PriceUnit;
  /** Decimal digits, `12.50`: never a binary number. */
  readonly price: string;
  /** ISO date that the price is of, or null. */
  readonly dated: string | null;
  readonly note: string;
}

/** A list of prices in one currency. */
export interface PriceList {
  readonly currency: string;
  /** True where the list says that its prices are made up. */
  readonly invented: boolean;
  /** Oldest and newest date in the list; null where none is given. */
  readonly dated: { readonly from: string; readonly to: string } | null;
  readonly rows: readonly PriceRow[];
}

/** What is wrong with a price list, by its line in the file (1 is the heading). */
export type PriceIssue = { readonly line: number } & (
  | { readonly code: 'nothing-in-it' }
  | { readonly code: 'no-such-column'; readonly column: string }
  | { readonly code: 'no-code' }
  /** Nothing that is ever priced has this code: a slip of the pen, or of no use. */
  | { readonly code: 'unknown-item'; readonly item: string }
  | { readonly code: 'bad-price'; readonly item: string; readonly got: string }
  | { readonly code: 'bad-unit'; readonly item: string; readonly got: string }
  | { readonly code: 'bad-date'; readonly item: string; readonly got: string }
  | { readonly code: 'listed-twice'; readonly item: string; readonly firstLine: number }
  | { readonly code: 'other-currency'; readonly item: string; readonly got: string }
);

/** Margin and tax on top of the lines. */
export interface PriceTerms {
  /** Share added on the sum of the lines: 0.15 adds 15 %. */
  readonly margin?: number;
  /** Share of tax. */
  readonly tax?: number;
  /** What tax is due on: everything with its margin, or the lines of materials alone. */
  readonly taxOn?: 'all' | 'materials';
}

/** A quantity with its price. Money is decimal text. */
export interface PricedLine {
  readonly code: string;
  readonly text: string;
  readonly basis: string;
  /** In the unit of the price, rounded to two places as it is charged. */
  readonly quantity: number;
  readonly unit: PriceUnit;
  /** null where the list has no price for it. */
  readonly price: string | null;
  readonly total: string | null;
  readonly isMaterial: boolean;
  readonly from: Quantity;
}

/**
 * Quantities with their prices and sums. Money is decimal text to the cent: each line, margin and tax are rounded
 * half up.
 */
export interface PricedLines {
  readonly lines: readonly PricedLine[];
  readonly currency: string;
  readonly subtotal: string;
  readonly margin: string;
  readonly tax: string;
  readonly total: string;
  /** Codes without a price, or with one in a unit that does not fit: the total is then too low by them. */
  readonly missing: readonly { readonly code: string; readonly why: 'not-listed' | 'unit-does-not-fit' }[];
}
