import type { Soil, Units } from '../model/site.js';
import { swellShares, trenchNumbers } from '../tables/work-judgement.js';

/** How a job is to be measured; every number may be set. */
export interface QuantityOptions {
  readonly soil?: Soil | null;
  /** Loose over bank volume, less one; by soil where not given. */
  readonly swellShare?: number;
  /** From 5 ft on: walls laid back, or shored upright. */
  readonly deepWalls?: 'sloped' | 'shored';
  /** Horizontal to vertical of walls laid back, each side. */
  readonly wallSlope?: number;
  /** Crews' trips with the machine. */
  readonly setUps?: number;
  /** Laying length of pipe; the material's usual one where not given. */
  readonly pieceM?: number;
  /** Warning tape over the pipe; true where not given. */
  readonly tape?: boolean;
  /** Units of sizes named in texts. */
  readonly units?: Units;
}

export interface Measuring {
  readonly swellShare: number;
  readonly deepWalls: 'sloped' | 'shored';
  readonly wallSlope: number;
  readonly setUps: number;
  readonly pieceM: number | undefined;
  readonly tape: boolean;
  readonly units: Units;
}

function atLeast(name: string, value: number, least: number): number {
  if (!(value >= least && Number.isFinite(value))) {
    throw new RangeError(`${name} must be at least ${least}, got ${value}`);
  }
  return value;
}

/** @throws RangeError for a number that makes no sense. */
export function measuringOf(options: QuantityOptions): Measuring {
  const bySoil = swellShares[options.soil ?? 'loam'].value;
  return {
    swellShare: atLeast('swellShare', options.swellShare ?? bySoil, 0),
    deepWalls: options.deepWalls ?? 'sloped',
    wallSlope: atLeast('wallSlope', options.wallSlope ?? trenchNumbers.wallSlope.value, 0),
    setUps: atLeast('setUps', options.setUps ?? 1, 0),
    pieceM: options.pieceM === undefined ? undefined : atLeast('pieceM', options.pieceM, 0.1),
    tape: options.tape ?? true,
    units: options.units ?? 'metric',
  };
}
