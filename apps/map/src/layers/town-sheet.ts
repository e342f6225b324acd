import type { Band, Box } from '@rootreach/core';
import * as L from 'leaflet';
import { type Strokes, TREE_COLUMNS, type View } from '../large.js';
import { bandStroke, ink, type Stroke } from './ink.js';
import type { Plan } from './plan.js';
import { BAND_ORDER } from './stretch.js';
import { washPicture } from './wash.js';

/** So much more than the screen is drawn on every side, for what comes into view while the plan is pushed. */
const PADDING = 0.4;
/** From here down trees have their washes and driplines; above, a dot each. */
const WASHES_BELOW_METRES_PER_PIXEL = 0.5;
const LEAST_STEM_PIXELS = 1.3;
const DOT_PIXELS = 2.6;
const LEAST_LINE_SHARE = 0.3;

type Project = (lon: number, lat: number, put: (x: number, y: number) => void) => void;

/** Web Mercator into the pixels of the sheet; Leaflet's own way makes an object for every point. */
function projection(map: L.Map, corner: L.Point): Project {
  const scale = 256 * 2 ** map.getZoom();
  const origin = map.getPixelOrigin().add(corner);
  return (lon, lat, put) => {
    const sin = Math.sin((lat * Math.PI) / 180);
    const x = scale * (lon / 360 + 0.5) - origin.x;
    put(x, scale * (0.5 - Math.log((1 + sin) / (1 - sin)) / (4 * Math.PI)) - origin.y);
  };
}

function pathOf({ points, starts }: Strokes, project: Project): Path2D {
  const path = new Path2D();
  for (let stroke = 0; stroke < starts.length; stroke++) {
    const first = starts[stroke] as number;
    const end = starts[stroke + 1] ?? points.length / 2;
    for (let i = first; i < end; i++) {
      project(points[2 * i] as number, points[2 * i + 1] as number, (x, y) => {
        if (i === first) path.moveTo(x, y);
        else path.lineTo(x, y);
      });
    }
  }
  return path;
}

/** Far off, full weights would run together into blots. */
const weightShare = (metresPerPixel: number): number =>
  Math.min(1, Math.max(LEAST_LINE_SHARE, 1 / Math.sqrt(metresPerPixel)));

/** The pens of the sheet: colours are looked up once, not for every picture. */
interface Inks {
  readonly strokes: Readonly<Record<Band, Stroke>>;
  readonly tree: string;
  readonly wash: HTMLCanvasElement;
}

const inksFor = (small: boolean): Inks => ({
  strokes: Object.fromEntries(BAND_ORDER.map((band) => [band, bandStroke(band, small)])) as Inks['strokes'],
  tree: ink('tree'),
  wash: washPicture(ink('root')),
});

function drawBand(
  pen: CanvasRenderingContext2D,
  path: Path2D,
  band: Band,
  stroke: Stroke,
  share: number,
): void {
  const { weight, color, casing, centre, dash } = stroke;
  pen.lineCap = band === 'act' ? 'round' : 'butt';
  for (const one of [casing, { weight, color }, centre]) {
    if (one === null) continue;
    pen.setLineDash(dash && one.color === color ? dash.split(' ').map(Number) : []);
    pen.lineWidth = one.weight * share;
    pen.strokeStyle = one.color;
    pen.stroke(path);
  }
  pen.setLineDash([]);
}

type TreeColumns = readonly [lon: number, lat: number, stemM: number, driplineM: number, reachM: number];

function eachTree(trees: Float64Array, draw: (tree: TreeColumns) => void): void {
  for (let i = 0; i < trees.length; i += TREE_COLUMNS)
    draw(trees.subarray(i, i + TREE_COLUMNS) as unknown as TreeColumns);
}

/** A dot a tree: squares, since a thousand arcs take a frame. */
function drawDots(pen: CanvasRenderingContext2D, trees: Float64Array, project: Project, color: string): void {
  pen.fillStyle = color;
  eachTree(trees, ([lon, lat]) =>
    project(lon, lat, (x, y) => pen.fillRect(x - DOT_PIXELS / 2, y - DOT_PIXELS / 2, DOT_PIXELS, DOT_PIXELS)),
  );
}

function drawTrees(
  pen: CanvasRenderingContext2D,
  trees: Float64Array,
  project: Project,
  { tree: color, wash }: Inks,
  metresPerPixel: number,
): void {
  const [stems, driplines] = [new Path2D(), new Path2D()];
  const ring = (path: Path2D, x: number, y: number, radius: number) => {
    path.moveTo(x + radius, y);
    path.arc(x, y, radius, 0, 2 * Math.PI);
  };
  eachTree(trees, ([lon, lat, stemM, driplineM, reachM]) =>
    project(lon, lat, (x, y) => {
      const reach = reachM / metresPerPixel;
      pen.drawImage(wash, x - reach, y - reach, 2 * reach, 2 * reach);
      ring(driplines, x, y, driplineM / metresPerPixel);
      ring(stems, x, y, Math.max(LEAST_STEM_PIXELS, stemM / metresPerPixel));
    }),
  );
  pen.strokeStyle = color;
  pen.lineWidth = 1.1;
  pen.stroke(driplines);
  pen.fillStyle = color;
  pen.fill(stems);
}

/** How a large site is drawn at present. */
export interface TownDrawing {
  readonly small: boolean;
  readonly metresPerPixel: number;
  /** Changes with the colours of the page. */
  readonly scheme: unknown;
}

/** What a renderer of Leaflet keeps for those that extend it. */
interface Inside {
  _map: L.Map;
  _container: HTMLElement;
  _bounds: L.Bounds | undefined;
  _center: L.LatLng;
  _zoom: number;
  _updateTransform(centre: L.LatLng, zoom: number): void;
}

const Base = L.Renderer as unknown as {
  extend(parts: object): new (options: L.RendererOptions) => L.Renderer;
  readonly prototype: { readonly _update: (this: Inside) => void };
};

/** The picture of one view, on a canvas of its own, in steps that each are short. */
function* picture(
  pen: CanvasRenderingContext2D,
  view: View,
  project: Project,
  inks: Inks,
  metresPerPixel: number,
): Generator<void> {
  if (metresPerPixel < WASHES_BELOW_METRES_PER_PIXEL)
    drawTrees(pen, view.trees, project, inks, metresPerPixel);
  else drawDots(pen, view.trees, project, inks.tree);
  yield;
  for (const band of BAND_ORDER) {
    const path = pathOf(view.strokes[band], project);
    drawBand(pen, path, band, inks.strokes[band], weightShare(metresPerPixel));
    yield;
  }
}

/** A clean canvas of this size; the one given is used again, since a new one is ten megabytes to set up. */
function clean(canvas: HTMLCanvasElement, size: L.Point): HTMLCanvasElement {
  const sharp = Math.min(2, window.devicePixelRatio);
  const [width, height] = [Math.round(sharp * size.x), Math.round(sharp * size.y)];
  const pen = canvas.getContext('2d');
  if (canvas.width !== width || canvas.height !== height) {
    canvas.width = width;
    canvas.height = height;
    canvas.style.width = `${size.x}px`;
    canvas.style.height = `${size.y}px`;
  }
  pen?.setTransform(sharp, 0, 0, sharp, 0, 0);
  pen?.clearRect(0, 0, size.x, size.y);
  return canvas;
}

/** Part of the ground that the next picture is to hold. */
function wantedBox(map: L.Map): Box {
  const size = map.getSize();
  const beyond = size.multiplyBy(PADDING);
  const [a, b] = [
    map.containerPointToLatLng([-beyond.x, -beyond.y]),
    map.containerPointToLatLng(size.add(beyond)),
  ];
  return [a.lng, b.lat, b.lng, a.lat];
}

/**
 * A large site as one picture. While the plan moves the last picture moves with it; the next is asked for when it
 * stands, drawn out of sight in short steps, and put in its place when it is done.
 * @param ask Called with the part of the ground that comes into view.
 */
export function townSheet(plan: Plan, ask: (box: Box) => void) {
  let sheet: L.Renderer | null = null;
  let inks: { readonly for: string; readonly of: Inks } | null = null;
  let turn = 0;
  /** One is shown while the other is drawn. */
  let [shown, spare] = [document.createElement('canvas'), document.createElement('canvas')];

  const Town = Base.extend({
    _initContainer(this: Inside) {
      this._container = document.createElement('div');
      this._container.className = 'town-sheet';
    },
    _destroyContainer(this: Inside) {
      this._container.remove();
    },
    _update(this: Inside) {
      if (!this._bounds) Base.prototype._update.call(this);
      ask(wantedBox(this._map));
    },
    _reset(this: Inside) {
      ask(wantedBox(this._map));
      this._updateTransform(this._map.getCenter(), this._map.getZoom());
    },
  });

  function drawNow(inside: Inside, view: View, { small, metresPerPixel, scheme }: TownDrawing): void {
    turn += 1;
    const mine = turn;
    const key = `${small} ${String(scheme)}`;
    if (inks?.for !== key) inks = { for: key, of: inksFor(small) };
    const { _map: map } = inside;
    const size = map.getSize();
    const corner = map.containerPointToLayerPoint(size.multiplyBy(-PADDING)).round();
    const [centre, zoom, origin] = [map.getCenter(), map.getZoom(), map.getPixelOrigin()];
    const canvas = clean(spare, size.multiplyBy(1 + 2 * PADDING).round());
    const pen = canvas.getContext('2d');
    if (!pen) return;
    const steps = picture(pen, view, projection(map, corner), inks.of, metresPerPixel);
    const go = () => {
      // another picture was begun, or the plan put somewhere else
      if (mine !== turn || !map.getPixelOrigin().equals(origin) || !inside._container.isConnected) return;
      if (!steps.next().done) {
        setTimeout(go);
        return;
      }
      inside._center = centre;
      inside._zoom = zoom;
      L.DomUtil.setPosition(inside._container, corner);
      inside._bounds = L.bounds(corner, corner.add(size.multiplyBy(1 + 2 * PADDING).round()));
      [shown, spare] = [canvas, shown];
      inside._container.replaceChildren(shown);
    };
    go();
  }

  return {
    /** Lays the sheet under the plan, or takes it away. */
    lay(there: boolean): void {
      if (there === (sheet !== null)) return;
      if (sheet) sheet.remove();
      sheet = there ? new Town({ pane: 'lines', padding: PADDING }) : null;
      sheet?.addTo(plan.map);
    },
    draw(view: View | null, how: TownDrawing): void {
      if (sheet && view) drawNow(sheet as unknown as Inside, view, how);
    },
  };
}
