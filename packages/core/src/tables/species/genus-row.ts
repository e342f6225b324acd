import { type Cited, cite } from '../../sources/cited.js';
import type { SpeciesRow, VigourClass, WaterDemand } from '../species-row.js';
import { USUAL_GROWTH } from './row.js';
import { waterOfGenus } from './water-of-genus.js';

const DEMAND_ORDER: readonly WaterDemand[] = ['low', 'moderate', 'high'];

/** Median; the mean of the middle two for an even count. @throws RangeError on an empty list. */
function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  if (upper === undefined || lower === undefined) throw new RangeError('median of nothing');
  return (lower + upper) / 2;
}

/** Inventories that name the genus only mostly mean its usual town trees, which are those that were measured. */
function genusCrown(of: readonly SpeciesRow[], place: string): Cited<number> {
  const crowns = of.map((row) => row.matureCrownM);
  const measured = crowns.filter((crown) => crown.source === 'mcpherson-2016').map((crown) => crown.value);
  return measured.length > 0
    ? cite(
        median(measured),
        'mcpherson-2016',
        'calculated',
        `median of the ${measured.length} measured ${place}`,
      )
    : cite(median(crowns.map((crown) => crown.value)), 'our-judgement', 'judgement', `median ${place}`);
}

function genusGrowth(of: readonly SpeciesRow[], place: string): Cited<number> {
  const measured = of.map((row) => row.dbhGrowthCmPerYear).filter((growth) => growth !== USUAL_GROWTH);
  return measured.length > 0
    ? cite(
        median(measured.map((growth) => growth.value)),
        'mcpherson-2016',
        'calculated',
        `median of the ${measured.length} measured ${place}`,
      )
    : USUAL_GROWTH;
}

/**
 * A tree of which only the genus is known, from the species of that genus in the table: the median vigour, the
 * median crown of the measured, the greatest height (note 3 of the building standard's table), the highest water demand.
 */
export function genusRow(
  genus: string,
  common: readonly [string, ...string[]],
  of: readonly SpeciesRow[],
  synonyms: readonly string[] = [],
): SpeciesRow {
  const first = of[0];
  if (first === undefined) throw new RangeError(`no species of ${genus}`);
  const place = `from ${of.length} species of ${genus}`;
  const demands = [...of.map((row) => row.waterDemand.value), waterOfGenus(genus).value];
  const ratios = of.flatMap((row) => (row.crownRatio === null ? [] : [row.crownRatio.value]));
  return {
    key: genus.toLowerCase(),
    botanical: genus,
    common,
    synonyms,
    rank: 'genus',
    form: first.form,
    vigour: cite(
      Math.round(median(of.map((row) => row.vigour.value))) as VigourClass,
      'our-judgement',
      'judgement',
      `median ${place}`,
    ),
    waterDemand: cite(
      DEMAND_ORDER.findLast((demand) => demands.includes(demand)) ?? 'high',
      'nhbc-4.2',
      'judgement',
      `highest ${place}`,
    ),
    matureHeightM: cite(
      Math.max(...of.map((row) => row.matureHeightM.value)),
      'nhbc-4.2',
      'judgement',
      `note 3: the greatest ${place}`,
    ),
    matureCrownM: genusCrown(of, place),
    crownRatio:
      ratios.length === 0 ? null : cite(median(ratios), 'mcpherson-2016', 'calculated', `median ${place}`),
    crownEquation: null,
    dbhGrowthCmPerYear: genusGrowth(of, place),
  };
}
