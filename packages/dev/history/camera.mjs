import { drawPart } from './draw.mjs';

/* Roots closer together than this are written down as one stretch, metres. */
const TOGETHER_M = 1.6;
/* A stretch written down in one is no longer than this, metres. */
const STRETCH_M = 6;
/* A root at a point is taken to stand for half a stick either side, metres. */
const POINT_HALF_M = 1.5;
const BESIDE_ROOTS_M = 0.3;
const FEWEST_TO_BLOCK = 4;
/* Shares: our judgement of what crews do. */
const BLOCKED = 0.5;
const MASS_ALONE = 0.35;
const STRETCH_FOR_MASS = 0.6;
const SAG_OR_OFFSET = 0.08;

const clip = (line, m) => Math.min(line.lengthM, Math.max(0, m));

/** Parts that the reel passes, in its order. */
function passed(parts, way) {
  const ahead = parts.filter(({ fromM, toM }) => (way.order > 0 ? fromM >= way.fromM : toM <= way.fromM));
  return way.order > 0 ? ahead : [...ahead].reverse();
}

/** Roots that lie together, in the order of the reel; old roots part them. */
function clustersOf(roots) {
  const clusters = [];
  for (const root of roots) {
    const last = clusters[clusters.length - 1];
    const near = last && Math.abs(root.atM - last[last.length - 1].atM) < TOGETHER_M && !root.afterOld;
    if (near && Math.abs(root.atM - last[0].atM) < STRETCH_M) last.push(root);
    else clusters.push([root]);
  }
  return clusters;
}

const overStretch = (line, fromM, toM) => ({ fromM: clip(line, fromM), toM: clip(line, toM) });
const around = (line, atM) => overStretch(line, atM - POINT_HALF_M, atM + POINT_HALF_M);

/** How a crew writes down one lot of roots. */
function written({ random }, line, cluster) {
  const entries = cluster.reduce((sum, { entries: n }) => sum + n, 0);
  const stations = cluster.map(({ atM }) => atM);
  const [low, high] = [Math.min(...stations), Math.max(...stations)];
  if (cluster.length > 1) {
    const over = overStretch(line, low - BESIDE_ROOTS_M, high + BESIDE_ROOTS_M);
    const seen = entries >= FEWEST_TO_BLOCK && random() < BLOCKED ? 'full' : 'mass';
    return { seen, ...over, entries, over };
  }
  const seen = random() < MASS_ALONE ? 'mass' : 'fine';
  if (seen === 'mass' && entries === 1 && random() < STRETCH_FOR_MASS) {
    const over = overStretch(line, low - 0.4, low + 0.8 + random());
    return { seen, ...over, over };
  }
  return { seen, atM: low, ...(entries > 1 ? { entries } : {}), over: around(line, low) };
}

/** The same again, some years on: nobody counts it anew. */
const again = ({ seen, entries: _entries, ...place }) => ({
  ...place,
  seen: seen === 'fine' ? 'mass' : seen,
});

/** Marks what a finding speaks of, so that the next run knows it. */
function tell(parts, finding) {
  const { fromM, toM } = finding.over;
  for (const part of parts) {
    if (part.told === null && part.atM >= fromM && part.atM <= toM) part.told = finding;
  }
}

function newIn(world, line, parts, year) {
  const roots = [];
  const crushed = [];
  let afterOld = false;
  for (const part of parts) {
    if (part.told !== null) {
      afterOld = true;
      continue;
    }
    const drawn = drawPart(world, line, part, year);
    if (drawn.crushed) crushed.push({ seen: 'crushed', atM: part.atM, over: around(line, part.atM) });
    else if (drawn.entries > 0) {
      roots.push({ ...part, entries: drawn.entries, afterOld });
      afterOld = false;
    }
  }
  const hidden = (root) => crushed.some(({ over }) => root.atM >= over.fromM && root.atM <= over.toM);
  return { roots: roots.filter((root) => !hidden(root)), crushed };
}

/** Where the reel had to stop: behind the first mass that fills the pipe or wall that has come in. */
function stopOf(findings, way) {
  const stops = findings
    .filter(({ seen }) => seen === 'full' || seen === 'crushed')
    .map(({ over }) => (way.order > 0 ? over.toM : over.fromM));
  return stops.length === 0 ? null : way.order > 0 ? Math.min(...stops) : Math.max(...stops);
}

/**
 * One run of the reel: what it saw, stations from the outlet end, and how far it came. Parts that it passed are
 * then known clean, or known to hold roots.
 */
export function runReel(world, line, allParts, way, year) {
  const ahead = passed(allParts, way);
  const old = [...new Set(ahead.map(({ told }) => told).filter((told) => told !== null))].map(again);
  const { roots, crushed } = newIn(world, line, ahead, year);
  const fresh = [...crushed, ...clustersOf(roots).map((cluster) => written(world, line, cluster))];
  const end = way.order > 0 ? line.lengthM : 0;
  const stopM = stopOf([...old, ...fresh], way) ?? end;
  const within = (m) => (way.order > 0 ? m <= stopM : m >= stopM);
  const seen = [...old, ...fresh].filter(({ over }) => within(way.order > 0 ? over.fromM : over.toM));
  for (const finding of fresh) if (seen.includes(finding)) tell(ahead, finding);
  for (const part of ahead) if (within(part.atM) && part.told === null) part.since = year;
  if (world.random() < SAG_OR_OFFSET) {
    const atM = clip(line, (way.fromM + stopM) / 2);
    seen.push({ seen: world.random() < 0.5 ? 'sag' : 'offset', atM, over: { fromM: atM, toM: atM } });
  }
  return { seen, fromM: Math.min(way.fromM, stopM), toM: Math.max(way.fromM, stopM) };
}
