import { planeFor } from '../../geometry/plane.js';
import { lengthOf, polylineOf, sliceOf } from '../../geometry/polyline.js';
import type { Dig } from '../../model/dig.js';
import type { RouteAlternative, RouteStretch } from '../../model/route.js';
import type { Drain, LonLat } from '../../model/site.js';
import { outsideDiameterM } from '../../quantities/outside-diameter.js';
import { trenchWidthM } from '../../quantities/trench-width.js';
import { digOfStretch } from '../../route/dig-of-route.js';
import { judgement } from '../../tables/judgement.js';
import type { NewRoute } from '../options.js';
import { asItIs, type Case, impossible, type Plan } from '../plan.js';

/** Ground to invert at a station; the usual cover where the ground is not known. */
function depthOf({ profile }: RouteAlternative, stationM: number): number {
  if (profile === null) return judgement.assumedCoverM.value;
  const after = profile.stationM.findIndex((at) => at >= stationM);
  const i = after < 0 ? profile.stationM.length - 1 : after;
  return Math.max(0, (profile.groundM[i] as number) - (profile.invertM[i] as number));
}

const digsOf = ({ alternative, pipe }: NewRoute): Dig[] =>
  alternative.stretches.map(({ fromM, toM, way, surface }) =>
    digOfStretch(pipe, {
      lengthM: toM - fromM,
      depthStartM: depthOf(alternative, fromM),
      depthEndM: depthOf(alternative, toM),
      surface,
      way,
      perforated: pipe.perforated ?? false,
      fittings: [],
    }),
  );

/** The new line in place of the old one's stretch. */
function laidLine(c: Case, { alternative, pipe }: NewRoute, path: readonly LonLat[]): Drain {
  const { drain } = c.stretch.line;
  const outsideM = outsideDiameterM(pipe.material, pipe.sizeM);
  const known = alternative.profile !== null;
  const topAt = (stationM: number): number => Math.max(0.05, depthOf(alternative, stationM) - outsideM);
  return {
    ...drain,
    id: `${drain.id} moved`,
    path,
    material: pipe.material,
    materialKnown: true,
    sizeM: pipe.sizeM,
    perforated: pipe.perforated ?? false,
    wrapped: pipe.wrapped ?? false,
    pieceM: pipe.pieceM ?? null,
    joint: pipe.joint ?? null,
    sealed: null,
    sealMPa: null,
    depthStartM: known ? topAt(0) : null,
    depthEndM: known ? topAt(alternative.lengthM) : null,
    installedYear: c.nowYear,
    dugYear: c.nowYear,
    cutYear: null,
    flow: 'as-drawn',
    wet: drain.wet === 'standing' ? 'often' : drain.wet,
  };
}

/** The old stretch is left in the ground and a new line is laid elsewhere. */
export function move(c: Case): Plan {
  const { newRoute: route, stretch } = c;
  if (route === null) return impossible(c, 'move', 'no-route-given');
  const { alternative, pipe } = route;
  const path = alternative.geometry.coordinates.map(([lon, lat]): LonLat => [lon as number, lat as number]);
  const laid = laidLine(c, route, path);
  const inOldPlane = polylineOf(path, stretch.line.plane, false);
  const deepest = Math.max(
    ...digsOf(route).flatMap(({ depthStartM, depthEndM }) => [depthStartM, depthEndM]),
  );
  const widthM = trenchWidthM(outsideDiameterM(pipe.material, pipe.sizeM), deepest);
  const stretches = alternative.stretches.map(({ fromM, toM, way }: RouteStretch) => ({
    path: sliceOf(inOldPlane, fromM, toM),
    widthM,
    bored: way === 'bored',
    topDepthM: way === 'bored' ? depthOf(alternative, (fromM + toM) / 2) : null,
  }));
  return {
    ...asItIs(c, 'move'),
    reasons: ['away-from-the-trees'],
    site: { ...c.site, drains: [...c.site.drains, laid] },
    parts: [{ drainId: laid.id, fromM: 0, toM: lengthOf(polylineOf(path, planeFor(path), false)) }],
    left: null,
    digs: digsOf(route),
    measured: alternative.priced.lines.map(({ from }) => from),
    stretches,
  };
}
