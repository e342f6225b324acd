import type { LineResult, LonLat } from '@rootreach/core';
import * as L from 'leaflet';
import { legsM, lonLat } from '../draw/flat.js';
import { latLng } from './ground.js';
import { ink } from './ink.js';
import type { Plan } from './plan.js';

const SPOT_PIXELS = 9;
const STRETCH_PIXELS = 15;

/** The part of a path between two distances from its beginning, metres. */
export function partOf(path: readonly LonLat[], fromM: number, toM: number): LonLat[] {
  const part: LonLat[] = [];
  let before = 0;
  legsM(path).forEach((leg, i) => {
    const [a, b] = [path[i] as LonLat, path[i + 1] as LonLat];
    const at = (m: number): LonLat => {
      const t = leg === 0 ? 0 : Math.min(1, Math.max(0, (m - before) / leg));
      return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    };
    const last = i === path.length - 2;
    const starts = part.length === 0 && (fromM < before + leg || last);
    if (starts) part.push(at(fromM));
    if (part.length > 0 && toM > before) part.push(at(toM));
    before += leg;
  });
  return part;
}

/** Where one entry of the camera lies on the lines; null clears it. */
export function drawLanding(
  plan: Plan,
  group: L.LayerGroup,
  lines: readonly LineResult[],
  finding: string | null,
): void {
  group.clearLayers();
  if (finding === null) return;
  const base = { renderer: plan.renderer('fittings', false), pane: 'fittings', interactive: false };
  const color = ink('focus');
  for (const { geometry, findings } of lines) {
    for (const { id, fromM, toM } of findings) {
      if (id !== finding) continue;
      const path = partOf(
        geometry.coordinates.map((at) => lonLat([...at])),
        fromM,
        toM,
      ).map(latLng);
      L.polyline(path, { ...base, color, weight: STRETCH_PIXELS, opacity: 0.55 }).addTo(group);
      for (const end of [path[0], path.at(-1)]) {
        if (end)
          L.circleMarker(end, { ...base, color, weight: 3, fill: false, radius: SPOT_PIXELS }).addTo(group);
      }
    }
  }
}
