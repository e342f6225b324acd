import type { LengthUnit } from './length-units.js';
import { parseLength } from './parse-length.js';

/** A comma may be a decimal one where the trunks are set apart by something else. */
const APART = /\s*(?:[+;&]|\band\b|\by\b)\s*/;
const BY_COMMA = /\s*,\s*|\s+(?=\d)/;
const UNIT_AT_END = /[a-z"']+\.?$/i;
/** The site file holds no more. */
const MOST_STEMS = 50;

/**
 * Several trunks: `6 + 8 + 5`, `6, 8, 5 in`. A unit at the end speaks for all that name none.
 * @returns metres, or null where one of them is not understood.
 */
export function parseStems(typed: string, bare: LengthUnit): number[] | null {
  const text = typed.trim();
  const parts = text.split(APART.test(text) ? APART : BY_COMMA).filter((part) => part !== '');
  const unit = UNIT_AT_END.exec(parts.at(-1) ?? '')?.[0] ?? '';
  const stems = parts.map((part) => parseLength(UNIT_AT_END.test(part) ? part : `${part} ${unit}`, bare));
  if (stems.length === 0 || stems.length > MOST_STEMS) return null;
  const lengths = stems.flatMap((stem) => (stem !== null && stem.lengthM > 0 ? [stem.lengthM] : []));
  return lengths.length === stems.length ? lengths : null;
}
