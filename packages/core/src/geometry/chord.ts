/**
 * The part of the straight edge (x0, y0)-(x1, y1) inside a circle, in closed form.
 * @returns fractions [from, to] of the edge, or null where it does not enter the circle. Plane metres.
 */
export function chordOf(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  cx: number,
  cy: number,
  radius: number,
): [from: number, to: number] | null {
  const dx = x1 - x0;
  const dy = y1 - y0;
  const a = dx * dx + dy * dy;
  if (a === 0) return null;
  const fx = x0 - cx;
  const fy = y0 - cy;
  const b = (fx * dx + fy * dy) / a;
  const cross = fx * dy - fy * dx;
  // distance from the centre to the carrier line, squared, is cross^2 / a
  const half2 = (radius * radius - (cross * cross) / a) / a;
  if (half2 <= 0) return null;
  const half = Math.sqrt(half2);
  const from = Math.max(0, -b - half);
  const to = Math.min(1, -b + half);
  return to > from ? [from, to] : null;
}
