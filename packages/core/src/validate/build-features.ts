import type { Position } from 'geojson';
import type {
  Barrier,
  Drain,
  Finding,
  Fitting,
  FittingType,
  Level,
  LonLat,
  Obstacle,
  ObstacleType,
  Origin,
  Seen,
} from '../model/site.js';
import type { MaterialMatch } from '../model/species-match.js';
import type { JointKey } from '../tables/pipe-row.js';
import type { PropertyReader } from './property-reader.js';
import { type NamedQuantity, quantities } from './quantity-names.js';

/** The parsed position itself where it is a plain pair: a town has a million of them. */
export function lonLat(position: Position): LonLat {
  return position.length === 2
    ? (position as unknown as LonLat)
    : [position[0] as number, position[1] as number];
}

/** Path without repeated points. */
export function pathOf(positions: readonly Position[]): LonLat[] {
  const path: LonLat[] = [];
  for (const position of positions) {
    const last = path[path.length - 1];
    if (!last || last[0] !== position[0] || last[1] !== position[1]) path.push(lonLat(position));
  }
  return path;
}

function materialOf(reader: PropertyReader, resolve: (text: string | null) => MaterialMatch): MaterialMatch {
  const text = reader.text('material');
  const match = resolve(text);
  if (text !== null && match.key === 'unknown' && match.certainty === 'none') {
    reader.report('warning', { code: 'material-unknown', text }, 'properties.material');
  } else if (text !== null && match.certainty !== 'exact' && match.key !== 'unknown') {
    reader.report('notice', { code: 'material-uncertain', text, taken: match.key }, 'properties.material');
  }
  return match;
}

/** Deeper than house and street lines lie: inches written as feet, more often than not, metres (judgement). */
const ODD_DEPTH_M = 5;

function depthOf(reader: PropertyReader, quantity: NamedQuantity): number | null {
  const depthM = reader.quantity(quantity);
  if (depthM !== null && depthM > ODD_DEPTH_M) {
    reader.report('warning', { code: 'odd-depth', depthM }, 'properties');
  }
  return depthM;
}

export function buildDrain(
  id: string,
  origin: Origin,
  path: readonly LonLat[],
  reader: PropertyReader,
  resolve: (text: string | null) => MaterialMatch,
): Drain {
  const material = materialOf(reader, resolve);
  const street = reader.text('street');
  return {
    id,
    origin,
    name: reader.text('name'),
    path,
    material: material.key,
    materialKnown: material.key !== 'unknown',
    sizeM: reader.quantity(quantities.size),
    perforated: reader.flag('perforated') ?? material.perforated ?? false,
    wrapped: reader.flag('wrapped') ?? false,
    pieceM: reader.quantity(quantities.piece),
    joint: reader.text('joint') as JointKey | null,
    sealed: reader.flag('sealed'),
    sealMPa: reader.number('seal_mpa'),
    depthStartM: depthOf(reader, quantities.depthStart),
    depthEndM: depthOf(reader, quantities.depthEnd),
    installedYear: reader.year('installed'),
    dugYear: reader.year('dug'),
    cutYear: reader.year('cut'),
    flow: reader.text('flow') as Drain['flow'],
    carries: reader.text('carries') as Drain['carries'],
    servesM2: reader.quantity(quantities.serves),
    wet: reader.text('wet') as Drain['wet'],
    ...(street === null ? {} : { street }),
  };
}

export function buildFitting(id: string, origin: Origin, position: LonLat, reader: PropertyReader): Fitting {
  return {
    id,
    origin,
    type: reader.text('type') as FittingType,
    position,
    sealed: reader.flag('sealed'),
    drain: reader.text('drain'),
  };
}

/** A finding, or null where it does not say how far in it was seen: then it is reported. */
export function buildFinding(id: string, origin: Origin, reader: PropertyReader): Finding | null {
  const atM = reader.quantity(quantities.at);
  if (atM === null) {
    reader.report('error', { code: 'missing-value', expected: 'a distance by the reel' }, 'properties.at_m');
    return null;
  }
  const blocked = reader.number('blocked_pct');
  const photo = reader.text('photo');
  return {
    id,
    origin,
    drain: reader.text('drain') as string,
    from: reader.text('from'),
    direction: reader.text('direction') as Finding['direction'],
    atM,
    toM: reader.quantity(quantities.to),
    seen: reader.text('seen') as Seen,
    blockedShare: blocked === null ? null : blocked / 100,
    entries: reader.number('entries'),
    year: reader.year('date'),
    ...(photo === null ? {} : { photo }),
  };
}

export function buildObstacle(
  id: string,
  origin: Origin,
  shape: Obstacle['shape'],
  reader: PropertyReader,
): Obstacle {
  return { id, origin, type: reader.text('type') as ObstacleType, name: reader.text('name'), shape };
}

export function buildBarrier(
  id: string,
  origin: Origin,
  path: readonly LonLat[],
  reader: PropertyReader,
): Barrier {
  return {
    id,
    origin,
    path,
    depthM: reader.quantity(quantities.barrierDepth),
    installedYear: reader.year('installed'),
  };
}

/** A spot level, or null without its elevation: then it is reported. */
export function buildLevel(
  id: string,
  origin: Origin,
  position: LonLat,
  reader: PropertyReader,
): Level | null {
  const elevationM = reader.quantity(quantities.elevation);
  if (elevationM === null) {
    reader.report('error', { code: 'missing-value', expected: 'an elevation' }, 'properties.elevation_m');
    return null;
  }
  return { id, origin, position, elevationM };
}
