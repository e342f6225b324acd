import type { Point } from '../geometry/disc-less-strip.js';
import type { CostField } from './cost-field.js';
import type { Shape } from './shapes.js';

/** Borders that the best path bends at: straights between prices, and circles that may not be entered. */
export interface Guides {
  readonly lines: readonly (readonly [ax: number, ay: number, bx: number, by: number])[];
  readonly circles: readonly { readonly x: number; readonly y: number; readonly r: number }[];
}

/** Paths keep this share further off than they must, so that rounding does not put them inside. */
const HAIR = 1 + 1e-7;

function linesOf(shape: Shape, offsetM: number): Guides['lines'][number][] {
  const lines: Guides['lines'][number][] = [];
  for (const { x, y } of shape.paths) {
    for (let i = 0; i + 1 < x.length; i++) {
      const [ax, ay, bx, by] = [x[i], y[i], x[i + 1], y[i + 1]] as [number, number, number, number];
      const length = Math.hypot(bx - ax, by - ay);
      if (length === 0) continue;
      for (const side of offsetM === 0 ? [0] : [offsetM * HAIR, -offsetM * HAIR]) {
        const ox = (-(by - ay) * side) / length;
        const oy = ((bx - ax) * side) / length;
        lines.push([ax + ox, ay + oy, bx + ox, by + oy]);
      }
    }
  }
  return lines;
}

/** Every border of a field. */
export function guidesOf(field: CostField): Guides {
  const circles = [...field.discs, ...(field.pricedDiscs ?? [])].map(({ x, y, radiusM }) => ({
    x,
    y,
    r: radiusM * HAIR,
  }));
  for (const { shape, clearanceM } of field.keepouts) {
    for (const path of shape.paths) {
      path.x.forEach((x, i) => {
        circles.push({ x, y: path.y[i] as number, r: Math.max(1e-6, clearanceM * HAIR) });
      });
    }
  }
  return {
    lines: [
      ...field.areas.flatMap(({ shape }) => linesOf(shape, 0)),
      ...field.keepouts.flatMap(({ shape, clearanceM }) => linesOf(shape, clearanceM)),
    ],
    circles,
  };
}

/** Meeting point of the tangents from p and q to a circle, passing it on one side; null where there is none. */
function tangentsMeet(p: Point, q: Point, x: number, y: number, r: number, side: number): Point | null {
  const dp = Math.hypot(x - p[0], y - p[1]);
  const dq = Math.hypot(x - q[0], y - q[1]);
  if (dp < r || dq < r) return null;
  const a = Math.atan2(y - p[1], x - p[0]) + side * Math.asin(Math.min(1, r / dp));
  const b = Math.atan2(y - q[1], x - q[0]) - side * Math.asin(Math.min(1, r / dq));
  const det = Math.cos(a) * Math.sin(b) - Math.sin(a) * Math.cos(b);
  if (Math.abs(det) < 1e-9) return null;
  const t = ((q[0] - p[0]) * Math.sin(b) - (q[1] - p[1]) * Math.cos(b)) / det;
  return t > 0 ? [p[0] + t * Math.cos(a), p[1] + t * Math.sin(a)] : null;
}

/** Places on borders near a vertex between p and q, within about `step` of it, where a better one may be. */
export function guided(guides: Guides, p: Point, at: Point, q: Point, step: number): Point[] {
  const places: Point[] = [];
  for (const [ax, ay, bx, by] of guides.lines) {
    const dx = bx - ax;
    const dy = by - ay;
    const length2 = dx * dx + dy * dy;
    const t = ((at[0] - ax) * dx + (at[1] - ay) * dy) / length2;
    const reach = step / Math.sqrt(length2);
    if (t < -reach || t > 1 + reach) continue;
    const ox = at[0] - ax - t * dx;
    const oy = at[1] - ay - t * dy;
    if (ox * ox + oy * oy > 4 * step * step) continue;
    for (const u of [t, t + reach, t - reach]) {
      const on = Math.min(1, Math.max(0, u));
      places.push([ax + on * dx, ay + on * dy]);
    }
  }
  for (const { x, y, r } of guides.circles) {
    const d = Math.hypot(at[0] - x, at[1] - y);
    if (d > 2 * r + 4 * step) continue;
    for (const side of [1, -1]) {
      const meet = tangentsMeet(p, q, x, y, r, side);
      if (meet !== null && Math.hypot(meet[0] - at[0], meet[1] - at[1]) < 4 * step + r) places.push(meet);
    }
  }
  return places;
}
