import { judgement } from '../tables/judgement.js';
import { type Metres, metres } from '../units/quantity.js';

/** Young trees: root radius about 38 x trunk diameter (Day, Wiseman, Dickinson & Harris 2010). */
const YOUNG_RATIO = 38;
/** The ratio holds to a trunk of about 20 cm (the same review, from memory), then declines. */
const YOUNG_STEM_M = 0.2;
/** Metres of root radius per metre of trunk beyond that (judgement). */
const LATER_RATIO = 15;
/** Open-grown roots spread to about three times the branch spread (Gilman 1988; UF/IFAS). */
const CROWN_RATIO = 2.9;

/** Root radius from the trunk alone. */
export function rootRadiusByTrunk(stemDiameter: Metres): Metres {
  const young = Math.min(stemDiameter, YOUNG_STEM_M);
  return metres(YOUNG_RATIO * young + LATER_RATIO * Math.max(0, stemDiameter - YOUNG_STEM_M));
}

/** Mean of the trunk rule and the crown rule, before the genus and the ground have their say. */
export function reachBeforeGenus(stemDiameter: Metres, crownRadius: Metres): Metres {
  return metres((rootRadiusByTrunk(stemDiameter) + CROWN_RATIO * crownRadius) / 2);
}

/**
 * A palm's fibrous roots spread about twice the crown radius (judgement; they start anew from the base and
 * follow neither rule above).
 */
export function palmReach(crownRadius: Metres): Metres {
  return metres(2 * crownRadius);
}

export type SoilKind = 'sand' | 'loam' | 'clay';

/** Factor of the soil on the reach (judgement). */
export function soilFactor(soil: SoilKind | null): number {
  return soil === null ? 1 : judgement.soilReachFactors.value[soil];
}
