import {
  type NewRoute,
  type PriceList,
  planRoute,
  type RouteAlternative,
  type RouteResult,
  type Site,
} from '@rootreach/core';
import type { Args } from './args.js';
import { asAsked } from './as-asked.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { printable } from './print/printable.js';
import { routeAsked } from './route-asked.js';

/** True where a way to lay the line elsewhere is asked for. */
export const routeIsAsked = (args: Args): boolean =>
  args.texts('from').length > 0 || args.texts('to').length > 0;

/** Ways to lay the line elsewhere; a route without one is said on stderr. */
export function planAsked(args: Args, site: Site, asOf: string, prices: PriceList, io: Io): RouteResult {
  const { request, sources } = routeAsked(args, site, asOf, prices);
  if (sources.length > 1) throw new CannotDo('one --from only: plan shared lines with rootreach route');
  const result = asAsked(() => planRoute(site, request));
  if (result.none !== null) io.stderr.write(`No new route: ${printable(result.none.message)}\n`);
  return result;
}

/** The way that costs least over the years, to weigh against repairs. */
export function bestRoute(args: Args, site: Site, asOf: string, prices: PriceList, io: Io): NewRoute | null {
  const { alternatives } = planAsked(args, site, asOf, prices, io);
  const { request } = routeAsked(args, site, asOf, prices);
  const value = ({ cost }: RouteAlternative): number => cost.presentValue;
  const alternative = [...alternatives].sort((a, b) => value(a) - value(b))[0];
  return alternative === undefined ? null : { alternative, pipe: request.pipe };
}
