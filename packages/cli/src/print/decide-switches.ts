import { choiceName, type DecideResult, type Switch } from '@rootreach/core';
import { count } from './count.js';

const times = (factor: number): string => `${Number(factor.toPrecision(2))} times`;

/** The value at which it turns, in words. */
function turn({ what, at }: Switch & { readonly at: number }): string {
  switch (what) {
    case 'horizon-years':
      return `over ${count(Math.round(at), 'year')}`;
    case 'discount-rate':
      return `at ${Number((100 * at).toFixed(1))} % less a year`;
    case 'price-now':
      return `with its price ${times(at)} as high`;
    case 'trouble-cost':
      return `with a stopped line costing ${times(at)} as much`;
    case 'root-rate':
      return `with roots coming in ${times(at)} as often`;
  }
}

const NEVER: Readonly<Record<Switch['what'], string>> = {
  'horizon-years': 'the years counted',
  'discount-rate': 'what later money is worth',
  'price-now': 'its price',
  'trouble-cost': 'the cost of a stopped line',
  'root-rate': 'how often roots come in',
};

/** What would put another choice first, and what would not. */
export function switchLines({ switches }: DecideResult): string[] {
  const turning = switches.flatMap((one) =>
    one.at === null || one.becomes === null
      ? []
      : [`${turn({ ...one, at: one.at })}: ${choiceName(one.becomes)}`],
  );
  const never = switches.filter(({ at }) => at === null).map(({ what }) => NEVER[what]);
  return never.length === 0 ? turning : [...turning, `not by ${never.join(', ')}`];
}
