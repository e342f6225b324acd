import { type Cited, cite } from '../../sources/cited.js';
import type { WaterDemand } from '../species-row.js';

/** Genera of table 12 by demand; where a genus stands in two classes, the higher. */
const GENERA: Readonly<Record<WaterDemand, readonly string[]>> = {
  high: [
    ...['Chamaecyparis', 'Crataegus', 'Cupressus', 'Eucalyptus', 'Hesperocyparis', 'Hesperotropsis'],
    ...['Populus', 'Quercus', 'Salix', 'Ulmus'],
  ],
  moderate: [
    ...['Acer', 'Aesculus', 'Ailanthus', 'Alnus', 'Araucaria', 'Castanea', 'Cedrus', 'Fagus', 'Fraxinus'],
    ...['Juglans', 'Larix', 'Laurus', 'Malus', 'Picea', 'Pinus', 'Platanus', 'Prunus', 'Pseudotsuga'],
    ...['Pyrus', 'Robinia', 'Sequoiadendron', 'Sorbus', 'Taxus', 'Tilia'],
  ],
  low: [
    ...['Betula', 'Carpinus', 'Corylus', 'Gleditsia', 'Ilex', 'Laburnum', 'Liriodendron', 'Magnolia'],
    ...['Morus', 'Sambucus'],
  ],
};

const byGenus: ReadonlyMap<string, WaterDemand> = new Map(
  (['low', 'moderate', 'high'] as const).flatMap((demand) => GENERA[demand].map((genus) => [genus, demand])),
);

/** Water demand by the genus in the building standard; moderate where it is not listed. */
export function waterOfGenus(botanical: string): Cited<WaterDemand> {
  const genus = botanical.replace(/^×/, '').split(' ')[0] ?? '';
  const demand = byGenus.get(genus);
  return demand === undefined
    ? cite('moderate', 'our-judgement', 'judgement', 'genus not in the standard; the middle class')
    : cite(demand, 'nhbc-4.2', 'judgement', 'taken from its genus in table 12');
}
