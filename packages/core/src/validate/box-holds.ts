import type { Position } from 'geojson';

/** A box rounded to four decimals of a degree is still right. */
const SLACK_DEGREES = 1e-4;

/** True where a bbox (west, south, east, north, or with heights between) holds all positions. */
export function boxHolds(box: readonly number[], positions: readonly Position[]): boolean {
  const half = box.length / 2;
  const [west, south, east, north] = [box[0], box[1], box[half], box[half + 1]] as number[];
  // west may lie east of east where a box crosses the antimeridian (RFC 7946, 5.2)
  const crosses = (west as number) > (east as number);
  return positions.every((position) => {
    const lon = position[0] as number;
    const lat = position[1] as number;
    const between = lon >= (west as number) - SLACK_DEGREES && lon <= (east as number) + SLACK_DEGREES;
    return (
      (crosses || between) &&
      lat >= (south as number) - SLACK_DEGREES &&
      lat <= (north as number) + SLACK_DEGREES
    );
  });
}
