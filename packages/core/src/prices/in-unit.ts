import type { PriceUnit } from '../model/prices.js';
import type { QuantityUnit } from '../model/quantity.js';
import { cite } from '../sources/cited.js';
import { fromFeet } from '../units/length.js';

const FOOT_M = fromFeet(1);
const YARD_M = fromFeet(3);

/** US tons (2,000 lb) of washed stone or sand in a cubic yard as it is delivered. */
export const TONS_PER_CUBIC_YARD = cite(1.4, 'common-practice', 'memory', '1.3 to 1.5');

/** How many of the price's unit are in one of the quantity's. */
const RATIOS: Readonly<Record<QuantityUnit, Partial<Record<PriceUnit, number>>>> = {
  m: { m: 1, ft: 1 / FOOT_M },
  m2: { m2: 1, ft2: 1 / FOOT_M ** 2, yd2: 1 / YARD_M ** 2 },
  m3: { m3: 1, ft3: 1 / FOOT_M ** 3, yd3: 1 / YARD_M ** 3, ton: TONS_PER_CUBIC_YARD.value / YARD_M ** 3 },
  piece: { piece: 1 },
  hour: { hour: 1 },
  job: { job: 1 },
};

/** A quantity in the unit of a price; null where one is, say, a length and the other an area. */
export function inUnit(quantity: number, unit: QuantityUnit, wanted: PriceUnit): number | null {
  const ratio = RATIOS[unit][wanted];
  return ratio === undefined ? null : quantity * ratio;
}
