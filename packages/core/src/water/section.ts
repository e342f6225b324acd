/** Angle at the centre of the full circle. */
export const FULL_ANGLE = 2 * Math.PI;

/** Part of a round section below a level. */
export interface Section {
  /** Angle at the centre over the wetted wall, radians. */
  readonly angle: number;
  /** Share of the area of the circle. */
  readonly areaShare: number;
  /** Width of the surface over the diameter. */
  readonly surfaceRatio: number;
}

/** Circular segment: angle 2 acos(1 - 2 y/D), area D^2 (angle - sin angle) / 8. */
export function sectionBelow(depthRatio: number): Section {
  if (!(depthRatio >= 0 && depthRatio <= 1)) {
    throw new RangeError(`depthRatio must be between 0 and 1, got ${depthRatio}`);
  }
  const angle = 2 * Math.acos(1 - 2 * depthRatio);
  return {
    angle,
    areaShare: (angle - Math.sin(angle)) / FULL_ANGLE,
    surfaceRatio: Math.sin(angle / 2),
  };
}

/** Halvings of the depth interval: down to a billionth of a diameter. */
const HALVINGS = 30;

/** Depth ratio below which a share of the section lies. */
export function depthForArea(areaShare: number): number {
  if (!(areaShare >= 0 && areaShare <= 1)) {
    throw new RangeError(`areaShare must be between 0 and 1, got ${areaShare}`);
  }
  let low = 0;
  let high = 1;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (sectionBelow(middle).areaShare < areaShare) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
