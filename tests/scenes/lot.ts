import type { RouteRequest } from '../../packages/core/src/model/route.js';
import type { Site } from '../../packages/core/src/model/site.js';
import { readSite } from '../../packages/core/src/validate/read-site.js';
import { routeLot } from '../bench/route-lot.mjs';

export interface LotShape {
  readonly seed: number;
  readonly sizeM?: number;
  readonly trees?: number;
  readonly levels?: boolean;
}

/** A seeded lot with a source behind the house and an outlet at its front. */
export function lot(shape: LotShape): Site {
  const { site, issues } = readSite([{ name: 'lot', text: JSON.stringify(routeLot(shape)) }]);
  const errors = issues.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(`the lot has errors: ${JSON.stringify(errors)}`);
  return site;
}

/** From its source to its outlet. */
export const acrossLot = (more: Partial<RouteRequest> = {}): RouteRequest => ({
  asOf: '2026-11-25',
  from: { id: 'source' },
  to: [{ id: 'outlet' }],
  pipe: { material: 'pvc-sdr35', sizeM: 0.1016 },
  ...more,
});
