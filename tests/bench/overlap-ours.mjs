// Overlap of lines and circles: our index, one plane a line, closed-form chords.
import { planeFor, polylineOf, stretchesInside, treeIndex } from '@rootreach/core';

/** Sum over all pairs of the metres of a line inside a circle, the lines one by one. */
export function overlapOurs(trees, lines) {
  const index = treeIndex(
    trees.map((t) => t.position),
    Float64Array.from(trees, (t) => t.radiusM),
  );
  let pairs = 0;
  let metres = 0;
  for (const path of lines) {
    const plane = planeFor(path);
    const line = polylineOf(path, plane, false);
    const lons = path.map((p) => p[0]);
    const lats = path.map((p) => p[1]);
    const near = index.search(Math.min(...lons), Math.min(...lats), Math.max(...lons), Math.max(...lats));
    for (const i of near) {
      const { position, radiusM } = trees[i];
      const circle = {
        x: (position[0] - plane.lon) * plane.metresPerDegreeLon,
        y: (position[1] - plane.lat) * plane.metresPerDegreeLat,
        radiusM,
      };
      let sum = 0;
      for (const [from, to] of stretchesInside(line, [circle])) sum += to - from;
      if (sum > 0) pairs++;
      metres += sum;
    }
  }
  return { pairs, metres };
}
