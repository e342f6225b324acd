import type { Band } from '@rootreach/core';

const known = new Map<string, string>();

/** A colour of the plan as the style sheet has it now, by day or by night; asked once, since each answer lays the page out. */
export function ink(name: string): string {
  const key = `${name}/${matchMedia('(prefers-color-scheme: dark)').matches}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const color = getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
  known.set(key, color);
  return color;
}

export interface Stroke {
  readonly weight: number;
  readonly color: string;
  readonly casing: { readonly weight: number; readonly color: string } | null;
  readonly centre: { readonly weight: number; readonly color: string } | null;
  readonly dash: string | null;
}

/** Weights on a plan of a whole campus, where full ones would run together. */
const SMALL = 0.62;

const stroke = (weight: number, color: string): Stroke => ({
  weight,
  color,
  casing: null,
  centre: null,
  dash: null,
});

/** How a stretch is drawn: weight and pattern say the same as the colour, for grey prints and all eyes. */
export function bandStroke(band: Band, small: boolean): Stroke {
  const full = fullStroke(band);
  if (!small) return full;
  const thin = <T extends { readonly weight: number }>(pen: T): T => ({ ...pen, weight: pen.weight * SMALL });
  return {
    ...thin(full),
    casing: full.casing && thin(full.casing),
    centre: full.centre && thin(full.centre),
  };
}

function fullStroke(band: Band): Stroke {
  const color = ink(band);
  switch (band) {
    case 'act':
      return { ...stroke(7, color), casing: { weight: 11, color: ink('act-casing') } };
    case 'inspect':
      return { ...stroke(7, color), centre: { weight: 1.8, color: ink('inspect-centre') } };
    case 'watch':
      return stroke(4.5, color);
    case 'leave':
      return stroke(2.5, color);
    case 'cannot-say':
      return { ...stroke(3.5, color), dash: '5 5' };
  }
}
