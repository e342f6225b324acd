import type { PriceUnit, Switch } from '@rootreach/core';

const dollars = (amount: number, currency: string): string =>
  new Intl.NumberFormat('en-US', { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount);

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)}\u00a0%`;

const UNITS: Readonly<Partial<Record<PriceUnit, string>>> = {
  m2: 'm²',
  m3: 'm³',
  ft2: 'ft²',
  yd2: 'yd²',
  ft3: 'ft³',
  yd3: 'yd³',
};

/** Texts of choices, prices and pages to hand out. */
export const works = {
  title: 'What to do about it',
  none: 'There is no stretch to decide on yet. Draw a line and a tree first.',
  tooLarge: 'This site is too large to decide on here. Use the command line.',
  about: 'Stretch',
  decide: 'Weigh the choices',
  again: 'Weigh them again',
  working: 'Working it out…',
  failed: (why: string) => `That did not work out: ${why}.`,
  stale: 'The sketch or the stretch has changed since: weigh them again.',
  money: dollars,
  now: (amount: number, currency: string) =>
    amount === 0 ? 'Nothing to pay now' : `${dollars(amount, currency)} now`,
  over: (amount: number, years: number, currency: string) =>
    `${dollars(amount, currency)} over ${years} years, in today’s money`,
  unpriced: 'A price is missing from your list',
  chance: (
    years: number,
    { low, likely, high }: { readonly low: number; readonly likely: number; readonly high: number },
  ) => `Trouble within ${years} years: ${percent(likely)} (${percent(low)} to ${percent(high)})`,
  recurring: {
    'camera-look': (years: string) => `a camera look every ${years}`,
    'clear-by-jet': (years: string) => `jetting every ${years}`,
    'clear-by-cutter': (years: string) => `cutting every ${years}`,
  },
  years: (n: number) => (Math.round(n * 10) / 10 === 1 ? 'year' : `${Math.round(n * 10) / 10} years`),
  choices: 'The choices',
  exact: (amount: string, currency: string) =>
    new Intl.NumberFormat('en-US', { style: 'currency', currency }).format(Number(amount)),
  weighed: (line: string, span: string) => `Weighed for ${line}, ${span} from the lower end.`,
  basin: 'With a basin where the lines meet: from it every line can be reached.',
  pick: 'Do this',
  picked: 'Chosen',
  notPossible: (n: number) => `Not possible here: ${n}`,
  switches: 'What would change the answer',
  switchRow: (what: Switch['what'], at: number, becomes: string): string => {
    switch (what) {
      case 'horizon-years':
        return `Looking ${Math.round(at)} years ahead, “${becomes}” comes first.`;
      case 'discount-rate':
        return `At ${percent(at)} interest a year, “${becomes}” comes first.`;
      case 'price-now':
        return `At ${at.toFixed(1)} times the price of the advised work, “${becomes}” comes first.`;
      case 'trouble-cost':
        return `With a stoppage costing ${at.toFixed(1)} times as much, “${becomes}” comes first.`;
      case 'root-rate':
        return `With roots ${at.toFixed(1)} times as eager, “${becomes}” comes first.`;
    }
  },
  steady: 'Nothing within reason that we tried changes the answer.',
  assumptions: 'What this rests on',
  horizon: 'Years to look ahead',
  rate: 'Interest, % a year',
  most: 'Most to spend now',
  margin: 'Margin, %',
  tax: 'Tax, %',
  prices: 'Your prices',
  pricesDemo: 'These are invented prices, to show how it works.',
  pricesChanged: 'These are the invented prices, with your changes.',
  pricesOwn: (n: number, dated: string | null) =>
    `Your list: ${n} prices${dated === null ? '' : `, ${dated}`}.`,
  loadPrices: 'Open your list (CSV)',
  savePrices: 'Save this list to edit',
  dropPrices: 'Back to the invented list',
  badPrices: 'There is no price to use in that file.',
  badRows: (n: number) => `${n} ${n === 1 ? 'row' : 'rows'} of the list could not be used.`,
  quote: 'The offer, side by side',
  quantity: 'Quantity',
  price: 'Price',
  total: 'Total',
  subtotal: 'Sum',
  /** Items come in English from the list. */
  itemName: (_code: string, text: string): string => text,
  unit: (unit: PriceUnit): string => UNITS[unit] ?? unit,
  priceOf: (item: string) => `Price of ${item}`,
  saveQuote: 'Save the offer (CSV)',
  missing: (n: number) => `${n} ${n === 1 ? 'item has' : 'items have'} no price: the total is too low.`,
  handOut: 'On paper',
  by: 'Whose estimate it is',
  owner: 'Page for the owner',
  crew: 'Sheet for the crew',
  handOutHint: 'One file each. It opens anywhere, without a network, and prints on two sheets.',
  season: 'When to come back',
  seasonHint: 'For all sites kept on this device.',
  until: 'Looks due until',
  days: 'First working day',
  dayCount: 'Working days',
  makeSeason: 'Make the list',
  noSites: 'No site is kept on this device yet.',
  look: (site: string, from: string, direction: string, to: string) =>
    `${site}: from ${from}, ${direction}, to ${to}`,
  expect: (from: string, to: string) => `expect it at ${from} to ${to}`,
  due: (when: string) => `due ${when}`,
  direction: { upstream: 'upstream', downstream: 'downstream' },
  noLooks: 'Nothing is due until then.',
  saveCalendar: 'Save for the calendar (.ics)',
  saveSeason: 'Save as a table (CSV)',
  unplaced: (n: number) => `${n} found no room in those days.`,
};
