import type { FittingType, LonLat, RankResult, SegmentResult, Site } from '@rootreach/core';
import { el, type Markup } from '../markup/markup.js';
import { bandStroke, ink, type Stroke } from './ink.js';
import { pathThrough } from './lot-ground.js';
import type { View } from './view.js';

const pathOf = (segment: SegmentResult): LonLat[] =>
  segment.geometry.coordinates.map(([lon, lat]) => [lon as number, lat as number]);

/** True where a path's box meets the view. */
function touches(view: View, path: readonly LonLat[]): boolean {
  const points = path.map(view.at);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return (
    Math.max(...xs) >= 0 &&
    Math.min(...xs) <= view.width &&
    Math.max(...ys) >= 0 &&
    Math.min(...ys) <= view.height
  );
}

/** One pen over another: casing, stroke, pale centre. */
export function strokes(d: string, { width, color, casing, centre, dash }: Stroke): Markup[] {
  const pen = (stroke: string, thick: number, cap: string) =>
    el('path', {
      d,
      fill: 'none',
      stroke,
      'stroke-width': thick,
      'stroke-linecap': cap,
      'stroke-linejoin': 'round',
      'stroke-dasharray': dash ?? undefined,
    });
  return [
    ...(casing ? [pen(casing.color, casing.width, 'round')] : []),
    pen(color, width, dash ? 'butt' : 'round'),
    ...(centre ? [pen(centre.color, centre.width, 'butt')] : []),
  ];
}

/** What is drawn last lies on top. */
const FROM_CALM_TO_BAD = ['leave', 'cannot-say', 'watch', 'inspect', 'act'] as const;

/** Lines of the whole site as thin ink where they were not scored here, and the stretches by band. */
export function linesOf(view: View, site: Site, result: RankResult): Markup[] {
  const segments = result.segments.filter((segment) => touches(view, pathOf(segment)));
  const drains = site.drains.filter(({ path }) => touches(view, path));
  const bare = drains.map(({ path }) =>
    el('path', { d: pathThrough(view, path), fill: 'none', stroke: ink.soft, 'stroke-width': 0.7 }),
  );
  const scored = FROM_CALM_TO_BAD.flatMap((band) =>
    segments
      .filter((segment) => segment.band === band)
      .flatMap((segment) => strokes(pathThrough(view, pathOf(segment)), bandStroke[band])),
  );
  return [...bare, ...scored];
}

/** Our own small marks: a box for a basin, a ring for a cleanout, a drop for a downspout, an arrow-head for the end. */
export function fittingMark(type: FittingType, x: number, y: number): Markup {
  const pen = { fill: '#fffdf8', stroke: ink.ink, 'stroke-width': 1.1 };
  switch (type) {
    case 'basin':
      return el('path', { d: `M${x - 4} ${y - 4}h8v8h-8zM${x - 4} ${y}h8M${x} ${y - 4}v8`, ...pen });
    case 'cleanout':
      return el('circle', { cx: x, cy: y, r: 3.8, ...pen, 'stroke-width': 1.8 });
    case 'downspout':
      return el('path', { d: `M${x} ${y - 5}l3.6 5a3.9 3.9 0 1 1 -7.2 0z`, ...pen });
    case 'outlet':
      return el('path', { d: `M${x - 5} ${y - 4}h10l-5 8.5z`, ...pen });
    default:
      return el('circle', { cx: x, cy: y, r: 1.8, fill: ink.ink });
  }
}

export function fittingsOf(view: View, site: Site): Markup[] {
  const rounded = (value: number): number => Math.round(value * 10) / 10;
  return site.fittings.flatMap(({ type, position }) => {
    const point = view.at(position);
    return view.holds(point) ? [fittingMark(type, rounded(point[0]), rounded(point[1]))] : [];
  });
}
