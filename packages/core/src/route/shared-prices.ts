import type { NetworkPipe } from '../model/network.js';
import { asNumber, priceQuantities } from '../prices/price-quantities.js';
import { quantitiesOf } from '../quantities/quantities-of.js';
import { costsFromPrices } from './costs-from-prices.js';
import { digOfStretch } from './dig-of-route.js';
import type { RouteScene } from './scene.js';

/** Nominal size of the pipe for an area drained, metres. */
export type SizeFor = (servesM2: number) => number;

/** Prices of a shared route by the list of its scene. */
export interface SharedPrices {
  readonly pipeFor: (load: number) => NetworkPipe;
  readonly wyeEach: number;
}

function wyePrice({ request, prices, limits, site }: RouteScene): number {
  const depth = limits.minCoverM + limits.pipeHeightM;
  const price = (count: number): number => {
    const dig = digOfStretch(request.pipe, {
      lengthM: 1,
      depthStartM: depth,
      depthEndM: depth,
      surface: 'lawn',
      way: 'trench',
      perforated: request.pipe.perforated === true,
      fittings: count > 0 ? [{ type: 'wye', count }] : [],
    });
    return asNumber(priceQuantities(quantitiesOf([dig], { soil: site.soil }), prices).total);
  };
  return Math.max(0, price(1) - price(0));
}

function pricesBySize(scene: RouteScene, sizeFor: SizeFor): (load: number) => NetworkPipe {
  const { request, prices, limits, site, costs } = scene;
  const known = new Map<number, number>();
  return (load) => {
    const sizeM = sizeFor(load);
    let morePerM = known.get(sizeM);
    if (morePerM === undefined) {
      const pipe = { ...request.pipe, sizeM };
      const depth = limits.minCoverM + limits.pipeHeightM;
      morePerM = Math.max(0, costsFromPrices(prices, pipe, depth, site.soil).laidPerM - costs.laidPerM);
      known.set(sizeM, morePerM);
    }
    return { sizeM, morePerM };
  };
}

/** What lines and wyes of a shared route are weighed by in the search. */
export const sharedPrices = (scene: RouteScene, sizeFor: SizeFor): SharedPrices => ({
  pipeFor: pricesBySize(scene, sizeFor),
  wyeEach: wyePrice(scene),
});
