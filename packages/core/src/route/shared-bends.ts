import type { Point } from '../geometry/disc-less-strip.js';
import type { NetworkLine, NetworkPipe, PlannedNetwork } from '../model/network.js';
import type { SceneFields } from './field-of-scene.js';
import { Ways } from './find-way.js';
import { turnsAt } from './network-lines.js';
import { pathLength } from './path-stations.js';

type Network = Pick<PlannedNetwork, 'lines' | 'junctions'>;

/**
 * A network whose lines are drawn anew between their ends, which stay, with what their turns cost: of fittings, or swept
 * by the pipe. The turns where lines meet are told anew.
 */
export function withFittings<N extends Network>(
  fields: SceneFields,
  network: N,
  pipeFor: (load: number) => NetworkPipe,
): N & { lengthM: number } {
  const ways = new Ways(fields, { dig: 1, roots: 1, harm: 1 }, []);
  const lines = network.lines.map((line): NetworkLine => {
    const { morePerM } = pipeFor(line.load);
    const cost = (path: readonly Point[]): number => ways.priceOf(path) + morePerM * pathLength(path);
    const [points = line.points] = [...ways.between(line.points, morePerM)].sort((a, b) => cost(a) - cost(b));
    return cost(points) < Number.POSITIVE_INFINITY ? { ...line, points, lengthM: pathLength(points) } : line;
  });
  return {
    ...network,
    lines,
    junctions: network.junctions.map(({ id, x, y, branches }) => ({
      id,
      x,
      y,
      ...turnsAt(
        id,
        branches.some(({ line }) => line === id),
        lines,
      ),
    })),
    lengthM: lines.reduce((sum, { lengthM }) => sum + lengthM, 0),
  };
}
