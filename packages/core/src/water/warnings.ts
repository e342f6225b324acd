import type { LineWater, WaterWarning } from '../model/water-result.js';

type Unwarned = Omit<LineWater, 'warnings'>;

function ofCleaning(water: Unwarned, usualSlope: number): WaterWarning[] {
  const { slope, selfCleansing, selfCleansingIsSure, selfCleansingSlope } = water;
  if (selfCleansing === false) return ['not-self-cleansing'];
  if (selfCleansing === true) return selfCleansingIsSure ? [] : ['may-not-clean-itself'];
  // nobody knows its fall: at the usual one it would or would not
  const needed = selfCleansingSlope?.mid ?? 0;
  return slope === null && needed > usualSlope ? ['usual-slope-not-enough'] : [];
}

function ofSize({ usedShare, usedShareWithRoots, withRootsM3s, designFlowM3s, blockage }: Unwarned) {
  const warnings: WaterWarning[] = [];
  if (usedShare !== null && usedShare.mid > 1) warnings.push('too-small');
  else if (usedShare !== null && usedShare.high > 1) warnings.push('may-be-too-small');
  const fits = usedShare !== null && usedShare.mid <= 1;
  const shut = withRootsM3s !== null && withRootsM3s.high <= 0 && (designFlowM3s?.mid ?? 0) > 0;
  if (fits && (shut || (usedShareWithRoots?.mid ?? 0) > 1)) warnings.push('too-small-with-roots');
  if ((blockage?.headLossM ?? 0) > 0) warnings.push('holds-water-back');
  return warnings;
}

/** What the owner of a line should be told, gravest first. @param usualSlope that yard drains are laid at. */
export function warningsOf(water: Unwarned, usualSlope: number): WaterWarning[] {
  const noFall: WaterWarning[] = water.slope !== null && water.slope <= 0 ? ['no-fall'] : [];
  return [...noFall, ...ofSize(water), ...ofCleaning(water, usualSlope)];
}
