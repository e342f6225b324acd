import type { Units } from '@rootreach/core';
import {
  fromFeet,
  type LonLat,
  type RankResult,
  type SegmentResult,
  type Site,
  type TreeZones,
} from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import { speciesOf } from '../say/trees-said.js';
import type { Words } from '../words/words.js';
import { ink } from './ink.js';
import { type LabelKind, LabelRoom, labelAt, middlesAbout, widthOf } from './labels.js';
import { gridLines, groundOf, groundPatterns } from './lot-ground.js';
import { fittingsOf, linesOf } from './lot-lines.js';
import { limitCircles, rootWash, treeMarks, washes } from './lot-trees.js';
import { type View, viewOf, type Xy } from './view.js';
import { drawnEllipse } from './wobble.js';

/** What the plan of a lot is drawn from. */
export interface LotPictureInput {
  readonly site: Site;
  readonly result: RankResult;
  /** The stretch to mark; none if not given. */
  readonly segment?: SegmentResult;
  readonly units: Units;
  readonly words: Words;
  /** Least and greatest height in the drawing's own pixels, 560 wide. */
  readonly heights?: { readonly least: number; readonly most: number };
  /** The stretch and what lies about it, instead of the whole lot; then every fitting is named. */
  readonly close?: boolean;
  /** Trees whose circles of three, six and twelve trunk diameters are drawn. */
  readonly limits?: readonly TreeZones[];
}

const HEIGHTS = { least: 290, most: 356 };
const SPOT: LabelKind = { size: 15, fill: ink.pen, weight: 700 };
const TREE: LabelKind = { size: 12, fill: ink.tree, italic: true };
const PLACE: LabelKind = { size: 11, fill: ink.soft, spacing: 0.6 };
const FITTING: LabelKind = { size: 11, fill: ink.ink };
/** A tree that brings less than this of the risk need not stand in the picture (judgement). */
const SEEN_SHARE = 0.1;

const positionsOf = (segment: SegmentResult): LonLat[] =>
  segment.geometry.coordinates.map(([lon, lat]) => [lon as number, lat as number]);

/** Points that must be seen. */
function spotOf({ result, segment }: LotPictureInput): LonLat[] {
  if (segment === undefined) return [];
  const bearing = new Set(segment.trees.filter(({ share }) => share >= SEEN_SHARE).map(({ id }) => id));
  const stems = result.trees.filter(({ id }) => bearing.has(id)).map(({ lon, lat }): LonLat => [lon, lat]);
  return [...positionsOf(segment), ...stems];
}

/** A ring drawn twice about the stretch, as with a pen on a plan, and the words beside it. */
function ringOf(view: View, segment: SegmentResult, room: LabelRoom, words: Words): Markup[] {
  const points = positionsOf(segment).map(view.at);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const x = (Math.min(...xs) + Math.max(...xs)) / 2;
  const y = (Math.min(...ys) + Math.max(...ys)) / 2;
  const rx = Math.max(15, (Math.max(...xs) - Math.min(...xs)) / 2 + 11);
  const ry = Math.max(15, (Math.max(...ys) - Math.min(...ys)) / 2 + 11);
  const pen = { fill: 'none', stroke: ink.pen, 'stroke-linecap': 'round' } as const;
  room.take(x - rx, y - ry, x + rx, y + ry);
  const label = words.picture.spot;
  const half = widthOf(label, SPOT.size) / 2;
  const middles = [6, 16, 30].flatMap((away): Xy[] => [
    [x + rx + half + away, y],
    [x - rx - half - away, y],
    [x, y + ry + SPOT.size / 2 + away],
    [x, y - ry - SPOT.size / 2 - away],
    [x + rx + half + away, y + ry],
    [x - rx - half - away, y + ry],
    [x + rx + half + away, y - ry],
    [x - rx - half - away, y - ry],
  ]);
  const at = room.place(label, SPOT.size, middles);
  return [
    el('path', { d: drawnEllipse(`${segment.id} a`, [x, y], [rx, ry], 0.05), ...pen, 'stroke-width': 2.2 }),
    el('path', {
      d: drawnEllipse(`${segment.id} b`, [x, y], [rx + 2, ry + 2], 0.05),
      ...pen,
      'stroke-width': 1,
    }),
    ...(at === null ? [] : [labelAt(at, label, SPOT)]),
  ];
}

/** Middle of what is seen of a shape. */
function seenMiddle(view: View, positions: readonly LonLat[]): { middle: Xy; wide: number; high: number } {
  const clamp = (value: number, most: number): number => Math.max(0, Math.min(most, value));
  const points = positions.map(view.at);
  const xs = points.map(([x]) => clamp(x, view.width));
  const ys = points.map(([, y]) => clamp(y, view.height));
  const [west, east, north, south] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { middle: [(west + east) / 2, (north + south) / 2], wide: east - west, high: south - north };
}

/** Names of buildings, drives and streets, where they have room inside their shape. */
function placeNames(view: View, { obstacles }: Site, room: LabelRoom): Markup[] {
  const named = obstacles
    .filter(
      ({ type, name }) => name !== null && (type === 'building' || type === 'paving' || type === 'pool'),
    )
    .sort((a, b) => Number(b.type === 'building') - Number(a.type === 'building'));
  return named.flatMap(({ name, shape }) => {
    const { middle, wide, high } = seenMiddle(view, shape.type === 'area' ? shape.rings.flat() : shape.path);
    const label = name as string;
    if (wide < widthOf(label, PLACE.size) + 4 || high < PLACE.size + 2) return [];
    const at = room.place(label, PLACE.size, [
      middle,
      [middle[0], middle[1] + high / 4],
      [middle[0], middle[1] - high / 4],
    ]);
    return at === null ? [] : [labelAt(at, label, PLACE)];
  });
}

/** Steps along the lines, in the drawing's pixels, at which names keep clear of them. */
const SPARE_STEP = 10;

/** Where names should not lie: along the lines, on stems and fittings. */
function pointsToSpare(view: View, { site, result }: LotPictureInput): Xy[] {
  const alongLines = site.drains.flatMap(({ path }) => {
    const points = path.map(view.at);
    return points.flatMap(([x, y], i): Xy[] => {
      const [toX, toY] = points[i + 1] ?? [x, y];
      const steps = Math.max(1, Math.ceil(Math.hypot(toX - x, toY - y) / SPARE_STEP));
      return Array.from({ length: steps }, (_, k) => [
        x + ((toX - x) * k) / steps,
        y + ((toY - y) * k) / steps,
      ]);
    });
  });
  const stems = result.trees.map(({ lon, lat }) => view.at([lon, lat]));
  const fittings = site.fittings.map(({ position }) => view.at(position));
  return [...alongLines, ...stems, ...fittings].filter(view.holds);
}

function treeNames(view: View, input: LotPictureInput, room: LabelRoom): Markup[] {
  const { result, segment, words } = input;
  const shares = new Map(segment?.trees.map(({ id, share }) => [id, share]));
  const said = new Set<string>();
  const order = [...result.trees].sort((a, b) => (shares.get(b.id) ?? 0) - (shares.get(a.id) ?? 0));
  return order.flatMap((tree) => {
    const point = view.at([tree.lon, tree.lat]);
    if (!view.holds(point)) return [];
    const label = words.tree(tree.name, speciesOf(input.site, tree.id));
    // a row of the same kind is named once
    if (said.has(label) && (shares.get(tree.id) ?? 0) < SEEN_SHARE) return [];
    said.add(label);
    const at = room.place(label, TREE.size, middlesAbout(point, label, TREE.size, 6));
    return at === null ? [] : [labelAt(at, label, TREE)];
  });
}

/** The way in that the crew would use; all fittings on a plan of the spot alone. */
function fittingNames(view: View, { site, segment, close }: LotPictureInput, room: LabelRoom): Markup[] {
  const named = site.fittings.filter(({ id }) => close === true || id === segment?.reach.from);
  return named.flatMap(({ id, position }) => {
    const point = view.at(position);
    if (!view.holds(point)) return [];
    const at = room.place(id, FITTING.size, middlesAbout(point, id, FITTING.size, 10));
    return at === null ? [] : [labelAt(at, id, FITTING)];
  });
}

/** A length that fits, in whole tens or fives. */
function scaleBar(view: View, units: Units, room: LabelRoom): Markup[] {
  const steps = units === 'us' ? [5, 10, 20, 30, 50, 100] : [1, 2, 5, 10, 20, 50];
  const most = 110 / view.scale;
  const fits = steps.filter((step) => (units === 'us' ? fromFeet(step) : step) <= most);
  const step = fits.at(-1) ?? (steps[0] as number);
  const long = (units === 'us' ? fromFeet(step) : step) * view.scale;
  const [x, y] = [14, view.height - 14];
  const label = `${step} ${units === 'us' ? 'ft' : 'm'}`;
  room.take(x - 6, y - 14, x + long + widthOf(label, 11) + 12, y + 8);
  return [
    el('rect', {
      x: x - 6,
      y: y - 12,
      width: long + widthOf(label, 11) + 16,
      height: 20,
      fill: ink.paper,
      'fill-opacity': 0.85,
    }),
    el('rect', {
      x,
      y: y - 4,
      width: long / 2,
      height: 4,
      fill: ink.ink,
      stroke: ink.ink,
      'stroke-width': 0.8,
    }),
    el('rect', {
      x: x + long / 2,
      y: y - 4,
      width: long / 2,
      height: 4,
      fill: ink.paper,
      stroke: ink.ink,
      'stroke-width': 0.8,
    }),
    el('text', { x: x + long + 6, y: y + 2, 'font-size': 11, fill: ink.ink }, text(label)),
  ];
}

function northArrow(view: View, words: Words, room: LabelRoom): Markup[] {
  const [x, y] = [view.width - 20, 26];
  room.take(x - 14, y - 22, x + 14, y + 26);
  return [
    el('circle', { cx: x, cy: y, r: 14, fill: ink.paper, 'fill-opacity': 0.85 }),
    el('path', { d: `M${x} ${y - 13}l5 13h-10z`, fill: ink.ink }),
    el('path', { d: `M${x} ${y + 12}l5 -12h-10z`, fill: 'none', stroke: ink.ink, 'stroke-width': 0.8 }),
    el(
      'text',
      { x, y: y + 25, 'font-size': 11, 'text-anchor': 'middle', fill: ink.ink },
      text(words.picture.north),
    ),
  ];
}

/**
 * The lot as a plan: ground, trees with the wash of their roots, lines by band, fittings, the spot ringed, names where
 * they have room, north up and a scale bar. An SVG of its own, 560 wide, that needs nothing else.
 */
export function lotPicture(input: LotPictureInput): Markup {
  const { site, result, segment, units, words } = input;
  const view = viewOf(site, spotOf(input), input.heights ?? HEIGHTS, input.close ?? false);
  const room = new LabelRoom(view.width, view.height);
  for (const [x, y] of pointsToSpare(view, input)) room.spare(x, y, 5);
  const north = northArrow(view, words, room);
  const bar = scaleBar(view, units, room);
  const ring = segment === undefined ? [] : ringOf(view, segment, room, words);
  const names = [
    ...treeNames(view, input, room),
    ...fittingNames(view, input, room),
    ...placeNames(view, site, room),
  ];
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${view.width} ${Math.round(view.height)}`,
    role: 'img',
    'aria-label': words.picture.lot,
    class: 'lot',
    'font-family': 'inherit',
  };
  return el(
    'svg',
    attributes,
    el('defs', {}, groundPatterns(), rootWash()),
    el('rect', { width: view.width, height: view.height, fill: ink.paper }),
    gridLines(view, units),
    groundOf(view, site),
    washes(view, result.trees),
    treeMarks(view, result.trees),
    limitCircles(view, input.limits ?? []),
    linesOf(view, site, result),
    fittingsOf(view, site),
    names,
    ring,
    bar,
    north,
    el('rect', {
      x: 0.6,
      y: 0.6,
      width: view.width - 1.2,
      height: Math.round(view.height) - 1.2,
      fill: 'none',
      stroke: ink.ink,
      'stroke-width': 1.2,
    }),
  );
}
