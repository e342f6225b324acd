import { el, type Markup, text } from '../markup/markup.js';
import { ink } from './ink.js';
import type { Xy } from './view.js';

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Width of a letter in ems of the widest usual face, so that no label runs out of its room. */
const LETTER_EM = 0.6;

export const widthOf = (label: string, size: number): number => label.length * LETTER_EM * size;

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Room for labels on a drawing: none runs over another or over the edge. */
export class LabelRoom {
  private readonly taken: Box[] = [];
  private readonly soft: Box[] = [];

  constructor(
    private readonly width: number,
    private readonly height: number,
  ) {}

  /** Keeps a place free. */
  take(left: number, top: number, right: number, bottom: number): void {
    this.taken.push({ left, top, right, bottom });
  }

  /** Keeps a small place free as long as there is room elsewhere: what is drawn there should not be covered. */
  spare(x: number, y: number, half: number): void {
    this.soft.push({ left: x - half, top: y - half, right: x + half, bottom: y + half });
  }

  /** The first of the middles at which a label has room, which is then taken; null where there is none. */
  place(label: string, size: number, middles: readonly Xy[]): Xy | null {
    return this.find(label, size, middles, this.soft) ?? this.find(label, size, middles, []);
  }

  private find(label: string, size: number, middles: readonly Xy[], soft: readonly Box[]): Xy | null {
    const half = widthOf(label, size) / 2 + 2;
    for (const [x, y] of middles) {
      const box = { left: x - half, right: x + half, top: y - 0.62 * size, bottom: y + 0.62 * size };
      const inside =
        box.left >= 3 && box.right <= this.width - 3 && box.top >= 3 && box.bottom <= this.height - 3;
      if (!inside || [...this.taken, ...soft].some((other) => meet(box, other))) continue;
      this.taken.push(box);
      return [x, y];
    }
    return null;
  }
}

/** How a label is set. */
export interface LabelKind {
  readonly size: number;
  readonly fill: string;
  readonly weight?: number;
  readonly italic?: boolean;
  readonly spacing?: number;
}

/** A label with a halo of paper, so that it reads over lines and washes. */
export function labelAt([x, y]: Xy, label: string, kind: LabelKind): Markup {
  const attributes = {
    x,
    y: y + 0.36 * kind.size,
    'font-size': kind.size,
    'font-weight': kind.weight,
    'font-style': kind.italic ? 'italic' : undefined,
    'letter-spacing': kind.spacing,
    'text-anchor': 'middle',
    fill: kind.fill,
    stroke: ink.paper,
    'stroke-width': 3,
    'stroke-linejoin': 'round',
    'paint-order': 'stroke',
  };
  return el('text', attributes, text(label));
}

/** Middles about a point: below, above, right, left, and the corners. */
export function middlesAbout([x, y]: Xy, label: string, size: number, away: number): Xy[] {
  const side = widthOf(label, size) / 2 + away;
  const up = 0.7 * size + away;
  return [
    [x, y + up],
    [x, y - up],
    [x + side, y],
    [x - side, y],
    [x + side, y + up],
    [x - side, y + up],
    [x + side, y - up],
    [x - side, y - up],
  ];
}
