import type { LaidPipe } from '../model/fall.js';
import type { NetworkLine, PlannedNetwork } from '../model/network.js';
import type { NetworkFall } from '../model/network-fall.js';
import type { PipeForArea } from '../model/pipe-for-area.js';
import type { SharedLine, SharedWay } from '../model/shared-route.js';
import { asNumber } from '../prices/price-quantities.js';
import { harmOf } from '../roots/harm.js';
import { bendsOf } from './bends.js';
import { chancesOf, harmStretches, harmWorth, jointsNear } from './evaluate-route.js';
import { pathLength } from './path-stations.js';
import { lonLatAt } from './route-line.js';
import { digsOfRoute, priceOfDigs } from './route-price.js';
import { depthAlong } from './route-profile.js';
import type { RouteScene } from './scene.js';
import { linesOfShared, sceneForSize } from './shared-lines.js';
import { stretchesOf } from './stretches.js';

/** Lines that are laid, and how. */
export interface Laying {
  readonly network: Pick<PlannedNetwork, 'shape' | 'lines' | 'junctions' | 'lengthM'>;
  readonly fall: NetworkFall | null;
  /** What lines were sized by; null where they were not. */
  readonly pipeFor: ((servesM2: number) => PipeForArea) | null;
}

interface Laid {
  readonly line: NetworkLine;
  readonly pipe: LaidPipe | null;
}

/** One line by itself: how it is dug, what that takes, and what trees feel of it. */
function lineOf(scene: RouteScene, { line, pipe }: Laid, fittings: readonly number[], wyes: number) {
  const own = sceneForSize(scene, line.sizeM);
  const { points } = line;
  const stretches = stretchesOf(own, points);
  const depthAt = depthAlong(own, pipe);
  const bends = [...bendsOf(points, scene.bends), { fittings }];
  const lengthM = pathLength(points);
  return {
    stretches,
    digs: digsOfRoute({ stretches, bends, depthAt, pipe: own.pipe, solid: [], lengthM, wyes }),
    felt: harmStretches(own, points, stretches, depthAt),
    harm: harmWorth(own, points, stretches),
  };
}

/** Everything about lines from several sources, by the same relations as one route alone. */
export function evaluateShared(scene: RouteScene, { network, fall, pipeFor }: Laying): SharedWay {
  const { shape, lengthM } = network;
  const laid: Laid[] = network.lines.map((line) => ({
    line,
    pipe: fall?.kind === 'laid' ? (fall.lines.find(({ id }) => id === line.id)?.pipe ?? null) : null,
  }));
  const junctions = network.junctions.map(({ x, y, ...rest }) => ({
    ...rest,
    position: lonLatAt(scene.plane, [x, y]),
  }));
  const parts = laid.map((one) => {
    const at = junctions.find(({ id }) => id === one.line.from);
    const turns = [at?.mainBendDegrees ?? [], ...(at?.branches.map(({ bendDegrees }) => bendDegrees) ?? [])];
    return lineOf(scene, one, turns.flat(), at?.branches.length ?? 0);
  });
  const chances = chancesOf(
    scene,
    linesOfShared(
      scene,
      laid.map(({ line, pipe }) => ({ ...line, servesM2: line.load, laid: pipe })),
      junctions,
    ),
  );
  const { pipe } = scene.request;
  const priced = priceOfDigs(
    scene,
    parts.flatMap(({ digs }) => digs),
    pipe,
  );
  const now = asNumber(priced.total);
  const roots = chances.asked.discounted * scene.costs.repairEach;
  const { joints } = chances.asked;
  return {
    shape,
    lines: laid.map(
      ({ line, pipe }, i): SharedLine => ({
        id: line.id,
        from: line.from,
        to: line.to,
        lengthM: line.lengthM,
        servesM2: line.load,
        sizeM: line.sizeM,
        sized: pipeFor?.(line.load) ?? null,
        pipe,
        stretches: parts[i]?.stretches ?? [],
        geometry: {
          type: 'LineString',
          coordinates: line.points.map((point) => lonLatAt(scene.plane, point)),
        },
      }),
    ),
    junctions,
    lengthM,
    joints: { count: joints.length, nearRoots: jointsNear(scene, joints) },
    chance: { '10': chances['10'].chance, '25': chances['25'].chance },
    expectedEntries: chances.asked.expected,
    trees: harmOf(
      scene.trees,
      parts.flatMap(({ felt }) => felt),
    ),
    priced,
    cost: {
      now,
      roots,
      treeHarm: parts.reduce((sum, { harm }) => sum + harm, 0),
      presentValue: now + roots,
    },
    falls: fall === null || fall.kind === 'unknown' ? null : fall.kind === 'laid',
  };
}
