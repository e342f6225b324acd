import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wordPriceIssue } from '../../../packages/core/src/explain/price-issue-words.js';
import type { PriceRow, PriceUnit } from '../../../packages/core/src/model/prices.js';
import type { Quantity, QuantityUnit } from '../../../packages/core/src/model/quantity.js';
import { demoPrices } from '../../../packages/core/src/prices/demo-prices.js';
import { priceListOf } from '../../../packages/core/src/prices/price-list-of.js';
import { priceQuantities } from '../../../packages/core/src/prices/price-quantities.js';
import { readPriceList } from '../../../packages/core/src/prices/read-price-list.js';
import { writePriceList } from '../../../packages/core/src/prices/write-price-list.js';
import { quantitiesOf } from '../../../packages/core/src/quantities/quantities-of.js';
import { here } from '../../cli/call.js';
import { sampleDig } from '../quantities/sample-dig.js';

const row = (code: string, unit: PriceUnit, price: string): PriceRow => ({
  code,
  text: '',
  unit,
  price,
  dated: null,
  note: '',
});
const quantity = (
  code: string,
  amount: number,
  unit: QuantityUnit = 'piece',
  isMaterial = false,
): Quantity => ({
  code,
  text: code,
  quantity: amount,
  unit,
  basis: '',
  isMaterial,
});
const list = (...rows: PriceRow[]) => priceListOf('USD', rows);

describe('prices on quantities', () => {
  it('round each line half up to the cent', () => {
    const { lines } = priceQuantities(
      [quantity('a', 1), quantity('b', 3)],
      list(row('a', 'piece', '2.675'), row('b', 'piece', '0.335')),
    );
    // in binary 2.675 is a hair below and would give 2.67
    expect(lines.map(({ total }) => total)).toEqual(['2.68', '1.01']);
  });

  it('charge the quantity as it is printed, to two places in the unit of the price', () => {
    const { lines } = priceQuantities([quantity('trench', 10, 'm3')], list(row('trench', 'yd3', '4.00')));
    // 10 m3 are 13.0795 cubic yards
    expect(lines[0]).toMatchObject({ quantity: 13.08, unit: 'yd3', total: '52.32' });
  });

  it('sell stone by the ton at 1.4 to the cubic yard', () => {
    const { lines } = priceQuantities(
      [quantity('stone', 0.764554857984, 'm3')],
      list(row('stone', 'ton', '40')),
    );
    expect(lines[0]).toMatchObject({ quantity: 1.4, total: '56.00' });
  });

  it('add up to the total by hand, margin on all, tax on all with its margin', () => {
    const quantities = [quantity('pipe', 12, 'm', true), quantity('hours', 7.5, 'hour')];
    const priced = priceQuantities(quantities, list(row('pipe', 'm', '7.71'), row('hours', 'hour', '112')), {
      margin: 0.15,
      tax: 0.0825,
    });
    // 92.52 + 840.00 = 932.52; 15 % 139.878; 8.25 % of 1,072.40 is 88.473
    expect(priced).toMatchObject({ subtotal: '932.52', margin: '139.88', tax: '88.47', total: '1160.87' });
  });

  it('tax materials alone where that is asked for', () => {
    const quantities = [quantity('pipe', 12, 'm', true), quantity('hours', 7.5, 'hour')];
    const priced = priceQuantities(quantities, list(row('pipe', 'm', '7.71'), row('hours', 'hour', '112')), {
      tax: 0.0825,
      taxOn: 'materials',
    });
    expect(priced).toMatchObject({ tax: '7.63', total: '940.15' });
  });

  it('say what has no price and never take it for nothing', () => {
    const priced = priceQuantities(
      [quantity('a', 1), quantity('b', 2)],
      list(row('a', 'piece', '0'), row('b', 'ft', '3')),
    );
    expect(priced.lines.map(({ total }) => total)).toEqual(['0.00', null]);
    expect(priced.missing).toEqual([{ code: 'b', why: 'unit-does-not-fit' }]);
    expect(priceQuantities([quantity('c', 1)], list()).missing).toEqual([{ code: 'c', why: 'not-listed' }]);
  });

  it('have totals that are the sums of their lines, whatever the amounts', () => {
    const amounts = fc.array(
      fc.tuple(fc.double({ min: 0.001, max: 5000, noNaN: true }), fc.integer({ min: 0, max: 9_999_999 })),
      { minLength: 1, maxLength: 30 },
    );
    fc.assert(
      fc.property(amounts, (pairs) => {
        const rows = pairs.map(([, cents], i) => row(`c${i}`, 'piece', (cents / 100).toFixed(2)));
        const priced = priceQuantities(
          pairs.map(([amount], i) => quantity(`c${i}`, amount)),
          list(...rows),
          { margin: 0.2, tax: 0.07 },
        );
        // in whole cents and hundredths, as by hand
        const hundredths = (amount: string | number): bigint =>
          BigInt(Number(amount).toFixed(2).replace('.', ''));
        const sum = priced.lines.reduce((all, { total }) => all + hundredths(total as string), 0n);
        expect(sum).toBe(hundredths(priced.subtotal));
        expect(sum + hundredths(priced.margin) + hundredths(priced.tax)).toBe(hundredths(priced.total));
        for (const { quantity: charged, price, total } of priced.lines) {
          const exact = hundredths(charged) * hundredths(price as string);
          expect((exact + 50n) / 100n).toBe(hundredths(total as string));
        }
      }),
    );
  });

  it.each([{ margin: -0.1 }, { tax: 11 }, { margin: Number.NaN }])('refuse %o', (terms) => {
    expect(() => priceQuantities([], list(), terms)).toThrow(RangeError);
  });
});

describe('a price list in a file', () => {
  it('comes back as it was written', () => {
    const { list: back, issues } = readPriceList(writePriceList(demoPrices()));
    expect(issues).toEqual([]);
    expect(back).toEqual(demoPrices());
  });

  it('cannot start a formula in a spreadsheet, and is read without the guard against it', () => {
    const odd = priceListOf('USD', [{ ...row('=cmd', 'piece', '1'), text: '+1,"2"\n3', note: '@x' }]);
    const text = writePriceList(odd);
    expect(text).not.toMatch(/(^|[,\n"])[=+@]/);
    expect(readPriceList(text).list.rows[0]).toMatchObject({ code: '=cmd', note: '@x' });
  });

  it('is read from what spreadsheets of other countries write', () => {
    const text = '\uFEFFCode;Price;Unit\nbasin;158,50;each\n"trench-shallow";"$1,250.00";cu yd\r\n\n';
    const { list: read, issues } = readPriceList(text);
    expect(issues).toEqual([]);
    expect(read.rows.map(({ code, price, unit }) => [code, price, unit])).toEqual([
      ['basin', '158.50', 'piece'],
      ['trench-shallow', '1250.00', 'yd3'],
    ]);
  });

  it('says of a code that nothing is priced by that it may be a slip', () => {
    const { list, issues } = readPriceList('code,unit,price\ncrew-hour,hour,100\ncrew-hours,hour,100\n');
    expect(issues).toEqual([{ line: 2, code: 'unknown-item', item: 'crew-hour' }]);
    expect(list.rows).toHaveLength(2);
  });

  it('says what is wrong by its line and leaves that out', () => {
    const text = [
      'code,unit,price,currency,dated',
      'a,ft,about 3,USD,',
      'b,furlong,3,USD,',
      ',ft,3,USD,',
      'c,ft,3,USD,soon',
      'c,ft,4,USD,',
      'd,ft,4,CAD,',
      'e,ft,-4,USD,',
    ].join('\n');
    const { list: read, issues } = readPriceList(text);
    expect(read.rows.map(({ code, dated }) => [code, dated])).toEqual([['c', null]]);
    const faults = issues.filter(({ code }) => code !== 'unknown-item');
    expect(faults.map(({ line, code }) => `${line} ${code}`)).toEqual([
      '2 bad-price',
      '3 bad-unit',
      '4 no-code',
      '5 bad-date',
      '6 listed-twice',
      '7 other-currency',
      '8 bad-price',
    ]);
    for (const issue of faults) expect(wordPriceIssue(issue)).toMatch(/\w+.*(left out|without one)$/);
  });

  it.each([
    ['', 'nothing-in-it'],
    ['code,unit,price\n', 'nothing-in-it'],
    ['name,cost\na,1\n', 'no-such-column'],
  ])('%j holds nothing to use', (text, code) => {
    const { list: read, issues } = readPriceList(text);
    expect(read.rows).toEqual([]);
    expect(issues[0]?.code).toBe(code);
  });

  it('gives only prices that can be reckoned with, whatever it is given', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom('ft', 'each', '12.5', '1,000', '-3', '1e9', 'NaN', '', '"'),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { maxLength: 8 }), (rows) => {
        const text = `code,unit,price\n${rows.map((cells) => cells.join(',')).join('\n')}`;
        for (const { price, code } of readPriceList(text).list.rows) {
          expect(code).not.toBe('');
          expect(price).toMatch(/^\d+(\.\d+)?$/);
        }
      }),
    );
  });
});

describe('the demo list', () => {
  it('is the one in the data folder', () => {
    expect(readFileSync(here('data/prices/demo-prices.csv'), 'utf8')).toBe(writePriceList(demoPrices()));
  });

  it('says that it is invented, in every row, with its date', () => {
    const { invented, dated, rows } = demoPrices();
    expect(invented).toBe(true);
    expect(dated).toEqual({ from: '2026-11-01', to: '2026-11-01' });
    for (const { note } of rows) expect(note).toMatch(/^Invented/);
  });

  it('has a price for all that a job of any pipe sold today can take', () => {
    const pipes = [
      'hdpe-corrugated',
      'hdpe-corrugated-heavy',
      'hdpe-dual-wall',
      'hdpe-welded',
      'pvc-sdr35',
      'pvc-sch40',
    ];
    const more = ['pvc-thin-wall', 'abs', 'clay', 'concrete', 'cast-iron'];
    const fittings = [
      'wye',
      'tee',
      'bend',
      'coupling',
      'reducer',
      'basin',
      'cleanout',
      'downspout',
      'outlet',
      'cap',
    ];
    for (const pipe of [...pipes, ...more] as never[]) {
      for (const inches of [3, 4, 6, 8]) {
        const digs = (['lawn', 'bed', 'gravel', 'paving', 'bare'] as const).flatMap((surface, i) => [
          sampleDig({
            pipe,
            sizeM: inches * 0.0254,
            surface,
            handDig: i % 2 === 1,
            depthStartM: 0.3,
            depthEndM: 2,
            oldPipeM: 1,
            barrierM: i,
            bedding: i === 0 ? 'sand' : 'gravel',
            fittings: fittings.map((type) => ({ type: type as never, count: 1 })),
          }),
          sampleDig({ pipe, sizeM: inches * 0.0254, bored: true, bedding: 'native' }),
        ]);
        const bills = (['sloped', 'shored'] as const).map((deepWalls) => quantitiesOf(digs, { deepWalls }));
        for (const bill of bills) expect(priceQuantities(bill, demoPrices()).missing).toEqual([]);
      }
    }
    const french = sampleDig({ pipe: 'hdpe-corrugated', perforated: true, wrapped: true });
    expect(priceQuantities(quantitiesOf([french]), demoPrices()).missing).toEqual([]);
  });
});
