declare module 'shpjs' {
  import type { FeatureCollection, Geometry } from 'geojson';

  export function parseShp(shapes: ArrayBuffer | DataView, projection?: string): Geometry[];
  export function parseDbf(
    table: ArrayBuffer | DataView,
    encoding?: ArrayBuffer | DataView,
  ): Record<string, unknown>[];
  export function combine(parts: [Geometry[], Record<string, unknown>[]]): FeatureCollection;
}
