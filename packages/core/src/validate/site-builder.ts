import type { Feature, Geometry } from 'geojson';
import { boxOf } from '../geometry/box-index.js';
import { planeFor } from '../geometry/plane.js';
import { lengthOf, polylineOf } from '../geometry/polyline.js';
import type { Place } from '../model/issue.js';
import type {
  Barrier,
  Drain,
  Finding,
  Fitting,
  Level,
  LonLat,
  Obstacle,
  Origin,
  Site,
  Tree,
} from '../model/site.js';
import type { MaterialMatch, SpeciesMatch } from '../model/species-match.js';
import { isNotALiveTree } from '../names/not-live.js';
import { resolveMaterial } from '../names/resolve-material.js';
import { resolveSpecies } from '../names/resolve-species.js';
import type { IssueList } from '../read/issue-list.js';
import { textOf } from '../read/text-of.js';
import {
  buildBarrier,
  buildDrain,
  buildFinding,
  buildFitting,
  buildLevel,
  buildObstacle,
  lonLat,
  pathOf,
} from './build-features.js';
import { buildTree } from './build-tree.js';
import { guessKind, type Properties } from './columns.js';
import { Ids } from './ids.js';
import { misspelt } from './misspelt.js';
import { checkProperties, PropertyReader, tidy } from './property-reader.js';
import { schemaFor } from './schema-for.js';
import { type FeatureKind, featureSchemas } from './schemas.js';
import { checkShape } from './shape.js';
import type { SiteInfo } from './site-info.js';

function remembering<K extends string | null, T>(resolve: (text: K) => T): (text: K) => T {
  const known = new Map<K, T>();
  return (text) => {
    let found = known.get(text);
    if (found === undefined) {
      found = resolve(text);
      known.set(text, found);
    }
    return found;
  };
}

/** Geometry types each kind may have; a multi-part of one part counts as that part. */
const GEOMETRIES: Record<FeatureKind, readonly Geometry['type'][]> = {
  tree: ['Point'],
  drain: ['LineString'],
  fitting: ['Point'],
  finding: ['Point'],
  obstacle: ['Polygon', 'LineString', 'MultiPolygon'],
  barrier: ['LineString'],
  level: ['Point'],
};

function single(geometry: Geometry): Geometry {
  if (geometry.type === 'MultiLineString' && geometry.coordinates.length === 1) {
    return { type: 'LineString', coordinates: geometry.coordinates[0] as never };
  }
  if (geometry.type === 'MultiPoint' && geometry.coordinates.length === 1) {
    return { type: 'Point', coordinates: geometry.coordinates[0] as never };
  }
  return geometry;
}

/** No drain is drawn longer in one piece; a mistyped vertex makes one round the globe, metres (judgement). */
const LONGEST_LINE_M = 20_000;
/** A line inside a box of this size is not measured: no mistyped point made it. */
const SURELY_SHORT_DEGREES = 0.05;

/** Turns features into a site, one at a time; what cannot be used is reported and set aside. */
export class SiteBuilder {
  private readonly trees: Tree[] = [];
  private readonly drains: Drain[] = [];
  private readonly fittings: Fitting[] = [];
  private readonly findings: Finding[] = [];
  private readonly obstacles: Obstacle[] = [];
  private readonly barriers: Barrier[] = [];
  private readonly levels: Level[] = [];
  private readonly ids: Record<FeatureKind, Ids>;
  private readonly species = remembering<string | null, SpeciesMatch>(resolveSpecies);
  private readonly material = remembering<string | null, MaterialMatch>(resolveMaterial);
  private readonly isGone = remembering(isNotALiveTree);

  constructor(
    private readonly issues: IssueList,
    private readonly info: SiteInfo,
  ) {
    this.ids = {
      tree: new Ids('t', issues),
      drain: new Ids('line-', issues),
      fitting: new Ids('f', issues),
      finding: new Ids('seen-', issues),
      obstacle: new Ids('o', issues),
      barrier: new Ids('b', issues),
      level: new Ids('l', issues),
    };
  }

  add(feature: Feature, file: string, index: number): void {
    const raw: Properties = feature.properties ?? {};
    const givenId = raw['id'] ?? feature.id ?? null;
    const id = givenId === null || givenId === '' ? null : textOf(givenId);
    const place: Place = { file, index, feature: id, path: '' };
    const kind = this.kindOf(feature, raw, place);
    const needsShape = !(kind === 'finding' && feature.geometry === null);
    const usable = !needsShape || checkShape(feature, place, kind !== null, this.issues);
    if (kind === null || !usable) return;
    const geometry = feature.geometry === null ? null : single(feature.geometry);
    if (geometry !== null && !GEOMETRIES[kind].includes(geometry.type)) {
      this.issues.add({
        code: 'wrong-geometry',
        severity: 'error',
        expected: GEOMETRIES[kind].join(' or '),
        got: geometry.type,
        place: { ...place, path: 'geometry' },
      });
      return;
    }
    for (const slip of misspelt(kind, raw)) {
      const path = `properties.${slip.name}`;
      this.issues.add({ code: 'misspelt-property', severity: 'warning', ...slip, place: { ...place, path } });
    }
    const values = tidy(raw);
    if (!checkProperties(schemaFor(kind, values), values, place, this.issues)) return;
    this.build(kind, geometry, id, { file, index }, values, place);
  }

  private kindOf(feature: Feature, properties: Properties, place: Place): FeatureKind | null {
    const given = properties['kind'];
    if (typeof given === 'string' && Object.hasOwn(featureSchemas, given)) return given as FeatureKind;
    const guessed = feature.geometry ? guessKind(single(feature.geometry).type, properties) : null;
    if (given !== undefined && given !== null) {
      this.issues.add({
        code: 'kind-unknown',
        severity: 'warning',
        kind: textOf(given),
        place: { ...place, path: 'properties.kind' },
      });
      return null;
    }
    if (guessed !== null) {
      this.issues.add({ code: 'kind-guessed', severity: 'notice', kind: guessed, place });
    } else if (feature.geometry) {
      this.issues.add({ code: 'kind-unknown', severity: 'notice', kind: '', place });
    }
    return guessed;
  }

  private build(
    kind: FeatureKind,
    geometry: Geometry | null,
    givenId: string | null,
    origin: Origin,
    values: Properties,
    givenPlace: Place,
  ): void {
    const id = this.ids[kind].take(givenId, givenPlace);
    const reader = new PropertyReader(values, origin, id, this.issues);
    if (kind === 'finding') {
      const finding = buildFinding(id, origin, reader);
      if (finding) this.findings.push(finding);
    } else if (geometry?.type === 'Point')
      this.buildPoint(kind, lonLat(geometry.coordinates), id, origin, values, reader);
    else if (geometry) this.buildShape(kind, geometry, id, origin, reader);
  }

  private buildPoint(
    kind: FeatureKind,
    position: readonly [number, number],
    id: string,
    origin: Origin,
    values: Properties,
    reader: PropertyReader,
  ): void {
    if (kind === 'tree') {
      const tree = buildTree(id, position, values, reader, this.species, this.isGone, this.info.units);
      if (tree) this.trees.push(tree);
    } else if (kind === 'fitting') this.fittings.push(buildFitting(id, origin, position, reader));
    else if (kind === 'level') {
      const level = buildLevel(id, origin, position, reader);
      if (level) this.levels.push(level);
    }
  }

  private buildShape(
    kind: FeatureKind,
    geometry: Geometry,
    id: string,
    origin: Origin,
    reader: PropertyReader,
  ): void {
    if (geometry.type === 'LineString') {
      const path = pathOf(geometry.coordinates);
      if (kind === 'drain') this.buildLine(path, id, origin, reader);
      else if (kind === 'barrier') this.barriers.push(buildBarrier(id, origin, path, reader));
      else this.obstacles.push(buildObstacle(id, origin, { type: 'path', path }, reader));
    } else if (geometry.type === 'Polygon' || geometry.type === 'MultiPolygon') {
      const parts = geometry.type === 'Polygon' ? [geometry.coordinates] : geometry.coordinates;
      const rings = parts.map((polygon) => (polygon[0] ?? []).map(lonLat));
      this.obstacles.push(buildObstacle(id, origin, { type: 'area', rings }, reader));
    }
  }

  private buildLine(path: readonly LonLat[], id: string, origin: Origin, reader: PropertyReader): void {
    const [west, south, east, north] = boxOf(path);
    const wide = Math.max(east - west, north - south) > SURELY_SHORT_DEGREES;
    const lengthM = wide ? lengthOf(polylineOf(path, planeFor(path), false)) : 0;
    if (lengthM <= LONGEST_LINE_M) this.drains.push(buildDrain(id, origin, path, reader, this.material));
    else reader.report('warning', { code: 'too-long', lengthKm: lengthM / 1000 }, 'geometry.coordinates');
  }

  site(): Site {
    return {
      ...this.info,
      trees: this.trees,
      drains: this.drains,
      fittings: this.fittings,
      findings: this.findings,
      obstacles: this.obstacles,
      barriers: this.barriers,
      levels: this.levels,
    };
  }
}
