import type { LaidPipe } from '../model/fall.js';
import type { NetworkLine, NetworkPipe } from '../model/network.js';
import type { SharedCost } from '../model/shared-route.js';
import { asNumber, priceQuantities } from '../prices/price-quantities.js';
import { quantitiesOf } from '../quantities/quantities-of.js';
import type { CostField } from './cost-field.js';
import { costsFromPrices } from './costs-from-prices.js';
import { digOfStretch } from './dig-of-route.js';
import type { SceneFields } from './field-of-scene.js';
import type { RouteScene } from './scene.js';

/** Pipe for an area drained: its nominal size, metres. */
export type SizeFor = (servesM2: number) => number;

/** Prices of a shared route by the list of its scene. */
export interface SharedPrices {
  readonly pipeFor: (load: number) => NetworkPipe;
  readonly wyeEach: number;
  /** Costs of lines, and of so many wyes. */
  readonly costOf: (
    lines: readonly NetworkLine[],
    wyes: number,
    laid: readonly (LaidPipe | null)[],
  ) => SharedCost;
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

function along(field: CostField, { points }: NetworkLine): number {
  let sum = 0;
  for (let i = 0; i + 1 < points.length; i++) {
    const [[ax, ay], [bx, by]] = [points[i], points[i + 1]] as [[number, number], [number, number]];
    sum += field.between(ax, ay, bx, by);
  }
  return sum;
}

/** What a laid pipe costs for lying deeper than it must. */
function deeper({ costs, limits }: RouteScene, pipe: LaidPipe): number {
  const least = limits.minCoverM + limits.pipeHeightM;
  const { stationM, groundM, invertM } = pipe;
  const depth = (i: number): number => (groundM[i] as number) - (invertM[i] as number);
  let sum = 0;
  for (let i = 0; i + 1 < stationM.length; i++) {
    const more = Math.max(0, (depth(i) + depth(i + 1)) / 2 - least);
    sum += more * ((stationM[i + 1] as number) - (stationM[i] as number));
  }
  return sum * costs.deeperPerM;
}

/** Digging, root trouble and harm apart, each over its own field. */
export function sharedPrices(fields: SceneFields, sizeFor: SizeFor): SharedPrices {
  const { scene } = fields;
  const pipeFor = pricesBySize(scene, sizeFor);
  const wyeEach = wyePrice(scene);
  const dig = fields.weighted({ dig: 1, roots: 0, harm: 0 });
  const roots = fields.weighted({ dig: 0, roots: 1, harm: 0 });
  const harm = fields.weighted({ dig: 0, roots: 0, harm: 1 });
  const costOf: SharedPrices['costOf'] = (lines, wyes, laid) => {
    let now = wyes * wyeEach;
    let trouble = 0;
    let treeHarm = 0;
    lines.forEach((line, i) => {
      const bends = Math.max(0, line.points.length - 2) * scene.costs.bendEach;
      now += along(dig, line) + line.lengthM * pipeFor(line.load).morePerM + bends;
      const pipe = laid[i] ?? null;
      if (pipe !== null) now += deeper(scene, pipe);
      trouble += along(roots, line);
      treeHarm += along(harm, line);
    });
    return { now, roots: trouble, treeHarm, presentValue: now + trouble };
  };
  return { pipeFor, wyeEach, costOf };
}
