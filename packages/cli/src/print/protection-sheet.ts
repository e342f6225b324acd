import { type ProtectionSheet, type Units, wordProtectionSheet } from '@rootreach/core';
import { length, span, trunk } from './lengths.js';
import type { Style } from './style.js';
import { wrap } from './wrap.js';

/** The sheet of the trees along a route, as a crew reads it in a terminal or on paper. */
export function protectionSheetText(
  sheet: ProtectionSheet,
  units: Units,
  style: Style,
  width: number,
): string {
  const sections = wordProtectionSheet(sheet, {
    length: (lengthM) => length(lengthM, units),
    span: (fromM, toM) => span(fromM, toM, units),
    trunk: (diameterM) => trunk(diameterM, units),
  });
  const indented = (text: string, by: number): string => `${' '.repeat(by)}${wrap(text, width - by, by)}`;
  return sections
    .map(({ title, lines }) => {
      const body = lines.flatMap(({ text, details }) => [
        indented(text, 2),
        ...details.map((detail) => indented(detail, 4)),
      ]);
      return [style.strong(title), ...body].join('\n');
    })
    .join('\n\n');
}
