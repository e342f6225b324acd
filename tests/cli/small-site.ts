type Properties = Readonly<Record<string, unknown>>;

/** A line of clay past one elm, as a site file's text; properties can be added or changed. */
export function smallSite(drain: Properties = {}, tree: Properties = {}, site: Properties = {}): string {
  return JSON.stringify({
    type: 'FeatureCollection',
    rootreach: { schema: 1, ...site },
    features: [
      {
        type: 'Feature',
        properties: { kind: 'tree', id: 't1', species: 'Ulmus americana', dbh_cm: 60, ...tree },
        geometry: { type: 'Point', coordinates: [-70.59995281, 40.50005403] },
      },
      {
        type: 'Feature',
        properties: {
          kind: 'drain',
          id: 'main',
          material: 'clay',
          depth_start_m: 0.6,
          depth_end_m: 0.8,
          installed: '1962',
          flow: 'as-drawn',
          ...drain,
        },
        geometry: {
          type: 'LineString',
          coordinates: [
            [-70.6, 40.50002702],
            [-70.59985844, 40.50002702],
          ],
        },
      },
    ],
  });
}
