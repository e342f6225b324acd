import type { SiteDocument } from '../sketch/document.js';

type Position = readonly number[];

/** A box rounded to four decimals of a degree still holds what it is said to hold. */
const SLACK_DEGREES = 1e-4;

/** All positions inside a value of `coordinates`, however nested; lists that are no positions give none. */
function positionsIn(value: unknown, into: Position[]): Position[] {
  if (!Array.isArray(value)) return into;
  if (typeof value[0] === 'number') into.push(value as Position);
  else for (const part of value) positionsIn(part, into);
  return into;
}

function positionsOf(geometry: unknown): Position[] {
  if (typeof geometry !== 'object' || geometry === null) return [];
  const { coordinates, geometries } = geometry as { coordinates?: unknown; geometries?: unknown };
  if (Array.isArray(geometries)) return geometries.flatMap(positionsOf);
  return positionsIn(coordinates, []);
}

const isBox = (box: unknown): box is number[] =>
  Array.isArray(box) && (box.length === 4 || box.length === 6) && box.every(Number.isFinite);

/** A bbox as it was given while it is true; drawn anew where something has moved out of it (RFC 7946, 5). */
function trueBox(given: unknown, positions: readonly Position[]): unknown {
  if (!isBox(given) || positions.length === 0) return given;
  const [west, south] = given as [number, number];
  const [east, north] = given.slice(given.length / 2) as [number, number];
  const around = [Infinity, Infinity, -Infinity, -Infinity] as [number, number, number, number];
  for (const [lon = 0, lat = 0] of positions) {
    around[0] = Math.min(around[0], lon);
    around[1] = Math.min(around[1], lat);
    around[2] = Math.max(around[2], lon);
    around[3] = Math.max(around[3], lat);
  }
  // a box across the antimeridian has its west side east of its east side
  const holdsLon = west > east || (around[0] >= west - SLACK_DEGREES && around[2] <= east + SLACK_DEGREES);
  const holds = holdsLon && around[1] >= south - SLACK_DEGREES && around[3] <= north + SLACK_DEGREES;
  return holds ? given : around;
}

/** The whole site as the text of a GeoJSON file: everything that was in the file it came from is in it again. */
export function fileText({ features, info, members }: SiteDocument, indent?: number): string {
  const boxed = features.map((feature) =>
    feature.bbox === undefined
      ? feature
      : { ...feature, bbox: trueBox(feature.bbox, positionsOf(feature.geometry)) },
  );
  const others: Record<string, unknown> = { ...members };
  if (Object.hasOwn(members, 'bbox')) {
    others['bbox'] = trueBox(
      members['bbox'],
      features.flatMap((feature) => positionsOf(feature.geometry)),
    );
  }
  const whole = { type: 'FeatureCollection', rootreach: info, ...others, features: boxed };
  return JSON.stringify(whole, null, indent);
}
