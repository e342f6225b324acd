import type { Caution, CautionConditions } from '../model/caution.js';
import { cautionTable } from '../tables/cautions.js';

/** Cautions that what may be done calls for, in the order of the table; the last two stand beside every result. */
export function cautionsFor(conditions: CautionConditions): readonly Caution[] {
  return cautionTable
    .filter(({ raisedBy }) => raisedBy(conditions))
    .map(({ code, source, texts }) => ({ code, text: texts.en, source }));
}

/** Cautions of every ranking: what it says may lead somebody to dig, cut or saw, at a depth that nobody knows yet. */
export const rankCautions: readonly Caution[] = cautionsFor({
  digging: true,
  rootCutting: true,
  sawing: true,
});
