import { booleanClockwise, kinks, polygon } from '@turf/turf';
import type { Feature, Geometry, Position } from 'geojson';
import type { IssueDetail, Place, Severity } from '../model/issue.js';
import type { IssueList } from '../read/issue-list.js';
import { boxHolds } from './box-holds.js';
import { positionsOf } from './positions.js';

/** Below this many decimals of a degree there is nothing to measure: 1e-9 degree is a tenth of a millimetre. */
const DECIMALS = 9;
/** More vertices than a survey of a yard or a street would give one feature (judgement). */
const MOST_VERTICES = 1000;
/** Degrees that nobody means as degrees: metres or feet of some national grid. */
const PROJECTED_ABOVE = 400;

type Report = (severity: Severity, detail: IssueDetail, path?: string) => void;

function hasExcessDigits(degrees: number): boolean {
  const scaled = degrees * 10 ** DECIMALS;
  // at 180 degrees a double still tells 1e-13: what is left after rounding is digits, not noise
  return Math.abs(scaled - Math.round(scaled)) > 1e-3;
}

/** @returns false where the coordinates cannot be longitudes and latitudes at all. */
function checkPositions(positions: readonly Position[], severity: Severity, report: Report): boolean {
  let usable = true;
  let west = Infinity;
  let east = -Infinity;
  for (const position of positions) {
    const lon = position[0] as number;
    const lat = position[1] as number;
    if (position.length > 2) report('warning', { code: 'extra-dimensions', dimensions: position.length });
    if (!position.every(Number.isFinite)) {
      report(severity, { code: 'not-finite' }, 'geometry.coordinates');
      return false;
    }
    if (Math.abs(lon) > PROJECTED_ABOVE || Math.abs(lat) > PROJECTED_ABOVE) {
      report(severity, { code: 'projected-coordinates', x: lon, y: lat }, 'geometry.coordinates');
      return false;
    }
    if (usable && (Math.abs(lon) > 180 || Math.abs(lat) > 90)) {
      report(severity, { code: 'out-of-range', lon, lat }, 'geometry.coordinates');
      usable = false;
    }
    if (lon < west) west = lon;
    if (lon > east) east = lon;
  }
  if (usable && east - west > 180) {
    // taken literally it would be a line round the globe
    report(severity, { code: 'antimeridian' }, 'geometry.coordinates');
    usable = false;
  }
  const first = positions[0];
  if (first !== undefined) {
    if (hasExcessDigits(first[0] as number)) {
      const decimals = (String(first[0]).split('.')[1] ?? '').length;
      report('warning', { code: 'excess-precision', decimals }, 'geometry.coordinates');
    }
  }
  if (positions.length > MOST_VERTICES) {
    report('warning', { code: 'excess-vertices', count: positions.length }, 'geometry.coordinates');
  }
  return usable;
}

const samePlace = (a: Position, b: Position): boolean => a[0] === b[0] && a[1] === b[1];

function checkRing(ring: Position[], k: number, report: Report): boolean {
  const distinct = new Set(ring.map((p) => `${p[0]} ${p[1]}`));
  if (distinct.size < 3) {
    report('error', { code: 'ring-too-small' }, 'geometry.coordinates');
    return false;
  }
  const self = kinks(polygon([ring.map((p) => p.slice(0, 2))])).features.length > 0;
  if (self) {
    report('warning', { code: 'self-intersection' }, 'geometry.coordinates');
    return true;
  }
  // RFC 7946, 3.1.6: exterior rings run counter-clockwise, interior ones clockwise
  if (booleanClockwise(ring) === (k === 0)) {
    report(
      'error',
      { code: 'ring-orientation', ring: k === 0 ? 'exterior' : 'interior' },
      'geometry.coordinates',
    );
  }
  return true;
}

function checkPolygon(rings: Position[][], report: Report): boolean {
  if (rings.length > 1) report('warning', { code: 'holes' }, 'geometry.coordinates');
  let usable = true;
  rings.forEach((ring, k) => {
    if (ring.some((p, i) => i > 0 && samePlace(p, ring[i - 1] as Position))) {
      report('warning', { code: 'duplicate-nodes' }, 'geometry.coordinates');
    }
    usable = checkRing(ring, k, report) && usable;
  });
  return usable;
}

function checkLine(path: Position[], report: Report): boolean {
  const first = path[0] as Position;
  if (path.every((p) => samePlace(p, first))) {
    report('warning', { code: 'zero-length' }, 'geometry.coordinates');
    return false;
  }
  if (path.some((p, i) => i > 0 && samePlace(p, path[i - 1] as Position))) {
    report('warning', { code: 'duplicate-nodes' }, 'geometry.coordinates');
  }
  return true;
}

function checkParts(geometry: Geometry, report: Report): boolean {
  switch (geometry.type) {
    case 'LineString':
      return checkLine(geometry.coordinates, report);
    case 'Polygon':
      return checkPolygon(geometry.coordinates, report);
    case 'MultiPolygon':
      if (geometry.coordinates.length === 1)
        report('warning', { code: 'single-member', type: geometry.type });
      return geometry.coordinates.map((rings) => checkPolygon(rings, report)).every(Boolean);
    case 'MultiLineString':
      if (geometry.coordinates.length === 1)
        report('warning', { code: 'single-member', type: geometry.type });
      return geometry.coordinates.map((path) => checkLine(path, report)).every(Boolean);
    case 'MultiPoint':
      if (geometry.coordinates.length === 1)
        report('warning', { code: 'single-member', type: geometry.type });
      return true;
    case 'GeometryCollection':
      if (geometry.geometries.length === 1) report('warning', { code: 'single-member', type: geometry.type });
      if (geometry.geometries.some((g) => g.type === 'GeometryCollection')) {
        report('warning', { code: 'nested-collection' });
      }
      return geometry.geometries.map((g) => checkParts(g, report)).every(Boolean);
    case 'Point':
      return true;
  }
}

function checkBox(feature: Feature, positions: readonly Position[], report: Report): void {
  const box = feature.bbox ?? feature.geometry?.bbox;
  if (box === undefined || positions.length === 0) return;
  if (!boxHolds(box, positions)) report('warning', { code: 'bbox-order' }, 'bbox');
}

/** True for the usual point, of which a town has a million: two numbers on the globe, no more digits than needed. */
function isPlain(position: Position): boolean {
  const lon = position[0] as number;
  const lat = position[1] as number;
  return position.length === 2 && Math.abs(lon) <= 180 && Math.abs(lat) <= 90 && !hasExcessDigits(lon);
}

/**
 * Own checks on coordinates, past what RFC 7946 forbids.
 * @param used whether the feature would be used: then what makes it unusable is an error, else a warning.
 * @returns true where the geometry can be used.
 */
export function checkShape(feature: Feature, place: Place, used: boolean, issues: IssueList): boolean {
  if (used && feature.geometry?.type === 'Point' && isPlain(feature.geometry.coordinates)) return true;
  const report: Report = (severity, detail, path = 'geometry') => {
    issues.add({ ...detail, severity, place: { ...place, path } });
  };
  if (feature.geometry === null) {
    report('warning', { code: 'null-geometry' });
    return false;
  }
  if (feature.geometry.type === 'Point' && used) {
    return checkPositions([feature.geometry.coordinates], 'error', report);
  }
  const positions = positionsOf(feature.geometry);
  const inRange = checkPositions(positions, used ? 'error' : 'warning', report);
  checkBox(feature, positions, report);
  // rings and paths of coordinates that mean something else would only bring up false faults
  return inRange && checkParts(feature.geometry, report);
}
