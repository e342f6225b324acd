/** A number from 0 to 1 that hangs on a name and a place in it, so that a drawing is the same each time. */
function shareOf(name: string, place: number): number {
  let hash = 2166136261 ^ place;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 16777619);
  hash ^= hash >>> 13;
  return ((Math.imul(hash, 0x5bd1e995) >>> 8) & 0xffff) / 0xffff;
}

type Point = readonly [number, number];

const near = (value: number): string => String(Math.round(value * 10) / 10);

/** Closed curve through points, rounded off as by a steady hand (Catmull-Rom as Bezier pieces). */
function closedCurve(points: readonly Point[]): string {
  const at = (i: number): Point => points[(i + points.length) % points.length] as Point;
  const [x0, y0] = at(0);
  const pieces = points.map((_, i) => {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const p1 = [b[0] + (c[0] - a[0]) / 6, b[1] + (c[1] - a[1]) / 6] as const;
    const p2 = [c[0] - (d[0] - b[0]) / 6, c[1] - (d[1] - b[1]) / 6] as const;
    return `C${near(p1[0])} ${near(p1[1])} ${near(p2[0])} ${near(p2[1])} ${near(c[0])} ${near(c[1])}`;
  });
  return `M${near(x0)} ${near(y0)}${pieces.join('')}Z`;
}

/** An ellipse as a hand draws it, true to its size within `shake`. */
export function drawnEllipse(
  name: string,
  [x, y]: Point,
  [rx, ry]: Point,
  shake: number,
  points = 12,
): string {
  const ring = Array.from({ length: points }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / points;
    const swell = 1 + shake * (2 * shareOf(name, i) - 1);
    return [x + rx * swell * Math.cos(angle), y + ry * swell * Math.sin(angle)];
  });
  return closedCurve(ring);
}
