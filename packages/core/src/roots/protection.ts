import { fromFeet, toInches } from '../units/length.js';
import { type Metres, metres } from '../units/quantity.js';

/** 707 m2, the cap of BS 5837:2012 annex D, is a circle of 15 m; AS 4970-2009 cl. 3.2 has the same upper limit. */
const CAP_M = 15;
const TRUNK_MULTIPLE = 12;

/** Root protection radius of BS 5837:2012 (4.6.1, annex D): 12 x stem diameter, at most 15 m. */
export function protectionRadiusBs5837(stemDiameter: Metres): Metres {
  return metres(Math.min(CAP_M, TRUNK_MULTIPLE * stemDiameter));
}

/** Tree protection zone of AS 4970-2009 (3.2): 12 x diameter at 1.4 m, at least 2 m, at most 15 m. */
export function protectionRadiusAs4970(stemDiameter: Metres): Metres {
  return metres(Math.min(CAP_M, Math.max(2, TRUNK_MULTIPLE * stemDiameter)));
}

/** Palms: AS 4970-2009 (3.2) sets at least 1 m outside the crown (from memory). */
export function protectionRadiusPalm(crownRadius: Metres): Metres {
  return metres(crownRadius + 1);
}

/** Critical root zone by the foot rules: `feetPerInch` feet of radius for each inch of trunk. */
export function criticalRootZone(stemDiameter: Metres, feetPerInch: number): Metres {
  return fromFeet(feetPerInch * toInches(stemDiameter));
}

export type Tolerance = 'good' | 'moderate' | 'poor';
export type AgeClass = 'young' | 'mature' | 'overmature';

/** Feet of radius per inch of trunk by tolerance and age: Matheny & Clark 1998, from memory. */
const FEET_PER_INCH: Record<Tolerance, Record<AgeClass, number>> = {
  good: { young: 0.5, mature: 0.75, overmature: 1 },
  moderate: { young: 0.75, mature: 1, overmature: 1.25 },
  poor: { young: 1, mature: 1.25, overmature: 1.5 },
};

/** Critical root zone by how well the species bears root loss and how old the tree is (Matheny & Clark 1998). */
export function criticalRootZoneByTolerance(
  stemDiameter: Metres,
  tolerance: Tolerance,
  age: AgeClass,
): Metres {
  return criticalRootZone(stemDiameter, FEET_PER_INCH[tolerance][age]);
}

/** No straight cut closer than three trunk diameters: anchorage falls inside (Smiley 2008). */
export function noDigRadius(stemDiameter: Metres): Metres {
  return metres(3 * stemDiameter);
}
