import { lonLatOf } from '../../geometry/plane.js';
import { pointAt } from '../../geometry/polyline.js';
import { depthAt, type LineModel } from '../../line/line-model.js';
import type { Dig } from '../../model/dig.js';
import type { Barrier, LonLat } from '../../model/site.js';
import { outsideDiameterM } from '../../quantities/outside-diameter.js';
import { noDigRadius } from '../../roots/protection.js';
import { fromInches } from '../../units/length.js';
import { metres } from '../../units/quantity.js';
import type { MainTree } from '../main-tree.js';
import { asItIs, type Case, impossible, type Plan } from '../plan.js';
import { metresSeen } from '../stretch.js';

/** A trencher's width. */
const WIDTH_M = fromInches(6);
/** Beyond the stretch at either end, so that the way round is long, metres (judgement). */
const PAST_ENDS_M = 3;
const STEP_M = 0.5;
/** Sheets come up to this height; a deeper trench would be dug for the barrier alone (common practice: 24 to 48 in). */
const DEEPEST_M = fromInches(48);

/** Points beside the line, on the tree's side of it. */
function besideLine(
  line: LineModel,
  tree: MainTree,
  fromM: number,
  toM: number,
  offM: number,
): [number, number][] {
  const count = Math.max(2, Math.ceil((toM - fromM) / STEP_M) + 1);
  const points: [number, number][] = [];
  for (let i = 0; i < count; i++) {
    const at = fromM + ((toM - fromM) * i) / (count - 1);
    const [x, y] = pointAt(line.polyline, at);
    const [ax, ay] = pointAt(line.polyline, Math.max(0, at - 0.05));
    const [bx, by] = pointAt(line.polyline, Math.min(line.lengthM, at + 0.05));
    const length = Math.hypot(bx - ax, by - ay);
    const [nx, ny] = [-(by - ay) / length, (bx - ax) / length];
    const side = Math.sign(nx * (tree.x - x) + ny * (tree.y - y)) || 1;
    points.push([x + side * offM * nx, y + side * offM * ny]);
  }
  return points;
}

const leastDistance = (points: readonly [number, number][], { x, y }: MainTree): number =>
  Math.min(...points.map(([px, py]) => Math.hypot(px - x, py - y)));

/** A sheet in the ground between the stretch and the tree that brings most. Old roots stay where they are. */
export function barrier(c: Case): Plan {
  const { line, fromM, toM } = c.stretch;
  const tree = c.mainTree;
  if (tree === null) return impossible(c, 'barrier', 'no-tree-near');
  if (metresSeen(c.stretch, ['full', 'crushed']) > 0) return impossible(c, 'barrier', 'pipe-stays-blocked');
  const from = Math.max(0, fromM - PAST_ENDS_M);
  const to = Math.min(line.lengthM, toM + PAST_ENDS_M);
  const points = besideLine(line, tree, from, to, c.assumed['barrier-off-pipe-m']);
  const gapM = leastDistance(points, tree) - WIDTH_M / 2;
  const { stemDiameterM } = tree.zones;
  if (gapM < noDigRadius(metres(stemDiameterM))) return impossible(c, 'barrier', 'barrier-too-near-stem');
  const outside = outsideDiameterM(line.drain.material, c.sizeM);
  const below = c.assumed['barrier-below-pipe-m'];
  const [depthStartM, depthEndM] = [from, to].map((at) =>
    Math.min(DEEPEST_M, depthAt(line, at) + outside + below),
  ) as [number, number];
  const dig: Dig = {
    lengthM: to - from,
    depthStartM,
    depthEndM,
    widthM: WIDTH_M,
    surface: 'lawn',
    bored: false,
    handDig: gapM < c.assumed['hand-dig-diameters'] * stemDiameterM,
    pipe: null,
    sizeM: 0,
    perforated: false,
    wrapped: false,
    bedding: 'native',
    stoneM: null,
    oldPipeM: 0,
    barrierM: (depthStartM + depthEndM) / 2,
    fittings: [],
  };
  const added: Barrier = {
    id: `${line.drain.id} new barrier`,
    origin: line.drain.origin,
    path: points.map(([x, y]): LonLat => lonLatOf(line.plane, x, y)),
    depthM: Math.max(depthStartM, depthEndM),
    installedYear: c.nowYear,
  };
  return {
    ...asItIs(c, 'barrier'),
    reasons: ['roots-pass-under-and-round', 'old-joints-stay'],
    site: { ...c.site, barriers: [...c.site.barriers, added] },
    digs: [dig],
    stretches: [{ path: points, widthM: WIDTH_M, bored: false }],
  };
}
