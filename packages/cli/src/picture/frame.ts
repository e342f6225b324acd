import { ink } from './ink.js';
import { element, path, textAt } from './svg.js';

/** A plot's place on the sheet and what its axes span: shares from 0. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly mostX: number;
  readonly mostY: number;
}

export const xIn = ({ left, width, mostX }: Frame, value: number): number => left + (width * value) / mostX;

export const yIn = ({ top, height, mostY }: Frame, value: number): number =>
  top + height * (1 - value / mostY);

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Hairlines and numbers up the side. */
export function levels(frame: Frame, step: number): string[] {
  const { left, width, mostY } = frame;
  return Array.from({ length: Math.round(mostY / step) + 1 }, (_, i) => {
    const y = yIn(frame, i * step);
    const line = path(
      [
        [left, y],
        [left + width, y],
      ],
      { stroke: i === 0 ? ink.text : ink.hairline, 'stroke-width': 1 },
    );
    return line + textAt(left - 8, y + 5, percent(i * step), { 'text-anchor': 'end', fill: ink.faint });
  });
}

/** Numbers along the bottom. */
export function marks(frame: Frame, step: number): string[] {
  const { top, height, mostX } = frame;
  return Array.from({ length: Math.round(mostX / step) + 1 }, (_, i) =>
    textAt(xIn(frame, i * step), top + height + 20, percent(i * step), {
      'text-anchor': 'middle',
      fill: ink.faint,
    }),
  );
}

/** Heading over a plot, with a line that says what it shows. */
export const heading = ({ left, top }: Frame, title: string, under: string): string =>
  element('g', {}, [
    textAt(left - 48, top - 34, title, { 'font-size': 16, 'font-weight': 600, fill: ink.text }),
    textAt(left - 48, top - 15, under, { fill: ink.faint }),
  ]);
