import type { ProtectionRule } from '../model/site.js';
import type { SpeciesRow } from '../tables/species-row.js';
import { type Metres, metres } from '../units/quantity.js';
import { genusFactor } from './genus-factor.js';
import {
  criticalRootZone,
  criticalRootZoneByTolerance,
  protectionRadiusAs4970,
  protectionRadiusBs5837,
  protectionRadiusPalm,
} from './protection.js';
import { palmReach, reachBeforeGenus } from './reach.js';
import { structuralRadius } from './structural.js';

/** Circles on a stem, metres. */
export interface Zones {
  readonly dripline: Metres;
  readonly trunkMultiple: Metres;
  readonly structural: Metres;
  readonly reach: Metres;
}

/** Reach of a tree of this size: where 5 % of the root curve is left. `ground` is the factor of soil. */
export function reachOf(row: SpeciesRow, stem: Metres, crown: Metres, ground: number): Metres {
  if (row.form === 'palm') return metres(ground * palmReach(crown));
  return metres(ground * genusFactor(row) * reachBeforeGenus(stem, crown));
}

/** The four circles that are always worked out. */
export function zonesOf(row: SpeciesRow, stem: Metres, crown: Metres, ground: number): Zones {
  return {
    dripline: crown,
    trunkMultiple: row.form === 'palm' ? protectionRadiusPalm(crown) : protectionRadiusBs5837(stem),
    structural: structuralRadius(stem),
    reach: reachOf(row, stem, crown, ground),
  };
}

/** Radius of the protection circle by the rule that the site has chosen. */
export function protectionRadius(rule: ProtectionRule, row: SpeciesRow, stem: Metres, crown: Metres): Metres {
  if (row.form === 'palm') return protectionRadiusPalm(crown);
  switch (rule) {
    case 'trunk-multiple':
      return protectionRadiusBs5837(stem);
    case 'trunk-multiple-min-2m':
      return protectionRadiusAs4970(stem);
    case 'foot-per-inch':
      return criticalRootZone(stem, 1);
    case 'foot-and-half-per-inch':
      return criticalRootZone(stem, 1.5);
    case 'tolerance-and-age':
      // neither is known of a single tree here: the middle of the table
      return criticalRootZoneByTolerance(stem, 'moderate', 'mature');
  }
}
