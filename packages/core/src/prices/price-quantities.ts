import type { PricedLine, PricedLines, PriceList, PriceRow, PriceTerms } from '../model/prices.js';
import type { Quantity } from '../model/quantity.js';
import { inUnit } from './in-unit.js';
import { chargedQuantity, money, moneyText, shareOf, sumOf, toCent } from './money.js';

function lineOf(quantity: Quantity, row: PriceRow | undefined): PricedLine {
  const { code, text, basis, isMaterial } = quantity;
  const common = { code, text, basis, isMaterial, from: quantity };
  const inRowsUnit = row === undefined ? null : inUnit(quantity.quantity, quantity.unit, row.unit);
  if (row === undefined || inRowsUnit === null) {
    const charged = Number(chargedQuantity(quantity.quantity));
    return { ...common, quantity: charged, unit: quantity.unit, price: null, total: null };
  }
  const charged = chargedQuantity(inRowsUnit);
  const total = moneyText(toCent(charged.times(row.price)));
  return { ...common, quantity: Number(charged), unit: row.unit, price: row.price, total };
}

function share(name: string, value: number): number {
  if (!(value >= 0 && value <= 10))
    throw new RangeError(`${name} must be a share from 0 to 10, got ${value}`);
  return value;
}

/**
 * Puts prices on quantities. Each quantity is taken into the unit of its price and rounded to two places; each line,
 * the margin and the tax are rounded half up to the cent; every total is the sum of what is printed. All in decimal.
 * A thing without a price is said in `missing` and counts as nothing in the sums, which are then too low.
 * @param quantities in SI units, as `quantitiesOf` gives them.
 * @param list the prices, in its own units and currency.
 * @param terms margin and tax as shares, 0.15 for 15 %; none where not given.
 * @throws RangeError for a margin or tax that is no share.
 */
export function priceQuantities(
  quantities: readonly Quantity[],
  list: PriceList,
  terms: PriceTerms = {},
): PricedLines {
  const rows = new Map(list.rows.map((row) => [row.code, row]));
  const lines = quantities.map((quantity) => lineOf(quantity, rows.get(quantity.code)));
  const totals = (chosen: readonly PricedLine[]): string[] => chosen.flatMap(({ total }) => total ?? []);
  const subtotal = sumOf(totals(lines));
  const margin = shareOf(subtotal, share('margin', terms.margin ?? 0));
  const taxed =
    terms.taxOn === 'materials'
      ? sumOf(totals(lines.filter((line) => line.isMaterial)))
      : subtotal.plus(margin);
  const tax = shareOf(taxed, share('tax', terms.tax ?? 0));
  const codes = [...new Set(lines.filter(({ total }) => total === null).map(({ code }) => code))];
  return {
    lines,
    currency: list.currency,
    subtotal: moneyText(subtotal),
    margin: moneyText(margin),
    tax: moneyText(tax),
    total: moneyText(subtotal.plus(margin).plus(tax)),
    missing: codes.map((code) => ({ code, why: rows.has(code) ? 'unit-does-not-fit' : 'not-listed' })),
  };
}

/** A sum of money as a number, for comparing; never for adding up a quote. */
export const asNumber = (text: string): number => Number(money(text));
