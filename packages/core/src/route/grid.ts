/** A lattice of nodes in plane metres. */
export interface RouteGrid {
  readonly x0: number;
  readonly y0: number;
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
}

/** Lattice over a box: nodes at whole cells, one cell to spare on every side. */
export function gridOver(west: number, south: number, east: number, north: number, cellM: number): RouteGrid {
  if (!(cellM > 0)) throw new RangeError(`cellM must be above 0, got ${cellM}`);
  const columns = Math.ceil((east - west) / cellM) + 3;
  const rows = Math.ceil((north - south) / cellM) + 3;
  // spare cells shared out evenly, so that a mirrored box gets a mirrored lattice
  const x0 = (west + east - (columns - 1) * cellM) / 2;
  const y0 = (south + north - (rows - 1) * cellM) / 2;
  return { x0, y0, cellM, columns, rows };
}

/** Value between the nodes, each way in a straight line; outside, that of the border. */
export function valueAt(grid: RouteGrid, values: Float64Array, x: number, y: number): number {
  const { columns, rows } = grid;
  const u = Math.min(columns - 1, Math.max(0, (x - grid.x0) / grid.cellM));
  const v = Math.min(rows - 1, Math.max(0, (y - grid.y0) / grid.cellM));
  const i = Math.min(columns - 2, Math.floor(u));
  const k = Math.min(rows - 2, Math.floor(v));
  const s = u - i;
  const t = v - k;
  const at = k * columns + i;
  const low = (values[at] as number) * (1 - s) + (values[at + 1] as number) * s;
  const high = (values[at + columns] as number) * (1 - s) + (values[at + columns + 1] as number) * s;
  return low * (1 - t) + high * t;
}

/** Fills a value for every node. */
export function overNodes(grid: RouteGrid, value: (x: number, y: number) => number): Float64Array {
  const values = new Float64Array(grid.columns * grid.rows);
  for (let k = 0, at = 0; k < grid.rows; k++) {
    const y = grid.y0 + k * grid.cellM;
    for (let i = 0; i < grid.columns; i++) values[at++] = value(grid.x0 + i * grid.cellM, y);
  }
  return values;
}
