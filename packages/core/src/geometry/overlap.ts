import { chordOf } from './chord.js';
import { type Interval, unionOf } from './intervals.js';
import type { Polyline } from './polyline.js';

/** A circle in plane metres. */
export interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radiusM: number;
}

/**
 * Stretches of a line, by station in metres, that lie inside any of the circles: joined where they touch, in order. Exact
 * for circles and straight edges.
 * @param line in plane metres.
 * @param circles in the same plane.
 */
export function stretchesInside(line: Polyline, circles: readonly Circle[]): Interval[] {
  const found: Interval[] = [];
  for (const { x, y, radiusM } of circles) {
    for (let i = 0; i + 1 < line.s.length; i++) {
      const s0 = line.s[i] as number;
      const length = (line.s[i + 1] as number) - s0;
      const chord = chordOf(
        line.x[i] as number,
        line.y[i] as number,
        line.x[i + 1] as number,
        line.y[i + 1] as number,
        x,
        y,
        radiusM,
      );
      if (chord) found.push([s0 + chord[0] * length, s0 + chord[1] * length]);
    }
  }
  return unionOf(found);
}
