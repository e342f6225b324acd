import { rootDensity, type TreeZones } from '@rootreach/core';
import { el, type Markup } from '../markup/markup.js';
import { ink } from './ink.js';
import { labelAt } from './labels.js';
import type { View } from './view.js';
import { drawnEllipse } from './wobble.js';

/** Strength of the wash at the stem, and how many steps follow the curve outward. */
const FULL = 0.5;
const STEPS = 14;
/** A canopy's line may waver this much: it is never round on the ground. */
const CANOPY_SHAKE = 0.025;
/** A stem is drawn to scale, but never lost. */
const LEAST_STEM = 2.2;

/** The wash that all trees share: as strong as the model's own root curve, from the stem to the reach. */
export function rootWash(): Markup {
  const stops = Array.from({ length: STEPS + 1 }, (_, i) => {
    const at = i / STEPS;
    const faded = at > 0.9 ? (1 - at) / 0.1 : 1;
    return el('stop', {
      offset: at,
      'stop-color': ink.root,
      'stop-opacity': (FULL * rootDensity(at, 1) * faded).toFixed(3),
    });
  });
  return el('radialGradient', { id: 'lot-wash' }, stops);
}

const inView = (view: View, tree: TreeZones, radiusM: number): boolean => {
  const [x, y] = view.at([tree.lon, tree.lat]);
  const r = radiusM * view.scale;
  return x + r > 0 && x - r < view.width && y + r > 0 && y - r < view.height;
};

/** Roots as a wash out to the reach; under the lines. */
export const washes = (view: View, trees: readonly TreeZones[]): Markup[] =>
  trees
    .filter((tree) => inView(view, tree, tree.reachM))
    .map((tree) => {
      const [cx, cy] = view.at([tree.lon, tree.lat]);
      return el('circle', { cx, cy, r: tree.reachM * view.scale, fill: 'url(#lot-wash)' });
    });

/** Limits by the trunk, in trunk diameters: no digging, an arborist first, by hand (see the cautions). */
const LIMITS = [
  { trunks: 3, width: 2, dash: undefined },
  { trunks: 6, width: 1.4, dash: '7 4' },
  { trunks: 12, width: 1.2, dash: '2 4' },
] as const;

/** Circles of three, six and twelve trunk diameters about each stem, with the number on them. */
export const limitCircles = (view: View, trees: readonly TreeZones[]): Markup[] =>
  trees.flatMap((tree) =>
    LIMITS.flatMap(({ trunks, width, dash }) => {
      const [cx, cy] = view.at([tree.lon, tree.lat]);
      const r = trunks * tree.stemDiameterM * view.scale;
      const pen = { fill: 'none', stroke: ink.pen, 'stroke-width': width, 'stroke-dasharray': dash };
      const top = { x: cx, y: cy - r };
      const said = view.holds([top.x, top.y - 8])
        ? [labelAt([top.x, top.y], `${trunks}×`, { size: 11, fill: ink.pen, weight: 700 })]
        : [];
      return [el('circle', { cx, cy, r, ...pen }), ...said];
    }),
  );

/** Edge of the canopy, protection circle in dots, and the stem to scale. */
export const treeMarks = (view: View, trees: readonly TreeZones[]): Markup[] =>
  trees
    .filter((tree) => inView(view, tree, Math.max(tree.driplineM, tree.protectionM)))
    .flatMap((tree) => {
      const [x, y] = view.at([tree.lon, tree.lat]);
      const canopy = tree.driplineM * view.scale;
      return [
        el('path', {
          d: drawnEllipse(tree.id, [x, y], [canopy, canopy], CANOPY_SHAKE, 16),
          fill: 'none',
          stroke: ink.tree,
          'stroke-width': 1.1,
        }),
        el('circle', {
          cx: x,
          cy: y,
          r: tree.protectionM * view.scale,
          fill: 'none',
          stroke: ink.tree,
          'stroke-width': 0.8,
          'stroke-dasharray': '1 3',
          'stroke-linecap': 'round',
        }),
        el('circle', {
          cx: x,
          cy: y,
          r: Math.max(LEAST_STEM, (tree.stemDiameterM / 2) * view.scale),
          fill: ink.tree,
        }),
      ];
    });
