/** Units that a column of lengths may be in. */
export type Unit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

export const METRES: Readonly<Record<Unit, number>> = {
  mm: 0.001,
  cm: 0.01,
  m: 1,
  in: 0.0254,
  ft: 0.3048,
};

const WRITTEN: readonly (readonly [RegExp, Unit])[] = [
  [/^(?:mm|millim\w*)$/, 'mm'],
  [/^(?:cm|cms|centim\w*|zentim\w*)$/, 'cm'],
  [/^(?:in|ins|inch|inches|"|”|″|'')$/, 'in'],
  [/^(?:ft|feet|foot|'|’|′)$/, 'ft'],
  [/^(?:m|meter|meters|metre|metres|metros|mètres)$/, 'm'],
];

/** Unit that a word or sign stands for. */
export function unitNamed(word: string): Unit | null {
  const plain = word.trim().toLowerCase().replace(/\.$/, '');
  return WRITTEN.find(([pattern]) => pattern.test(plain))?.[1] ?? null;
}

/** Units in words. */
export const UNIT_WORDS: Readonly<Record<Unit, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
  in: 'inches',
  ft: 'feet',
};
