import type { Feature, Geometry } from 'geojson';
import { lonLatOf, planeAt } from '../../packages/core/src/geometry/plane.js';
import { readSite, type SiteReading } from '../../packages/core/src/validate/read-site.js';

/** Metres east and north of the scene's origin. */
export type Place = readonly [eastM: number, northM: number];

/** Properties of a feature, named as in a site file. */
type Properties = Readonly<Record<string, unknown>>;
type AtPoint = Properties & { readonly at: Place };
type AlongPath = Properties & { readonly path: readonly Place[] };

/** A small invented site laid out in metres and read like any file. */
export interface Scene {
  readonly tree: (tree: AtPoint) => Scene;
  readonly drain: (drain: AlongPath) => Scene;
  readonly fitting: (fitting: AtPoint) => Scene;
  readonly level: (level: AtPoint) => Scene;
  readonly barrier: (barrier: AlongPath) => Scene;
  /** An area where the path ends where it began, else a line. */
  readonly obstacle: (obstacle: AlongPath) => Scene;
  readonly finding: (finding: Properties) => Scene;
  /** Members of the collection's `rootreach`. */
  readonly about: (info: Properties) => Scene;
  readonly toGeoJson: () => {
    readonly type: 'FeatureCollection';
    readonly features: readonly Feature<Geometry | null>[];
    readonly rootreach: Properties;
  };
  readonly reading: () => SiteReading;
  /** The checked site. Throws where the reader sees an error in it: a scene has none unless a test wants it. */
  readonly site: () => SiteReading['site'];
}

/** Invented ground at mid latitude. */
const SOMEWHERE: readonly [lon: number, lat: number] = [-93, 45];

/** A scene around `origin`; ids not given are `tree-1`, `drain-1` and so on. */
export function scene(origin: readonly [lon: number, lat: number] = SOMEWHERE): Scene {
  const plane = planeAt(origin[0], origin[1]);
  const position = ([east, north]: Place): [number, number] => lonLatOf(plane, east, north);
  const features: Feature<Geometry | null>[] = [];
  const counts = new Map<string, number>();
  let info: Properties = { schema: 1, invented: true };

  const add = (kind: string, geometry: Geometry | null, properties: Properties): Scene => {
    const number = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, number);
    const id = `${kind}-${number}`;
    features.push({ type: 'Feature', geometry, properties: { id, ...properties, kind } });
    return made;
  };
  const point = (kind: string) => {
    return ({ at, ...rest }: AtPoint) => add(kind, { type: 'Point', coordinates: position(at) }, rest);
  };
  const line = (kind: string) => {
    return ({ path, ...rest }: AlongPath) =>
      add(kind, { type: 'LineString', coordinates: path.map(position) }, rest);
  };
  const toGeoJson: Scene['toGeoJson'] = () => ({ type: 'FeatureCollection', features, rootreach: info });
  const reading = (): SiteReading => readSite([{ name: 'scene', text: JSON.stringify(toGeoJson()) }]);

  const made: Scene = {
    tree: point('tree'),
    drain: line('drain'),
    fitting: point('fitting'),
    level: point('level'),
    barrier: line('barrier'),
    obstacle: ({ path, ...rest }) => {
      const coordinates = path.map(position);
      const [first, last] = [path[0], path[path.length - 1]];
      const closed = first && last && path.length > 3 && first[0] === last[0] && first[1] === last[1];
      // the same place must be the same pair of numbers, or the ring is not closed
      if (closed) coordinates[coordinates.length - 1] = coordinates[0] as [number, number];
      return add(
        'obstacle',
        closed ? { type: 'Polygon', coordinates: [coordinates] } : { type: 'LineString', coordinates },
        rest,
      );
    },
    finding: (properties) => add('finding', null, properties),
    about: (more) => {
      info = { ...info, ...more };
      return made;
    },
    toGeoJson,
    reading,
    site: () => {
      const { site, issues } = reading();
      const errors = issues.filter((issue) => issue.severity === 'error');
      if (errors.length > 0) throw new Error(`the scene has errors: ${JSON.stringify(errors)}`);
      return site;
    },
  };
  return made;
}
