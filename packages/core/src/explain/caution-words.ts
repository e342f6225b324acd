import { type CautionCode, type CautionLanguage, cautionTable } from '../tables/cautions.js';

/**
 * A caution in the reader's language.
 * @param code from a result's `cautions`.
 * @param language `en` or `es`.
 * @throws RangeError for a code that is in no table.
 */
export function wordCaution(code: CautionCode, language: CautionLanguage): string {
  const row = cautionTable.find((caution) => caution.code === code);
  if (row === undefined) throw new RangeError(`there is no caution '${code}'`);
  return row.texts[language];
}
