import type { Dig, DigFitting } from '../model/dig.js';
import type { PricedLines } from '../model/prices.js';
import type { RouteBend, RoutePipe, RouteStretch } from '../model/route.js';
import { priceQuantities } from '../prices/price-quantities.js';
import { quantitiesOf } from '../quantities/quantities-of.js';
import { digOfStretch } from './dig-of-route.js';
import { alikeParts } from './route-line.js';
import type { RouteScene } from './scene.js';

/** Depth changes little over this, metres: a dig is taken straight from end to end. */
const STEP_M = 3;

interface Laid {
  readonly stretches: readonly RouteStretch[];
  readonly bends: readonly Pick<RouteBend, 'fittings'>[];
  readonly depthAt: (stationM: number) => number;
  readonly pipe: RoutePipe;
  readonly solid: readonly (readonly [fromM: number, toM: number])[];
  readonly lengthM: number;
  /** Wyes in which other lines come in. */
  readonly wyes?: number;
}

function fittingsOf(
  bends: readonly Pick<RouteBend, 'fittings'>[],
  parts: number,
  wyes: number,
): DigFitting[] {
  const count = bends.reduce((sum, { fittings }) => sum + fittings.length, 0);
  return [
    ...(count > 0 ? [{ type: 'bend' as const, count }] : []),
    ...(wyes > 0 ? [{ type: 'wye' as const, count: wyes }] : []),
    ...(parts > 1 ? [{ type: 'coupling' as const, count: parts - 1 }] : []),
  ];
}

/** What a route is dug and laid as. */
export function digsOfRoute(laid: Laid): Dig[] {
  const { stretches, depthAt, pipe, solid, lengthM, bends, wyes = 0 } = laid;
  const parts = alikeParts(lengthM, pipe.perforated === true, solid);
  let fittings = fittingsOf(bends, parts.length, wyes);
  return stretches.flatMap(({ fromM, toM, way, surface }) =>
    parts.flatMap((part) => {
      const from = Math.max(fromM, part.fromM);
      const to = Math.min(toM, part.toM);
      if (to - from < 1e-9) return [];
      // a bore is one, with its two pits; a trench is cut where its depth may bend
      const pieces = way === 'bored' ? 1 : Math.max(1, Math.ceil((to - from) / STEP_M));
      return Array.from({ length: pieces }, (_, i) => {
        const [a, b] = [from + ((to - from) * i) / pieces, from + ((to - from) * (i + 1)) / pieces];
        const dig = digOfStretch(pipe, {
          lengthM: b - a,
          depthStartM: depthAt(a),
          depthEndM: depthAt(b),
          surface,
          way,
          perforated: part.perforated,
          fittings,
        });
        fittings = [];
        return dig;
      });
    }),
  );
}

/** What digs take, and what that costs by the list of prices. */
export function priceOfDigs(
  { site, prices }: RouteScene,
  digs: readonly Dig[],
  { pieceM }: RoutePipe,
): PricedLines {
  const quantities = quantitiesOf(digs, {
    soil: site.soil,
    units: site.units ?? 'metric',
    ...(pieceM === undefined ? {} : { pieceM }),
  });
  return priceQuantities(quantities, prices);
}
