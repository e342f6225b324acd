const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** A comma before exactly three digits may part thousands or decimals: not taken either way. */
const UNCLEAR_COMMA = /[1-9]\d*,\d{3}$/;
const DECIMAL = /^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
const WITH_FRACTION = /^(?:(\d+)[\s-]+)?(\d+)\/([1-9]\d*)$/;

/** A number as people write it: `6.5`, `6,5`, `6 1/2`, `6½`. @returns null where it is none, or not clear. */
export function parseNumber(typed: string): number | null {
  const text = typed.replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`).trim();
  const fraction = WITH_FRACTION.exec(text);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  if (!DECIMAL.test(text) || UNCLEAR_COMMA.test(text)) return null;
  return Number(text.replace(',', '.'));
}
