import { type Cited, cite } from '../sources/cited.js';
import type { MaterialKey } from '../tables/pipe-row.js';
import { fromInches, toInches } from '../units/length.js';

const PRESSURE_INCHES: Readonly<Record<number, number>> = {
  3: 3.5,
  4: 4.5,
  6: 6.625,
  8: 8.625,
  10: 10.75,
  12: 12.75,
};
const SEWER_INCHES: Readonly<Record<number, number>> = {
  3: 3.25,
  4: 4.215,
  6: 6.275,
  8: 8.4,
  10: 10.5,
  12: 12.5,
};

/** Outside over nominal diameter where no table of sizes is at hand. */
const OVER_NOMINAL: Readonly<Record<MaterialKey, Cited<number>>> = {
  'hdpe-corrugated': cite(1.17, 'common-practice', 'memory', '4.6 to 4.7 in for 4 in; varies by maker'),
  'hdpe-corrugated-heavy': cite(1.17, 'common-practice', 'memory', 'as the thin one'),
  'hdpe-dual-wall': cite(1.18, 'common-practice', 'memory', '4.8 in for 4 in, 9.1 in for 8 in'),
  'hdpe-welded': cite(1.125, 'common-practice', 'memory', 'iron pipe sizes'),
  'pvc-sdr35': cite(1.054, 'astm-d3034', 'quoted'),
  'pvc-sch40': cite(1.125, 'astm-d1785', 'quoted'),
  'pvc-thin-wall': cite(1.054, 'astm-d2729', 'memory'),
  abs: cite(1.125, 'common-practice', 'memory', 'as schedule 40'),
  clay: cite(1.27, 'common-practice', 'memory', '5.1 to 5.3 in for 4 in'),
  concrete: cite(1.35, 'our-judgement', 'judgement', 'thick wall'),
  'cast-iron': cite(1.075, 'common-practice', 'memory', '4.3 in for 4 in'),
  'asbestos-cement': cite(1.15, 'our-judgement', 'judgement'),
  'bituminous-fibre': cite(1.15, 'our-judgement', 'judgement'),
  brick: cite(1.5, 'our-judgement', 'judgement', 'half a brick around'),
  unknown: cite(1.15, 'our-judgement', 'judgement'),
};

const BY_SIZE: Partial<Record<MaterialKey, Readonly<Record<number, number>>>> = {
  'hdpe-welded': PRESSURE_INCHES,
  'pvc-sch40': PRESSURE_INCHES,
  abs: PRESSURE_INCHES,
  'pvc-sdr35': SEWER_INCHES,
  'pvc-thin-wall': SEWER_INCHES,
};

/**
 * Outside diameter of a pipe of a nominal size, metres: of its standard where sizes are at hand, else by ratio.
 * @param material key of the table of pipes.
 * @param sizeM nominal size, metres.
 */
export function outsideDiameterM(material: MaterialKey, sizeM: number): number {
  const inches = BY_SIZE[material]?.[Math.round(toInches(sizeM))];
  return inches === undefined ? sizeM * OVER_NOMINAL[material].value : fromInches(inches);
}
