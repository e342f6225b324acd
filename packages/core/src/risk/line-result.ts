import { nearestOn, sliceOf } from '../geometry/polyline.js';
import type { PlacedFinding } from '../line/find.js';
import { coordinatesOf } from '../line/line-model.js';
import type { LineResult } from '../model/result.js';
import type { Tree } from '../model/site.js';
import type { RiskContext } from './context.js';
import { chanceOf } from './interval.js';
import { treesNear } from './near-trees.js';

/**
 * One line for its profile.
 * @param expectedEntries of all its segments together.
 * @param findings what cameras saw in it.
 */
export function lineResult(
  context: RiskContext,
  number: number,
  expectedEntries: number,
  findings: readonly PlacedFinding[],
): LineResult {
  const line = context.lines.at(number);
  const { searchM, pattern } = context.field;
  const near = treesNear(context.field, line);
  const trees = Array.from(near.numbers(), (tree, i) => {
    const { station, distance } = nearestOn(line.polyline, near.x[i] as number, near.y[i] as number);
    return { id: (context.field.trees[tree] as Tree).id, atM: station, distanceM: distance, tree };
  })
    .filter(({ tree, distanceM }) => distanceM <= (searchM[pattern[tree] as number] as number))
    .map(({ id, atM, distanceM }) => ({ id, atM, distanceM }))
    .sort((a, b) => a.atM - b.atM);
  return {
    drainId: line.drain.id,
    name: line.drain.name,
    lengthM: line.lengthM,
    material: line.drain.material,
    materialName: line.pipe.name,
    flowsAsDrawn: line.flowsAsDrawn,
    flowBasis: line.flowBasis,
    joints: line.joints.map((j) => ({ atM: j.stationM, count: j.count, fitting: j.fitting })),
    fittings: line.fittings.map((f) => ({ id: f.id, type: f.type, atM: f.stationM })),
    findings: findings.map(({ finding: { id, seen, year }, fromM, toM }) => ({ id, seen, fromM, toM, year })),
    depth: { outletEndM: line.depthOutletM, upperEndM: line.depthUpperM, assumed: !line.depthKnown },
    expectedEntries,
    chance: chanceOf(expectedEntries),
    segments: line.segments.map((_, i) => `${line.drain.id}/${i + 1}`),
    trees,
    geometry: {
      type: 'LineString',
      coordinates: coordinatesOf(line, sliceOf(line.polyline, 0, line.lengthM)),
    },
  };
}
