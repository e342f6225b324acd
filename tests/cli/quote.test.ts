import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CORNER_LOT, call, callOn, here } from './call.js';
import { smallSite } from './small-site.js';

const CAMERA = here('data/camera/corner-lot-2026.geojson');
const TAIL = ['quote', CORNER_LOT, CAMERA, '--line', 'tail'];

interface Quote {
  readonly options: readonly {
    readonly id: string;
    readonly total: string;
    readonly items: readonly { readonly code: string; readonly price: string; readonly total: string }[];
  }[];
}

const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('quote --json', () => {
  it('has the fields of the contract, money as decimal text', async () => {
    const quote = JSON.parse((await call([...TAIL, '--json'])).out) as Quote;
    expect(quote).toMatchObject({ currency: 'USD', pricesDated: '2026-11-01', pricesInvented: true });
    expect(quote.options[0]).toMatchObject({
      name: expect.any(String),
      total: expect.stringMatching(/^\d+\.\d\d$/),
    });
    for (const { items } of quote.options) {
      for (const item of items) {
        expect(item).toMatchObject({
          code: expect.any(String),
          text: expect.any(String),
          quantity: expect.any(Number),
          unit: expect.any(String),
          price: expect.stringMatching(/^\d+\.\d\d$/),
          total: expect.stringMatching(/^\d+\.\d\d$/),
        });
      }
    }
  });

  it('quotes the repairs asked for, or new routes', async () => {
    const repairs = JSON.parse((await call([...TAIL, '--choices', 'replace-like', '--json'])).out) as Quote;
    expect(repairs.options.map(({ id }) => id)).toEqual(['replace-like']);
    const routes = JSON.parse(
      (await call(['quote', CORNER_LOT, '--from', 'B1', '--to', 'O2', '--json'])).out,
    ) as Quote;
    expect(routes.options.length).toBeGreaterThan(1);
    expect(routes.options[0]?.items.map(({ code }) => code)).toContain('pipe-pvc-sdr35-4in');
  });
});

describe('quote', () => {
  it('sets options side by side and adds up to the cent with margin and tax', async () => {
    const { out, code } = await call([...TAIL, '--margin', '15', '--tax', '8.25', '--tax-on', 'materials']);
    expect(code).toBe(0);
    expect(out).toMatch(/option 1 +option 2/);
    expect(out).toContain('tax 8.25 % on materials');
    const money = (label: string): number[] =>
      [...(new RegExp(`^${label}(.*)$`, 'm').exec(out)?.[1] ?? '').matchAll(/\$([\d,.]+)/g)].map((match) =>
        Math.round(100 * Number((match[1] ?? '').replaceAll(',', ''))),
      );
    const [lines, margin, tax, total] = [
      money('lines'),
      money('margin 15 %'),
      money('tax 8.25 % on materials'),
      money('TOTAL'),
    ];
    expect(lines).toHaveLength(2);
    lines.forEach((sum, i) => {
      expect(sum + (margin[i] as number) + (tax[i] as number)).toBe(total[i]);
    });
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(flat(out)).toContain('have buried utilities located');
  });

  it('writes a list to fill in, which is the one in the data folder', async () => {
    const { out, code } = await call(['quote', '--list-to-fill-in']);
    expect(code).toBe(0);
    expect(out).toBe(readFileSync(here('data/prices/demo-prices.csv'), 'utf8'));
  });

  it('takes no invented prices for a site that is not invented, unless asked to', async () => {
    const real = smallSite({ size_mm: 100 });
    const { code, err } = await callOn(real, 'quote', '--line', 'main');
    expect(code).toBe(2);
    expect(err).toContain('a quote takes your own prices');
    const tried = await callOn(real, 'quote', '--line', 'main', '--prices', 'demo');
    expect(tried.code).toBe(0);
    expect(tried.out).toContain('INVENTED');
  });

  it('says what has no price and ends with 1', async () => {
    const own = join(mkdtempSync(join(tmpdir(), 'prices-')), 'ours.csv');
    writeFileSync(own, 'code,unit,price\ncrew-hours,hour,120\n');
    const { out, code } = await call([...TAIL, '--choices', 'replace-like', '--prices', own]);
    expect(code).toBe(1);
    expect(flat(out)).toContain('NOT IN THE TOTAL, no price in the list: set-up');
    expect(out).toContain('no price');
  });

  it.each([
    [['--choices', 'polish-it'], "there is no choice 'polish-it'"],
    [['--choices', 'clear-again'], 'clear-again is not possible here'],
    [['--choices', 'leave'], 'leave takes no quote'],
    [['--margin=-3'], '--margin takes a number'],
  ])('cannot do %j and says why', async (argv, words) => {
    const { code, err } = await call([...TAIL, ...argv]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
