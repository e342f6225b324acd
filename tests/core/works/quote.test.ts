import { describe, expect, it } from 'vitest';
import type { RouteResult } from '../../../packages/core/src/model/route.js';
import { demoPrices } from '../../../packages/core/src/prices/demo-prices.js';
import { decide } from '../../../packages/core/src/works/decide.js';
import { quoteCsv } from '../../../packages/core/src/works/quote-csv.js';
import { offersOfChoices, offersOfRoutes, quoteOf } from '../../../packages/core/src/works/quote-of.js';
import { AS_OF, seen } from './corner-lot.js';

const decided = decide(seen(), { segment: 'collector/11' }, { asOf: AS_OF, units: 'us' });
const { site, cautions } = decided;
const quote = (terms = {}, ids?: Parameters<typeof offersOfChoices>[1]) =>
  quoteOf(offersOfChoices(decided, ids), { asOf: AS_OF, site, cautions, terms });

describe('a quote', () => {
  it('offers the recommended choice, the runner-up and one more, side by side', () => {
    const { options } = quote();
    expect(options.map(({ id }) => id).slice(0, 2)).toEqual([decided.recommended, decided.runnerUp]);
    expect(options).toHaveLength(3);
    expect(options.map(({ id }) => id)).not.toContain('leave');
    expect(options.map(({ id }) => id)).not.toContain('fell-tree');
  });

  it('offers what is asked for, in that order', () => {
    expect(quote({}, ['replace-like', 'spot-repair']).options.map(({ id }) => id)).toEqual([
      'replace-like',
      'spot-repair',
    ]);
  });

  it('says of a new line how long it is and how many bends it has', () => {
    const route = (bends: number) => ({
      id: `way ${bends}`,
      name: 'Shortest',
      lengthM: 12,
      bends,
      priced: { lines: [] },
    });
    const offers = offersOfRoutes({ alternatives: [route(1), route(3)] } as unknown as RouteResult);
    expect(offers.map(({ scope }) => scope)).toEqual([
      'new line of 12.00 m with 1 bend',
      'new line of 12.00 m with 3 bends',
    ]);
  });

  it('comes to the same money as the decision', () => {
    for (const { id, total } of quote().options) {
      expect(Number(total)).toBe(decided.choices.find((choice) => choice.id === id)?.now);
    }
  });

  it('is reproducible to the cent from its own lines', () => {
    const cents = (amount: string | null): bigint => BigInt((amount as string).replace('.', ''));
    const terms = { margin: 0.17, tax: 0.0825, taxOn: 'materials' };
    for (const { items, subtotal, margin, tax, total } of quote(terms).options) {
      const sum = (lines: typeof items): bigint => lines.reduce((all, line) => all + cents(line.total), 0n);
      expect(sum(items)).toBe(cents(subtotal));
      // halves up: 17 hundredths, 825 ten-thousandths
      expect((cents(subtotal) * 17n + 50n) / 100n).toBe(cents(margin));
      const materials = sum(items.filter(({ isMaterial }) => isMaterial));
      expect((materials * 825n + 5000n) / 10_000n).toBe(cents(tax));
      expect(cents(subtotal) + cents(margin) + cents(tax)).toBe(cents(total));
    }
  });

  it('says when its prices are of, and that the demo ones are invented', () => {
    expect(quote()).toMatchObject({ currency: 'USD', pricesDated: '2026-11-01', pricesInvented: true });
    const own = { ...demoPrices(), invented: false, dated: null };
    expect(quoteOf([], { asOf: AS_OF, site, cautions, prices: own })).toMatchObject({
      pricesDated: null,
      pricesInvented: false,
    });
  });

  it('has a row for every item and its sums in the spreadsheet', () => {
    const { options } = quote();
    const rows = quoteCsv(quote()).trimEnd().split('\r\n');
    const items = options.reduce((sum, option) => sum + option.items.length, 0);
    expect(rows).toHaveLength(1 + items + 4 * options.length);
    expect(rows[rows.length - 1]).toContain(`,total,,,,${Number(options[2]?.total)},USD,`);
  });
});
