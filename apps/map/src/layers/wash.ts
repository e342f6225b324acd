import * as L from 'leaflet';
import { washStops } from './wash-stops.js';

const SPRITE_PIXELS = 256;
const GRADIENT_ID = 'root-wash';

/** The one gradient all trees share, put into the renderer's own SVG. Returns the paint to fill with. */
export function svgWash(renderer: L.Renderer, color: string): string {
  const svg = (renderer as unknown as { _container: SVGSVGElement })._container;
  svg.querySelector('defs')?.remove();
  const make = (name: string) => document.createElementNS('http://www.w3.org/2000/svg', name);
  const gradient = make('radialGradient');
  gradient.id = GRADIENT_ID;
  for (const { at, opacity } of washStops) {
    const stop = make('stop');
    stop.setAttribute('offset', String(at));
    stop.setAttribute('stop-color', color);
    stop.setAttribute('stop-opacity', opacity.toFixed(4));
    gradient.append(stop);
  }
  const defs = make('defs');
  defs.append(gradient);
  svg.prepend(defs);
  return `url(#${GRADIENT_ID})`;
}

/** One wash as a picture, to be drawn to size for each tree. */
export function washPicture(color: string): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = SPRITE_PIXELS;
  canvas.height = SPRITE_PIXELS;
  const pen = canvas.getContext('2d');
  if (!pen) return canvas;
  const half = SPRITE_PIXELS / 2;
  const gradient = pen.createRadialGradient(half, half, 0, half, half, half);
  for (const { at, opacity } of washStops) {
    const hundredths = (opacity * 100).toFixed(2);
    gradient.addColorStop(at, `color-mix(in srgb, ${color} ${hundredths}%, transparent)`);
  }
  pen.fillStyle = gradient;
  pen.fillRect(0, 0, SPRITE_PIXELS, SPRITE_PIXELS);
  return canvas;
}

interface CanvasCircle extends L.Circle {
  readonly _renderer: { readonly _ctx: CanvasRenderingContext2D };
  readonly _point: L.Point;
  readonly _radius: number;
}

/** On canvas the same wash is one picture drawn to size for each tree. */
export function canvasWash(color: string): (at: L.LatLngExpression, options: L.CircleOptions) => L.Circle {
  const picture = washPicture(color);
  const Washed = L.Circle.extend({
    _updatePath(this: CanvasCircle) {
      const { _renderer, _point, _radius } = this;
      _renderer._ctx.drawImage(picture, _point.x - _radius, _point.y - _radius, _radius * 2, _radius * 2);
    },
  }) as unknown as new (
    at: L.LatLngExpression,
    options: L.CircleOptions,
  ) => L.Circle;
  return (at, options) => new Washed(at, options);
}
