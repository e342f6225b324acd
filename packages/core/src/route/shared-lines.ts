import type { Point } from '../geometry/disc-less-strip.js';
import type { LaidPipe } from '../model/fall.js';
import type { NetworkJunction } from '../model/network.js';
import type { RoutePipe } from '../model/route.js';
import type { Fitting, LonLat } from '../model/site.js';
import { outsideDiameterM } from '../quantities/outside-diameter.js';
import { trenchWidthM } from '../quantities/trench-width.js';
import { bendsOf } from './bends.js';
import { pathLength } from './path-stations.js';
import { linesOfRoute, type RouteLines } from './route-line.js';
import { depthAlong } from './route-profile.js';
import type { RouteScene } from './scene.js';

/** One line of a shared route as it is laid. */
export interface SharedLaying {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly points: readonly Point[];
  readonly sizeM: number;
  readonly servesM2: number;
  readonly laid: LaidPipe | null;
}

type Junction = Omit<NetworkJunction, 'x' | 'y'> & { readonly position: LonLat };

/** The scene as it is for a pipe of another size: its height, its trench, its bends. */
export function sceneForSize(scene: RouteScene, sizeM: number): RouteScene & { readonly pipe: RoutePipe } {
  const pipe = { ...scene.request.pipe, sizeM };
  const pipeHeightM = outsideDiameterM(pipe.material, sizeM);
  const limits = { ...scene.limits, pipeHeightM };
  return { ...scene, pipe, limits, trenchWidthM: trenchWidthM(pipeHeightM, limits.minCoverM) };
}

const NOWHERE = { file: 'route', index: 0 };

/** Wyes and the bends before them at a place where lines meet. */
function fittingsAt(
  { id, position, main, mainBendDegrees, branches }: Junction,
  number: number,
  nameOf: ReadonlyMap<string, string>,
  onward: string,
): Fitting[] {
  const at = (name: string, type: Fitting['type'], line: string): Fitting => ({
    id: `route-${name}`,
    origin: NOWHERE,
    type,
    position,
    sealed: null,
    drain: nameOf.get(line) ?? onward,
  });
  const turned = (line: string, bends: readonly number[], k: number): Fitting[] =>
    bends.map((_, n) => at(`turn-${number}-${k}${n > 0 ? `-${n + 1}` : ''}`, 'bend', line));
  return [
    ...branches.map((_, k) => at(`wye-${number}${k > 0 ? `-${k + 1}` : ''}`, 'wye', id)),
    ...turned(main, mainBendDegrees, 1),
    ...branches.flatMap(({ line, bendDegrees }, k) => turned(line, bendDegrees, k + 2)),
  ];
}

/** Lines of a site that a shared route would be, with the wyes and bends where they meet. */
export function linesOfShared(
  scene: RouteScene,
  lines: readonly SharedLaying[],
  junctions: readonly Junction[],
): RouteLines {
  const names = new Map(lines.map(({ id }, i) => [id, `route-${i + 1}-1`]));
  const parts = lines.map(({ points, sizeM, laid, servesM2, from }, i) => {
    const own = sceneForSize(scene, sizeM);
    const depthAt = depthAlong(own, laid);
    const made = linesOfRoute({
      id: `route-${i + 1}`,
      plane: scene.plane,
      points,
      lengthM: pathLength(points),
      bends: bendsOf(points, scene.bends),
      coverAt: (s) => Math.max(0, depthAt(s) - own.limits.pipeHeightM),
      laidYear: scene.nowYear,
      asked: own.pipe,
      solid: [],
    });
    // what other lines bring is theirs
    const others = lines.reduce((sum, other) => sum + (other.to === from ? other.servesM2 : 0), 0);
    const ownM2 = servesM2 - others;
    return ownM2 > 1e-6 ? { ...made, drains: made.drains.map((d) => ({ ...d, servesM2: ownM2 })) } : made;
  });
  const wyes = junctions.flatMap((junction, i) => {
    const onward = lines.find(({ from }) => from === junction.id);
    return fittingsAt(junction, i + 1, names, names.get(onward?.id ?? '') ?? '');
  });
  return {
    drains: parts.flatMap(({ drains }) => drains),
    fittings: [...parts.flatMap(({ fittings }) => fittings), ...wyes],
  };
}
