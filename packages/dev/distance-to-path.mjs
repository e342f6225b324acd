/** Distance from a point to a path of straight pieces. */
export function distanceToPath([px, py], path) {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < path.length; i += 1) {
    const [ax, ay] = path[i - 1];
    const [dx, dy] = [path[i][0] - ax, path[i][1] - ay];
    const squared = dx * dx + dy * dy;
    const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / squared));
    nearest = Math.min(nearest, Math.hypot(px - ax - share * dx, py - ay - share * dy));
  }
  return nearest;
}
