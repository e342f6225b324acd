import type { Obstacle, SegmentResult, Site, TreeZones } from '@rootreach/core';
import * as L from 'leaflet';
import { words } from '../words/words.js';
import { shownFittings } from './fittings.js';
import { latLng } from './ground.js';
import type { Plan } from './plan.js';

type Shift = readonly [number, number];

interface Label {
  readonly at: L.LatLng;
  readonly text: string;
  readonly className: string;
  /** From the point to the middle of the text, pixels; the first that is free is taken. */
  readonly shifts: readonly Shift[];
  readonly size: readonly [number, number];
}

const MOST_LABELS = 140;
const TREE_NAMES_BELOW_METRES_PER_PIXEL = 0.11;
/** Closer than this, tags keep clear of stems and lines too; further off there would be no room left. */
const CLEAR_BELOW_METRES_PER_PIXEL = 0.2;
const GROUND_NAMES_BELOW_METRES_PER_PIXEL = 0.5;
/** Tags for the worst stretches: no more than a crew can do in a day. */
const MOST_TAGS = 12;
const LETTER_PIXELS = 7.2;
const TAG_GAP = 23;
const MARK_SIZE = [13, 13] as const;
/** A row of like trees is named once in this distance. */
const SAME_NAME_PIXELS = 150;

const textSize = (text: string): [number, number] => [text.length * LETTER_PIXELS + 8, 16];

function middle(segment: SegmentResult): L.LatLng {
  const points = segment.geometry.coordinates.map((point) => L.latLng(latLng(point)));
  const bounds = L.latLngBounds(points);
  return points.length === 2
    ? bounds.getCenter()
    : (points[Math.floor(points.length / 2)] ?? bounds.getCenter());
}

/** Beside the line, not on it: across its direction on the screen, to the right if that is free, else further out. */
function beside(map: L.Map, segment: SegmentResult): Shift[] {
  const path = segment.geometry.coordinates;
  const from = map.latLngToContainerPoint(latLng(path[0] ?? []));
  const to = map.latLngToContainerPoint(latLng(path.at(-1) ?? []));
  const run = to.distanceTo(from) || 1;
  const across: [number, number] = [(from.y - to.y) / run, (to.x - from.x) / run];
  const turn = across[0] < -0.2 || (across[0] < 0.2 && across[1] > 0) ? -1 : 1;
  return [1, -1, 1.7, -1.7].map((way) => [
    across[0] * turn * way * TAG_GAP,
    across[1] * turn * way * TAG_GAP,
  ]);
}

function tags(map: L.Map, segments: readonly SegmentResult[]): Label[] {
  return segments
    .filter((segment) => segment.band === 'act' || segment.band === 'inspect')
    .slice(0, MOST_TAGS)
    .map((segment) => ({
      at: middle(segment),
      text: String(segment.rank),
      className: `tag tag-${segment.band}`,
      shifts: beside(map, segment),
      size: [24, 24],
    }));
}

/** A name lies inside its building or paving, level or else upright, or it is left out. */
function groundNames(map: L.Map, obstacles: readonly Obstacle[]): Label[] {
  return obstacles.flatMap((obstacle) => {
    if (obstacle.name === null || obstacle.shape.type !== 'area') return [];
    const bounds = L.latLngBounds((obstacle.shape.rings[0] ?? []).map(latLng));
    const room = map
      .latLngToContainerPoint(bounds.getSouthEast())
      .subtract(map.latLngToContainerPoint(bounds.getNorthWest()));
    const [long, high] = textSize(obstacle.name);
    const label = { at: bounds.getCenter(), text: obstacle.name, shifts: [[0, 0]] as const };
    if (long <= room.x && high <= room.y)
      return [{ ...label, className: 'name name-ground', size: [long, high] }];
    if (long > room.y || high > room.x) return [];
    return [{ ...label, className: 'name name-ground name-upright', size: [high, long] }];
  });
}

function treeNames(trees: readonly TreeZones[]): Label[] {
  return trees.map((tree) => ({
    at: L.latLng(tree.lat, tree.lon),
    text: words.value.model.tree(tree.name),
    className: 'name name-tree',
    shifts: [
      [0, 17],
      [0, -17],
    ],
    size: textSize(words.value.model.tree(tree.name)),
  }));
}

function fittingNames(site: Site): Label[] {
  return site.fittings
    .filter((fitting) => fitting.type === 'basin' || fitting.type === 'cleanout')
    .map((fitting) => ({
      at: L.latLng(latLng(fitting.position)),
      text: fitting.id,
      className: 'name name-fitting',
      shifts: [1, -1].map((way) => [way * (textSize(fitting.id)[0] / 2 + 12), 0]),
      size: textSize(fitting.id),
    }));
}

const boxAt = (centre: L.Point, [width, height]: readonly [number, number]): L.Bounds =>
  L.bounds(centre.subtract([width / 2, height / 2]), centre.add([width / 2, height / 2]));

/** Keeps what is taken, so that no label covers a mark or an earlier label. */
class Places {
  private readonly taken: L.Bounds[];
  private readonly named: (readonly [string, L.Point])[] = [];

  constructor(
    private readonly map: L.Map,
    marks: readonly L.LatLng[],
  ) {
    this.taken = marks.map((at) => boxAt(map.latLngToContainerPoint(at), MARK_SIZE));
  }

  /** The first free shift, now taken; undefined where there is none. */
  take(label: Label): Shift | undefined {
    const point = this.map.latLngToContainerPoint(label.at);
    const near = ([text, at]: readonly [string, L.Point]) =>
      text === label.text && at.distanceTo(point) < SAME_NAME_PIXELS;
    if (this.named.some(near)) return undefined;
    const view = L.bounds([0, 0], this.map.getSize());
    return label.shifts.find(([x, y]) => {
      const box = boxAt(point.add([x, y]), label.size);
      if (!view.overlaps(box) || this.taken.some((other) => other.overlaps(box))) return false;
      this.taken.push(box);
      this.named.push([label.text, point]);
      return true;
    });
  }
}

function markerOf(label: Label, [x, y]: Shift): L.Marker {
  const [width, height] = label.size;
  const html = document.createElement('span');
  html.textContent = label.text;
  const icon = L.divIcon({
    html,
    className: label.className,
    iconSize: [width, height],
    iconAnchor: [width / 2 - x, height / 2 - y],
  });
  return L.marker(label.at, { icon, pane: 'labels', interactive: false, keyboard: false });
}

/** Two labels of one key look the same and lie at the same place. */
const keyOf = ({ at, text, className, size }: Label, shift: Shift): string =>
  [at.lat, at.lng, text, className, ...size, ...shift.map(Math.round)].join('|');

/** What the labels hang on. */
export interface Labelled {
  readonly site: Site;
  readonly trees: readonly TreeZones[];
  readonly segments: readonly SegmentResult[];
  readonly metresPerPixel: number;
}

function wantedLabels(map: L.Map, { site, trees, segments, metresPerPixel }: Labelled): Label[] {
  const near = metresPerPixel < TREE_NAMES_BELOW_METRES_PER_PIXEL;
  return [
    ...tags(map, segments),
    ...(near ? [...fittingNames(site), ...treeNames(trees)] : []),
    ...(metresPerPixel < GROUND_NAMES_BELOW_METRES_PER_PIXEL ? groundNames(map, site.obstacles) : []),
  ];
}

/** Names and rank tags, each put down only where it covers nothing. A label that stays where it was is kept. */
export function labelsLayer(plan: Plan, group: L.LayerGroup) {
  const shown = new Map<string, L.Marker>();
  return (labelled: Labelled): void => {
    const { map } = plan;
    const { site, trees, segments, metresPerPixel } = labelled;
    const close = metresPerPixel < CLEAR_BELOW_METRES_PER_PIXEL;
    const marks = [
      ...shownFittings(site.fittings, metresPerPixel).map((fitting) => L.latLng(latLng(fitting.position))),
      ...(close ? [...trees.map((tree) => L.latLng(tree.lat, tree.lon)), ...segments.map(middle)] : []),
    ];
    const places = new Places(map, marks);
    const gone = new Set(shown.keys());
    let left = MOST_LABELS;
    for (const label of wantedLabels(map, labelled)) {
      const shift = places.take(label);
      if (shift === undefined) continue;
      const key = keyOf(label, shift);
      gone.delete(key);
      if (!shown.has(key)) shown.set(key, markerOf(label, shift).addTo(group));
      left -= 1;
      if (left === 0) break;
    }
    for (const key of gone) {
      group.removeLayer(shown.get(key) as L.Marker);
      shown.delete(key);
    }
  };
}
