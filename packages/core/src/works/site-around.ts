import { boxOf } from '../geometry/box-index.js';
import type { Drain, LonLat, Site } from '../model/site.js';

/** No root that counts reaches further, metres. */
const AROUND_M = 120;
/** Metres in a degree of latitude, near enough for a margin. */
const METRES_PER_DEGREE = 111_000;
/** A lot is taken whole. */
const SMALL = 40;

/** The part of a town that bears on one line: what lies within some hundred metres of it. */
export function siteAround(site: Site, drain: Drain): Site {
  if (site.drains.length <= SMALL) return site;
  const [west, south, east, north] = boxOf(drain.path);
  const up = AROUND_M / METRES_PER_DEGREE;
  const side = up / Math.max(0.1, Math.cos(((south + north) / 2) * (Math.PI / 180)));
  const isNear = ([lon, lat]: LonLat): boolean =>
    lon >= west - side && lon <= east + side && lat >= south - up && lat <= north + up;
  const drains = site.drains.filter(({ path }) => path.some(isNear));
  const ids = new Set(drains.map(({ id }) => id));
  return {
    ...site,
    drains,
    trees: site.trees.filter(({ position }) => isNear(position)),
    fittings: site.fittings.filter(({ position, drain: owner }) =>
      owner === null ? isNear(position) : ids.has(owner),
    ),
    findings: site.findings.filter((finding) => ids.has(finding.drain)),
    obstacles: site.obstacles.filter(({ shape }) =>
      (shape.type === 'path' ? shape.path : shape.rings.flat()).some(isNear),
    ),
    barriers: site.barriers.filter(({ path }) => path.some(isNear)),
  };
}
