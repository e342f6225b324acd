import type { PriceList } from '../model/prices.js';
import type { RouteCosts, RoutePipe } from '../model/route.js';
import type { Soil } from '../model/site.js';
import { asNumber, priceQuantities } from '../prices/price-quantities.js';
import { quantitiesOf } from '../quantities/quantities-of.js';
import { routeNumbers } from '../tables/route-numbers.js';
import { type DugStretch, digOfStretch } from './dig-of-route.js';

/** Long enough that what comes once does not show in a metre. */
const SAMPLE_M = 100;

/**
 * What a metre and a piece are worth by a firm's price list: the difference that one more makes to the priced
 * quantities. What the list has no price for counts as nothing here, as in the quote, which says so.
 * @param leastDepthM from the ground to the invert where the pipe has just its cover.
 */
export function costsFromPrices(
  list: PriceList,
  pipe: RoutePipe,
  leastDepthM: number,
  soil: Soil | null,
  discountRate: number = routeNumbers.discountRate.value,
): RouteCosts {
  const plain: DugStretch = {
    lengthM: SAMPLE_M,
    depthStartM: leastDepthM,
    depthEndM: leastDepthM,
    surface: 'lawn',
    way: 'trench',
    perforated: pipe.perforated === true,
    fittings: [],
  };
  const options = { soil, ...(pipe.pieceM === undefined ? {} : { pieceM: pipe.pieceM }) };
  const price = (change: Partial<DugStretch>): number => {
    const dig = digOfStretch(pipe, { ...plain, ...change });
    return asNumber(priceQuantities(quantitiesOf([dig], options), list).total);
  };
  const perM = (change: Partial<DugStretch>): number =>
    (price({ ...change, lengthM: 2 * SAMPLE_M }) - price(change)) / SAMPLE_M;
  const laidPerM = perM({});
  const handDigPerM = perM({ way: 'hand-dug' }) - laidPerM;
  const boredPerM = perM({ way: 'bored' });
  const deeper = leastDepthM + 0.5;
  const short = { lengthM: routeNumbers.repairM.value };
  return {
    laidPerM,
    deeperPerM: Math.max(0, 2 * (perM({ depthStartM: deeper, depthEndM: deeper }) - laidPerM)),
    surfacePerM: {
      lawn: 0,
      bed: Math.max(0, perM({ surface: 'bed' }) - laidPerM),
      paving: Math.max(0, perM({ surface: 'paving' }) - laidPerM),
    },
    handDigPerM: Math.max(0, handDigPerM),
    borePerM: Math.max(0, boredPerM - laidPerM),
    boreEach: Math.max(0, price({ way: 'bored' }) - price({}) - SAMPLE_M * (boredPerM - laidPerM)),
    bendEach: Math.max(0, price({ fittings: [{ type: 'bend', count: 1 }] }) - price({})),
    utilityCrossingEach: Math.max(0, 2 * routeNumbers.utilityHandDigM.value * handDigPerM),
    repairEach: price({ ...short, way: 'hand-dug' }),
    treeHarmPerM: routeNumbers.treeHarmShare.value * laidPerM,
    discountRate,
  };
}
