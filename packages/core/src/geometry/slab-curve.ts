/** A straight or round piece that has one y for each x between `from` and `to`. */
export interface SlabCurve {
  readonly from: number;
  readonly to: number;
  readonly y: (x: number) => number;
  /** Area between the curve and y = 0, from x = a to b. */
  readonly area: (a: number, b: number) => number;
}

export interface Straight {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface Round {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Null where it stands upright and so has no y for each x. */
export function straightCurve({ x0, y0, x1, y1 }: Straight): SlabCurve | null {
  if (x0 === x1) return null;
  const slope = (y1 - y0) / (x1 - x0);
  const y = (x: number): number => y0 + (x - x0) * slope;
  return {
    from: Math.min(x0, x1),
    to: Math.max(x0, x1),
    y,
    area: (a, b) => (b - a) * y((a + b) / 2),
  };
}

/** Upper or lower half of a circle. */
export function halfCircle({ x: cx, y: cy, r }: Round, side: 1 | -1): SlabCurve {
  const within = (x: number): number => Math.min(r, Math.max(-r, x - cx));
  const height = (t: number): number => Math.sqrt(Math.max(0, r * r - t * t));
  // integral of sqrt(r2 - t2)
  const sum = (t: number): number => 0.5 * (t * height(t) + r * r * Math.asin(t / r));
  return {
    from: cx - r,
    to: cx + r,
    y: (x) => cy + side * height(within(x)),
    area: (a, b) => cy * (b - a) + side * (sum(within(b)) - sum(within(a))),
  };
}

/** x of every place where two straight pieces cross. */
export function straightCrossings(a: Straight, b: Straight): number[] {
  const rx = a.x1 - a.x0;
  const ry = a.y1 - a.y0;
  const qx = b.x1 - b.x0;
  const qy = b.y1 - b.y0;
  const det = rx * qy - ry * qx;
  if (det === 0) return [];
  const t = ((b.x0 - a.x0) * qy - (b.y0 - a.y0) * qx) / det;
  const u = ((b.x0 - a.x0) * ry - (b.y0 - a.y0) * rx) / det;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? [a.x0 + t * rx] : [];
}

/** x of every place where a straight piece crosses a circle. */
export function mixedCrossings(a: Straight, c: Round): number[] {
  const dx = a.x1 - a.x0;
  const dy = a.y1 - a.y0;
  const length2 = dx * dx + dy * dy;
  if (length2 === 0) return [];
  const fx = a.x0 - c.x;
  const fy = a.y0 - c.y;
  const b = (fx * dx + fy * dy) / length2;
  const cross = fx * dy - fy * dx;
  const half2 = (c.r * c.r - (cross * cross) / length2) / length2;
  if (half2 < 0) return [];
  const half = Math.sqrt(half2);
  return [-b - half, -b + half].filter((t) => t >= 0 && t <= 1).map((t) => a.x0 + t * dx);
}

/** x of every place where two circles cross. */
export function roundCrossings(a: Round, b: Round): number[] {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const d = Math.hypot(dx, dy);
  if (d === 0 || d > a.r + b.r || d < Math.abs(a.r - b.r)) return [];
  const along = (d * d + a.r * a.r - b.r * b.r) / (2 * d);
  const aside = Math.sqrt(Math.max(0, a.r * a.r - along * along));
  const middle = a.x + (along * dx) / d;
  return [middle - (aside * dy) / d, middle + (aside * dy) / d];
}
