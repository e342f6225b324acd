import { fromFeet, type LonLat, type Obstacle, type Site, type Units } from '@rootreach/core';
import { el, type Markup } from '../markup/markup.js';
import { ink } from './ink.js';
import type { View } from './view.js';

const near = (value: number): string => String(Math.round(value * 10) / 10);

/** Path through positions in the view. */
export function pathThrough(view: View, positions: readonly LonLat[], closed = false): string {
  const points = positions.map((position, i) => {
    const [x, y] = view.at(position);
    return `${i === 0 ? 'M' : 'L'}${near(x)} ${near(y)}`;
  });
  return points.join('') + (closed ? 'Z' : '');
}

/** Hatches, dots and the wash of roots that the drawing's parts refer to. */
export function groundPatterns(): Markup[] {
  const hatch = el('pattern', { id: 'lot-hatch', width: 6, height: 6, patternUnits: 'userSpaceOnUse' }, [
    el('rect', { width: 6, height: 6, fill: ink.building }),
    el('path', {
      d: 'M-1 7L7 -1M-1 1L1 -1M5 7L7 5',
      stroke: ink.buildingEdge,
      'stroke-width': 0.5,
      fill: 'none',
    }),
  ]);
  const dots = el('pattern', { id: 'lot-dots', width: 7, height: 7, patternUnits: 'userSpaceOnUse' }, [
    el('rect', { width: 7, height: 7, fill: ink.paving }),
    el('circle', { cx: 1.5, cy: 1.5, r: 0.5, fill: ink.pavingEdge }),
    el('circle', { cx: 5, cy: 5, r: 0.5, fill: ink.pavingEdge }),
  ]);
  const waves = el('pattern', { id: 'lot-waves', width: 12, height: 6, patternUnits: 'userSpaceOnUse' }, [
    el('rect', { width: 12, height: 6, fill: ink.pool }),
    el('path', { d: 'M0 3Q3 0 6 3T12 3', stroke: ink.utility, 'stroke-width': 0.5, fill: 'none' }),
  ]);
  return [hatch, dots, waves];
}

/** Hairlines every ten feet or five metres. */
export function gridLines(view: View, units: Units): Markup {
  const step = (units === 'us' ? fromFeet(10) : 5) * view.scale;
  const lines: string[] = [];
  for (let x = (view.width / 2) % step; x < view.width; x += step)
    lines.push(`M${near(x)} 0V${near(view.height)}`);
  for (let y = (view.height / 2) % step; y < view.height; y += step)
    lines.push(`M0 ${near(y)}H${view.width}`);
  return el('path', { d: lines.join(''), stroke: ink.grid, 'stroke-width': 0.6, fill: 'none' });
}

const AREAS: Partial<Record<Obstacle['type'], { fill: string; edge: string; width: number }>> = {
  paving: { fill: 'url(#lot-dots)', edge: ink.pavingEdge, width: 0.7 },
  pool: { fill: 'url(#lot-waves)', edge: ink.utility, width: 0.8 },
  building: { fill: 'url(#lot-hatch)', edge: ink.buildingEdge, width: 1.3 },
};

const PENS: Partial<Record<Obstacle['type'], { color: string; width: number; dash?: string }>> = {
  boundary: { color: ink.soft, width: 0.9, dash: '9 3 2 3' },
  wall: { color: ink.buildingEdge, width: 2.4 },
  utility: { color: ink.utility, width: 1.1, dash: '7 3 1.5 3 1.5 3' },
  paving: { color: ink.pavingEdge, width: 2 },
};

function drawn(view: View, { type, shape }: Obstacle): Markup[] {
  const paths = shape.type === 'area' ? shape.rings : [shape.path];
  const area = shape.type === 'area' ? AREAS[type] : undefined;
  const pen = PENS[type] ?? { color: ink.buildingEdge, width: 1.2 };
  return paths.map((path) =>
    area
      ? el('path', {
          d: pathThrough(view, path, true),
          fill: area.fill,
          stroke: area.edge,
          'stroke-width': area.width,
        })
      : el('path', {
          d: pathThrough(view, path, shape.type === 'area'),
          fill: 'none',
          stroke: pen.color,
          'stroke-width': pen.width,
          'stroke-dasharray': 'dash' in pen ? pen.dash : undefined,
        }),
  );
}

/** What lies on top of what. */
const ORDER: readonly Obstacle['type'][] = ['paving', 'pool', 'building', 'wall', 'boundary', 'utility'];

/** Paving, buildings, pools, walls, borders and utilities, each with its own pattern; then barriers. */
export function groundOf(view: View, { obstacles, barriers }: Site): Markup[] {
  const shapes = ORDER.flatMap((type) =>
    obstacles.filter((obstacle) => obstacle.type === type).flatMap((obstacle) => drawn(view, obstacle)),
  );
  const walls = barriers.map(({ path }) =>
    el('path', {
      d: pathThrough(view, path),
      fill: 'none',
      stroke: ink.tree,
      'stroke-width': 2.6,
      'stroke-dasharray': '2 2',
    }),
  );
  return [...shapes, ...walls];
}
