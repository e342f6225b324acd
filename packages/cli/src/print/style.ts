import { styleText } from 'node:util';
import type { Band } from '@rootreach/core';

/** Weight of type for what matters more or less; without a terminal the words stand alone. */
export interface Style {
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
  readonly band: (band: Band, text: string) => string;
}

const BAND_STYLES = {
  act: ['bold', 'inverse'],
  inspect: ['bold'],
  watch: [],
  leave: ['dim'],
  'cannot-say': ['underline'],
} as const satisfies Record<Band, readonly string[]>;

/** @param on false gives plain text. */
export function styleFor(on: boolean): Style {
  const styled = (format: Parameters<typeof styleText>[0], text: string): string =>
    on ? styleText(format, text, { validateStream: false }) : text;
  return {
    strong: (text) => styled('bold', text),
    faint: (text) => styled('dim', text),
    band: (band, text) => {
      const formats = [...BAND_STYLES[band]];
      return formats.length === 0 ? text : styled(formats, text);
    },
  };
}
