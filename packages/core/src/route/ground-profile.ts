import { lengthOf, type Polyline, pointAt } from '../geometry/polyline.js';
import type { GroundProfile } from '../model/ground.js';
import type { GroundSurface } from './ground-surface.js';

/** Ground along a line, at its vertices and at least every `stepM` metres. */
export function groundAlong(surface: GroundSurface, line: Polyline, stepM: number): GroundProfile {
  if (!(stepM > 0)) throw new RangeError(`stepM must be above 0, got ${stepM}`);
  const stationM: number[] = [0];
  for (let i = 1; i < line.s.length; i++) {
    const from = line.s[i - 1] as number;
    const to = line.s[i] as number;
    const parts = Math.max(1, Math.ceil((to - from) / stepM - 1e-9));
    if (to <= from) continue;
    for (let k = 1; k <= parts; k++) stationM.push(k === parts ? to : from + ((to - from) * k) / parts);
  }
  if (lengthOf(line) <= 0) throw new RangeError('line must have a length');
  return {
    stationM,
    groundM: stationM.map((s) => surface.elevationAt(...pointAt(line, s))),
    basis: surface.basis,
  };
}
