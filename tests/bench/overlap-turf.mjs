// The same through Turf: a 64-gon for each circle, an index over their boxes, each line split by the polygon and
// the pieces inside measured.
import {
  bbox,
  booleanPointInPolygon,
  circle,
  length,
  lineSplit,
  lineString,
  midpoint,
  point,
} from '@turf/turf';
import Flatbush from 'flatbush';

const METRES = { units: 'meters' };

export function overlapTurf(trees, lines) {
  const circles = trees.map((t) => circle(t.position, t.radiusM, { steps: 64, units: 'meters' }));
  const index = new Flatbush(circles.length);
  for (const c of circles) index.add(...bbox(c));
  index.finish();
  let pairs = 0;
  let metres = 0;
  for (const path of lines) {
    const line = lineString(path);
    for (const i of index.search(...bbox(line))) {
      const polygon = circles[i];
      const split = lineSplit(line, polygon).features;
      let sum = 0;
      for (const piece of split.length > 0 ? split : [line]) {
        const [a, b] = piece.geometry.coordinates;
        if (booleanPointInPolygon(midpoint(point(a), point(b)), polygon)) sum += length(piece, METRES);
      }
      if (sum > 0) pairs++;
      metres += sum;
    }
  }
  return { pairs, metres };
}
