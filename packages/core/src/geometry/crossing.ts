/** True where the open segment a-b crosses or touches segment c-d. Plane metres. */
export function segmentsCross(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): boolean {
  const rx = bx - ax;
  const ry = by - ay;
  const qx = dx - cx;
  const qy = dy - cy;
  const det = rx * qy - ry * qx;
  if (det === 0) return false;
  const t = ((cx - ax) * qy - (cy - ay) * qx) / det;
  const u = ((cx - ax) * ry - (cy - ay) * rx) / det;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1;
}

/** True where segment a-b crosses any edge of a path given as x, y arrays. */
export function crossesPath(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  x: ArrayLike<number>,
  y: ArrayLike<number>,
): boolean {
  for (let i = 0; i + 1 < x.length; i++) {
    const hit = segmentsCross(
      ax,
      ay,
      bx,
      by,
      x[i] as number,
      y[i] as number,
      x[i + 1] as number,
      y[i + 1] as number,
    );
    if (hit) return true;
  }
  return false;
}
