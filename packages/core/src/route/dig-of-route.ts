import type { Dig, DigFitting } from '../model/dig.js';
import type { RoutePipe, RouteSurface, RouteWay } from '../model/route.js';
import { trenchNumbers } from '../tables/work-judgement.js';

/** One stretch of a route as it is dug. */
export interface DugStretch {
  readonly lengthM: number;
  /** From the ground to the pipe's invert. */
  readonly depthStartM: number;
  readonly depthEndM: number;
  readonly surface: RouteSurface;
  readonly way: RouteWay;
  readonly perforated: boolean;
  readonly fittings: readonly DigFitting[];
}

/** The quantities' view of a stretch: the trench goes a bedding deeper than the invert. */
export function digOfStretch(pipe: RoutePipe, stretch: DugStretch): Dig {
  const { lengthM, depthStartM, depthEndM, surface, way, perforated, fittings } = stretch;
  const below = way === 'bored' ? 0 : trenchNumbers.beddingBelowM.value;
  return {
    lengthM,
    depthStartM: Math.max(0, depthStartM) + below,
    depthEndM: Math.max(0, depthEndM) + below,
    widthM: null,
    surface,
    bored: way === 'bored',
    handDig: way === 'hand-dug',
    pipe: pipe.material,
    sizeM: pipe.sizeM,
    perforated,
    wrapped: perforated && pipe.wrapped === true,
    bedding: 'gravel',
    stoneM: null,
    oldPipeM: 0,
    barrierM: 0,
    fittings,
  };
}
