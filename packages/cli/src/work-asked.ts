import {
  type DecideOptions,
  fromFeet,
  type OwnerLimits,
  type PriceTerms,
  rank,
  type Site,
  type Units,
  type WorkRequest,
  workStretch,
} from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import type { Scoring } from './common-options.js';
import { routeOptions } from './route-asked.js';

/** Options that say which stretch. */
export const stretchOptions: OptionSpecs = {
  line: { value: 'ID', text: 'decide on a whole line' },
  between: { value: 'A,B', text: 'only so far of the line, in feet or metres up from its lower end' },
  segment: {
    value: 'ID',
    text: 'decide on one segment, such as main/4; the worst stretch if nothing is named',
  },
};

const { from, to, via: _shown, ...laying } = routeOptions;

/** Options of laying the line elsewhere, as of `route`. */
export const movingOptions: OptionSpecs = {
  from: { ...from, value: 'ID|LON,LAT', text: 'weigh a new line too: where it begins' },
  to: { ...to, value: 'ID|LON,LAT', text: 'where the new line may come out; again for more' },
  ...laying,
};

/** Options of money. */
export const termsOptions: OptionSpecs = {
  margin: { value: 'PERCENT', text: 'added on the sum of the lines; none if not given' },
  tax: { value: 'PERCENT', text: 'tax; none if not given' },
  'tax-on': { value: 'all|materials', text: 'what tax is due on; all with its margin if not given' },
};

/** Options of the comparison. */
export const comparisonOptions: OptionSpecs = {
  horizon: { value: 'YEARS', text: 'years over which costs are added up; 25 if not given' },
  discount: { value: 'PERCENT', text: 'what later money is worth less a year; 4 if not given' },
  budget: { value: 'MONEY', text: 'most that the owner pays now' },
  'most-chance': { value: 'PERCENT', text: 'highest chance of trouble in 10 years that the owner bears' },
  'may-fell': { value: null, text: 'trees may be felled; not if not given' },
  'no-trench': { value: null, text: 'nothing may be dug open' },
  assume: { value: 'KEY=N,...', text: 'other numbers than the assumed ones, which the result lists' },
};

function spanOf(args: Args, units: Units): readonly [number, number] | null {
  const text = args.text('between');
  if (text === undefined) return null;
  const numbers = text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  const [from, to] = numbers;
  if (numbers.length !== 2 || from === undefined || to === undefined || !(from >= 0 && to > from)) {
    throw new CannotDo(`--between takes two stations such as 17,26, the lower one first, got '${text}'`);
  }
  return units === 'us' ? [fromFeet(from), fromFeet(to)] : [from, to];
}

/** The stretch asked for, else the worst one of the site. */
export function requestFrom(args: Args, site: Site, scoring: Scoring, units: Units): WorkRequest {
  const [drain, segment] = [args.text('line'), args.text('segment')];
  const span = spanOf(args, units);
  if (drain !== undefined && segment !== undefined) throw new CannotDo('choose one of --line and --segment');
  if (span !== null && drain === undefined) throw new CannotDo('--between needs --line');
  if (segment !== undefined) return { segment };
  if (drain !== undefined) return span === null ? { drain } : { drain, fromM: span[0], toM: span[1] };
  const worst = rank(site, { ...scoring, top: 1 }).segments[0]?.id;
  if (worst === undefined) throw new CannotDo('there is no segment to decide on');
  return workStretch(site, worst, scoring);
}

const share = (args: Args, name: string, most: number): number | undefined => {
  const percent = args.number(name, { least: 0, most });
  return percent === undefined ? undefined : percent / 100;
};

export function termsFrom(args: Args): PriceTerms {
  const [margin, tax] = [share(args, 'margin', 500), share(args, 'tax', 100)];
  const taxOn = args.choice('tax-on', ['all', 'materials']);
  return {
    ...(margin === undefined ? {} : { margin }),
    ...(tax === undefined ? {} : { tax }),
    ...(taxOn === undefined ? {} : { taxOn }),
  };
}

export function limitsFrom(args: Args): OwnerLimits {
  const mostNow = args.number('budget', { least: 0 });
  const mostChance10 = share(args, 'most-chance', 100);
  return {
    ...(mostNow === undefined ? {} : { mostNow }),
    ...(mostChance10 === undefined ? {} : { mostChance10 }),
    keepTrees: !args.flag('may-fell'),
    noTrench: args.flag('no-trench'),
  };
}

/** Numbers in place of the assumed ones. */
export function assumeFrom(args: Args): NonNullable<DecideOptions['assume']> {
  const pairs = (args.text('assume') ?? '').split(',').filter((part) => part.trim() !== '');
  const given: Record<string, number> = {};
  for (const pair of pairs) {
    const [key = '', text = ''] = pair.split('=').map((part) => part.trim());
    if (text === '' || !Number.isFinite(Number(text))) {
      throw new CannotDo(`--assume takes KEY=N, such as clearing-years=1.5, got '${pair.trim()}'`);
    }
    given[key] = Number(text);
  }
  const horizon = args.number('horizon', { least: 1, most: 50, whole: true });
  const discount = args.number('discount', { least: 0, most: 30 });
  return {
    ...given,
    ...(horizon === undefined ? {} : { 'horizon-years': horizon }),
    ...(discount === undefined ? {} : { 'discount-rate': discount / 100 }),
  };
}
