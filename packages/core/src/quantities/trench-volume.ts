/**
 * Volume of a trench whose depth runs straight from one end to the other and whose walls lean out: the integral of
 * w d + m d^2, which is what the prismoidal formula gives.
 * @param lengthM along the ground.
 * @param bottomWidthM w.
 * @param depthStartM d at one end.
 * @param depthEndM d at the other.
 * @param wallSlope m, horizontal to vertical, each side; 0 for upright walls.
 * @returns cubic metres of ground as it lies.
 */
export function trenchVolumeM3(
  lengthM: number,
  bottomWidthM: number,
  depthStartM: number,
  depthEndM: number,
  wallSlope: number,
): number {
  const meanDepth = (depthStartM + depthEndM) / 2;
  const meanSquare = (depthStartM ** 2 + depthStartM * depthEndM + depthEndM ** 2) / 3;
  return lengthM * (bottomWidthM * meanDepth + wallSlope * meanSquare);
}
