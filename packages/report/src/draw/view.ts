import { type LonLat, planeFor, type Site } from '@rootreach/core';

export type Xy = readonly [x: number, y: number];

/** What part of the ground is drawn, and how large. */
export interface View {
  readonly width: number;
  readonly height: number;
  /** Pixels a metre. */
  readonly scale: number;
  readonly at: (position: LonLat) => Xy;
  readonly holds: (point: Xy) => boolean;
}

/** The drawing's own width; a printed page is then about 10 pixels to a point of type. */
export const WIDTH = 560;
/** Ground wider than this is cut to what lies about the spot, metres (judgement). */
const WHOLE_LOT_M = 95;
const ABOUT_SPOT_M = 32;
/** Ground about a stretch that a crew works on, metres (judgement). */
const CLOSE_M = 7;
const MARGIN_M = 2;

interface Box {
  west: number;
  east: number;
  south: number;
  north: number;
}

const emptyBox = (): Box => ({ west: Infinity, east: -Infinity, south: Infinity, north: -Infinity });

function grow(box: Box, [x, y]: Xy, by: number): void {
  box.west = Math.min(box.west, x - by);
  box.east = Math.max(box.east, x + by);
  box.south = Math.min(box.south, y - by);
  box.north = Math.max(box.north, y + by);
}

/** What bounds the lot: its border, buildings and lines; paving may be a street that runs on. */
function lotPoints({ obstacles, drains }: Site): LonLat[] {
  const shapes = obstacles.filter(({ type }) => type === 'boundary' || type === 'building');
  const ofShapes = shapes.flatMap(({ shape }) => (shape.type === 'area' ? shape.rings.flat() : shape.path));
  return [...ofShapes, ...drains.flatMap(({ path }) => path)];
}

/**
 * The view of a lot: all of it, or what lies about the spot where the ground is large.
 * @param spot points that must be seen: the stretch and the trees that bear on it.
 * @param close the spot alone, however small the lot.
 */
export function viewOf(
  site: Site,
  spot: readonly LonLat[],
  heights: { readonly least: number; readonly most: number },
  close: boolean,
): View {
  const all = lotPoints(site);
  const plane = planeFor(spot.length > 0 ? spot : all);
  const metres = ([lon, lat]: LonLat): Xy => [
    (lon - plane.lon) * plane.metresPerDegreeLon,
    (lat - plane.lat) * plane.metresPerDegreeLat,
  ];
  let box = emptyBox();
  for (const point of all) grow(box, metres(point), MARGIN_M);
  const across = Math.max(box.east - box.west, box.north - box.south);
  if (spot.length > 0 && (close || across > WHOLE_LOT_M)) {
    box = emptyBox();
    grow(box, [0, 0], close ? CLOSE_M : ABOUT_SPOT_M);
  }
  for (const point of spot) grow(box, metres(point), MARGIN_M);
  const [wide, high] = [box.east - box.west, box.north - box.south];
  const scale = Math.min(WIDTH / wide, heights.most / high);
  const height = Math.max(heights.least, Math.min(heights.most, high * scale));
  const [midX, midY] = [(box.west + box.east) / 2, (box.south + box.north) / 2];
  return {
    width: WIDTH,
    height,
    scale,
    at: (position) => {
      const [x, y] = metres(position);
      return [WIDTH / 2 + (x - midX) * scale, height / 2 - (y - midY) * scale];
    },
    holds: ([x, y]) => x >= 0 && x <= WIDTH && y >= 0 && y <= height,
  };
}
