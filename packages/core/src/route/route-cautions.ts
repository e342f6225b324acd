import type { Caution } from '../model/caution.js';
import type { RouteAlternative } from '../model/route.js';
import { cautionsFor } from '../risk/cautions.js';
import type { RouteScene } from './scene.js';

/** Cautions that stand beside planned routes: what their deepest trench and their nearest tree call for. */
export function cautionsOfRoutes(
  scene: RouteScene,
  alternatives: readonly RouteAlternative[],
): readonly Caution[] {
  const depths = alternatives.map(({ depthM }) => depthM?.max ?? null);
  const diameters = new Map(scene.trees.map(({ id, stemDiameterM }) => [id, stemDiameterM]));
  const away = alternatives.flatMap(({ trees }) =>
    trees.map(({ id, nearestM }) => nearestM / (diameters.get(id) ?? 1)),
  );
  const near = away.length > 0 ? Math.max(0, Math.min(...away)) : undefined;
  return cautionsFor({
    digging: true,
    trenchDepthM: depths.includes(null) ? scene.limits.maxDepthM : Math.max(0, ...(depths as number[])),
    discharge: true,
    ...(near === undefined ? {} : { trunkDiametersAway: near, rootCutting: near < 12 }),
  });
}
