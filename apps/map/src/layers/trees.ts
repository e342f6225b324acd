import type { TreeZones } from '@rootreach/core';
import * as L from 'leaflet';
import { words } from '../words/words.js';
import { ink } from './ink.js';
import { onActivate } from './on-activate.js';
import type { Plan } from './plan.js';
import { canvasWash, svgWash } from './wash.js';

/** A stem is never drawn smaller than this, or it would be lost. */
const LEAST_STEM_PIXELS = { full: 2.5, small: 1.3 };
const HIT_PIXELS = 22;
const WEIGHTS = { dripline: [1.1, 2.2], protection: [1.2, 2] } as const;

/** What the drawing of the trees hangs on beside the trees. */
export interface TreesDrawing {
  readonly canvas: boolean;
  readonly small: boolean;
  readonly chosen: string | null;
  /** The catalogue of texts: others in another language. */
  readonly words: unknown;
  /** Changes with the colours of the page. */
  readonly scheme: unknown;
}

/** Makes the circles of one tree. */
interface Pens {
  readonly wash: (at: L.LatLngExpression, radius: number) => L.Circle;
  readonly circles: L.Renderer;
  readonly color: string;
}

function pensFor(plan: Plan, canvas: boolean): Pens {
  const washes = plan.renderer('wash', canvas);
  if (!plan.map.hasLayer(washes)) washes.addTo(plan.map);
  const base = { renderer: washes, pane: 'wash', interactive: false, stroke: false };
  const washed = canvas ? canvasWash(ink('root')) : null;
  const fillColor = canvas ? '' : svgWash(washes, ink('root'));
  return {
    wash: (at, radius) =>
      washed ? washed(at, { ...base, radius }) : L.circle(at, { ...base, radius, fillColor, fillOpacity: 1 }),
    circles: plan.renderer('circles', canvas),
    color: ink('tree'),
  };
}

/** The circles of one tree on the plan; moved and resized in place as the tree changes. */
class TreeCircles {
  private readonly wash: L.Circle;
  private readonly dripline: L.Circle;
  private readonly protection: L.Circle;
  private readonly dot: L.CircleMarker;
  private readonly stem: L.Circle;
  private readonly hit: L.CircleMarker;
  private mine = false;

  constructor(
    private tree: TreeZones,
    group: L.LayerGroup,
    { wash, circles, color }: Pens,
    leastStem: number,
    choose: (id: string) => void,
  ) {
    const at = this.at;
    const base = { renderer: circles, pane: 'circles', interactive: false };
    const ring = { ...base, fill: false, color };
    const full = { ...base, stroke: false, fillColor: color, fillOpacity: 1 };
    const [dripline] = WEIGHTS.dripline;
    const [protection] = WEIGHTS.protection;
    this.wash = wash(at, tree.reachM);
    this.dripline = L.circle(at, { ...ring, radius: tree.driplineM, weight: dripline });
    this.protection = L.circle(at, {
      ...ring,
      radius: tree.protectionM,
      weight: protection,
      dashArray: '1 5',
    });
    this.dot = L.circleMarker(at, { ...full, radius: leastStem });
    this.stem = L.circle(at, { ...full, radius: tree.stemDiameterM / 2 });
    this.hit = L.circleMarker(at, {
      ...full,
      radius: HIT_PIXELS,
      fillOpacity: 0,
      interactive: true,
      className: 'stem-hit',
    });
    for (const part of this.parts) part.addTo(group);
    onActivate(this.hit, () => choose(this.tree.id));
    this.hit.getElement()?.setAttribute('tabindex', '-1');
    this.name();
  }

  private get at(): L.LatLngTuple {
    return [this.tree.lat, this.tree.lon];
  }

  get parts(): readonly L.CircleMarker[] {
    return [this.wash, this.dripline, this.protection, this.dot, this.stem, this.hit];
  }

  name(): void {
    this.hit
      .getElement()
      ?.setAttribute('aria-label', words.value.tree.label(words.value.model.tree(this.tree.name)));
  }

  choose(mine: boolean): void {
    if (mine === this.mine) return;
    this.mine = mine;
    this.dripline.setStyle({ weight: WEIGHTS.dripline[mine ? 1 : 0] });
    this.protection.setStyle({ weight: WEIGHTS.protection[mine ? 1 : 0] });
  }

  change(tree: TreeZones): void {
    const before = this.tree;
    if (tree === before) return;
    this.tree = tree;
    if (tree.lat !== before.lat || tree.lon !== before.lon)
      for (const part of this.parts) part.setLatLng(this.at);
    if (tree.reachM !== before.reachM) this.wash.setRadius(tree.reachM);
    if (tree.driplineM !== before.driplineM) this.dripline.setRadius(tree.driplineM);
    if (tree.protectionM !== before.protectionM) this.protection.setRadius(tree.protectionM);
    if (tree.stemDiameterM !== before.stemDiameterM) this.stem.setRadius(tree.stemDiameterM / 2);
    if (tree.name !== before.name) this.name();
  }
}

/**
 * Trees: a wash that fades as the roots do, dripline, protection circle, stem to scale. Nothing else. Only what
 * changed is drawn again.
 */
export function treesLayer(plan: Plan, group: L.LayerGroup, choose: (id: string) => void) {
  const shown = new Map<string, TreeCircles>();
  let last: TreesDrawing | null = null;
  let pens: Pens | null = null;

  return (trees: readonly TreeZones[], now: TreesDrawing): void => {
    const same = last && last.canvas === now.canvas && last.small === now.small && last.scheme === now.scheme;
    const renamed = last?.words !== now.words;
    last = now;
    if (!same || pens === null) {
      group.clearLayers();
      shown.clear();
      pens = pensFor(plan, now.canvas);
    }
    const leastStem = LEAST_STEM_PIXELS[now.small ? 'small' : 'full'];
    const gone = new Set(shown.keys());
    for (const tree of trees) {
      gone.delete(tree.id);
      const found = shown.get(tree.id);
      found?.change(tree);
      if (renamed) found?.name();
      const circles = found ?? new TreeCircles(tree, group, pens, leastStem, choose);
      circles.choose(tree.id === now.chosen);
      shown.set(tree.id, circles);
    }
    for (const id of gone) {
      for (const part of shown.get(id)?.parts ?? []) group.removeLayer(part);
      shown.delete(id);
    }
  };
}
