import type { Band, SegmentResult, Units } from '@rootreach/core';
import * as L from 'leaflet';
import { words } from '../words/words.js';
import { latLng } from './ground.js';
import { bandStroke, type Stroke } from './ink.js';
import { onActivate } from './on-activate.js';

export interface LineEvents {
  readonly choose: (id: string) => void;
  readonly hint: (id: string | null) => void;
}

/** Width that a finger can hit. */
const HIT_PIXELS = 30;
const CANVAS_HIT_PIXELS = 12;

/** The worse, the later drawn, so that nothing covers it. */
export const BAND_ORDER: readonly Band[] = ['leave', 'cannot-say', 'watch', 'inspect', 'act'];

/** Of each band all casings, then all lines, then all centres, so that neighbours join without a seam. */
const PENS = ['casing', 'main', 'centre'] as const;

/** Where in the order of drawing a path belongs; what answers to the finger lies over all. */
export const slotOf = (band: Band, pen: number): number => BAND_ORDER.indexOf(band) * PENS.length + pen;
export const HIT_SLOT = BAND_ORDER.length * PENS.length;

/** Where paths are drawn. */
export interface Sheet {
  /** Puts a path down at its place in the order of drawing. */
  readonly put: (path: L.Polyline, slot: number) => void;
  readonly takeOff: (path: L.Polyline) => void;
}

/** How lines are drawn at present. */
export interface Drawing {
  readonly base: L.PolylineOptions;
  readonly canvas: boolean;
  /** Only what answers to the keys, where something else draws the lines. */
  readonly keysOnly: boolean;
  readonly strokes: Readonly<Record<Band, Stroke>>;
}

export function drawingOf(
  base: L.PolylineOptions,
  {
    canvas,
    small,
    keysOnly,
  }: { readonly canvas: boolean; readonly small: boolean; readonly keysOnly: boolean },
): Drawing {
  const strokes = Object.fromEntries(BAND_ORDER.map((band) => [band, bandStroke(band, small)]));
  return { base, canvas, keysOnly, strokes: strokes as Drawing['strokes'] };
}

type Path = SegmentResult['geometry']['coordinates'];

const isSamePath = (a: Path, b: Path): boolean =>
  a.length === b.length && a.every((at, i) => at[0] === b[i]?.[0] && at[1] === b[i]?.[1]);

/** The paths of one stretch on the plan; changed in place as the stretch changes. */
export class StretchPaths {
  private pens: L.Polyline[] = [];
  private label = '';
  readonly hit: L.Polyline;

  constructor(
    private segment: SegmentResult,
    private readonly drawing: Drawing,
    private readonly sheet: Sheet,
    events: LineEvents,
  ) {
    this.drawPens();
    this.hit = this.makeHit(events);
  }

  private get path(): L.LatLngTuple[] {
    return this.segment.geometry.coordinates.map(latLng);
  }

  private drawPens(): void {
    const { band } = this.segment;
    const { base, keysOnly, strokes } = this.drawing;
    if (keysOnly) return;
    const { weight, color, casing, centre, dash } = strokes[band];
    const main = { weight, color, ...(dash ? { dashArray: dash } : {}) };
    const lineCap = band === 'act' ? 'round' : 'butt';
    this.pens = [casing, main, centre].flatMap((pen, i) => {
      if (pen === null) return [];
      const path = L.polyline(this.path, { ...base, lineCap, ...pen });
      this.sheet.put(path, slotOf(band, i));
      return [path];
    });
  }

  private makeHit({ choose, hint }: LineEvents): L.Polyline {
    const { base, canvas, keysOnly } = this.drawing;
    const { id } = this.segment;
    const hit = L.polyline(this.path, {
      ...base,
      interactive: true,
      weight: canvas ? CANVAS_HIT_PIXELS : HIT_PIXELS,
      opacity: 0,
      lineCap: 'butt',
      className: keysOnly ? 'stretch-hit keys-only' : 'stretch-hit',
    });
    this.sheet.put(hit, HIT_SLOT);
    onActivate(hit, () => choose(id));
    hit.on('mouseover', () => hint(id));
    hit.on('mouseout', () => hint(null));
    hit.getElement()?.setAttribute('data-stretch', id);
    return hit;
  }

  /** Says what it is, in the words and units of now. */
  name(units: Units): void {
    const element = this.hit.getElement();
    if (!element) return;
    const label = words.value.plan.stretch(
      this.segment,
      words.value.model.chance(this.segment.chance),
      units,
    );
    if (label === this.label) return;
    this.label = label;
    element.setAttribute('aria-label', label);
  }

  /** @returns true where the stretch is another than the one that is drawn. */
  isOld(segment: SegmentResult): boolean {
    return segment !== this.segment;
  }

  /** @returns false where it only has another rank: then nothing of it is drawn or said otherwise. */
  change(segment: SegmentResult): boolean {
    const before = this.segment;
    this.segment = segment;
    if (
      before.chance === segment.chance &&
      before.geometry === segment.geometry &&
      before.reach === segment.reach
    )
      return false;
    if (before.band !== segment.band) {
      this.removePens();
      this.drawPens();
    }
    if (!isSamePath(before.geometry.coordinates, segment.geometry.coordinates)) {
      for (const path of [...this.pens, this.hit]) path.setLatLngs(this.path);
    }
    return true;
  }

  private removePens(): void {
    for (const path of this.pens) this.sheet.takeOff(path);
  }

  remove(): void {
    this.removePens();
    this.sheet.takeOff(this.hit);
  }
}
