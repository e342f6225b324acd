import { planeFor } from '../../geometry/plane.js';
import { polylineOf, sliceOf } from '../../geometry/polyline.js';
import type { Drain } from '../../model/site.js';
import type { Stretch as HarmStretch } from '../../roots/harm.js';
import { outsideDiameterM } from '../../quantities/outside-diameter.js';
import { trenchWidthM } from '../../quantities/trench-width.js';
import type { NewRoute } from '../options.js';
import { asItIs, type Case, impossible, type Plan } from '../plan.js';

/** The new route as harm to trees is judged from: stretch by stretch, in the plane of the old line. */
function stretchesOf(c: Case, route: NewRoute): HarmStretch[] {
  const polyline = polylineOf(route.path, c.stretch.line.plane, false);
  const outsideM = outsideDiameterM(route.material, route.sizeM);
  let atM = 0;
  return route.digs.map((dig) => {
    const fromM = atM;
    atM += dig.lengthM;
    const widthM = dig.widthM ?? trenchWidthM(outsideM, Math.max(dig.depthStartM, dig.depthEndM));
    const topDepthM = dig.bored ? Math.min(dig.depthStartM, dig.depthEndM) - outsideM : null;
    return { path: sliceOf(polyline, fromM, atM), widthM, bored: dig.bored, topDepthM };
  });
}

/** The old stretch is left in the ground and a new line is laid elsewhere. */
export function move(c: Case): Plan {
  const { newRoute: route, stretch, nowYear } = c;
  if (route === null) return impossible(c, 'move', 'no-route-given');
  const { drain } = stretch.line;
  const id = `${drain.id} moved`;
  const laid: Drain = {
    ...drain,
    id,
    path: route.path,
    material: route.material,
    materialKnown: true,
    sizeM: route.sizeM,
    perforated: route.perforated ?? false,
    wrapped: route.wrapped ?? false,
    pieceM: route.pieceM ?? null,
    joint: route.joint ?? null,
    sealed: null,
    sealMPa: null,
    depthStartM: route.depthStartM,
    depthEndM: route.depthEndM,
    installedYear: nowYear,
    dugYear: nowYear,
    cutYear: null,
    flow: 'as-drawn',
  };
  const path = polylineOf(route.path, planeFor(route.path), false);
  const lengthM = path.s[path.s.length - 1] as number;
  return {
    ...asItIs(c, 'move'),
    reasons: ['away-from-the-trees'],
    site: { ...c.site, drains: [...c.site.drains, laid] },
    parts: [{ drainId: id, fromM: 0, toM: lengthM }],
    left: null,
    work: null,
    digs: route.digs,
    stretches: stretchesOf(c, route),
  };
}
