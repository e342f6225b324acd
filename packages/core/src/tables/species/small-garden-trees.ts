import type { SpeciesRow } from '../species-row.js';
import { book, named, ours, remembered, species, standardHeight } from './row.js';

/** Small trees and large shrubs of gardens. */
export const smallGardenTrees: readonly SpeciesRow[] = [
  species('Sambucus nigra', ['common elder', 'black elder'], {
    vigour: ours(1, 'by its kin and habit'),
    water: named('low'),
    height: standardHeight(10),
    crown: book(5),
  }),
  species('Laurus nobilis', ['bay laurel', 'bay tree', 'Grecian laurel'], {
    vigour: ours(2, 'by its kin and habit'),
    water: named('moderate'),
    height: standardHeight(10),
    crown: book(6),
  }),
  remembered(
    'Umbellularia californica',
    ['California bay', 'California bay laurel', 'Oregon myrtle'],
    3,
    18,
    14,
  ),
  remembered('Arbutus menziesii', ['Pacific madrone', 'madrone'], 2, 18, 13),
  remembered('Arbutus unedo', ['strawberry tree'], 1, 8, 7),
  remembered('Buxus sempervirens', ['boxwood', 'common box'], 1, 5, 4),
  remembered('Cotinus coggygria', ['smoke tree', 'smoke bush'], 1, 5, 5),
  remembered('Hibiscus syriacus', ['rose of Sharon'], 1, 3, 3),
  remembered('Hamamelis virginiana', ['common witch hazel', 'witch hazel'], 1, 5, 5),
  remembered('Viburnum lentago', ['nannyberry'], 1, 5, 4),
  remembered('Euonymus europaeus', ['spindle', 'European spindle'], 1, 5, 4),
  remembered('Rhamnus cathartica', ['common buckthorn', 'European buckthorn'], 2, 7, 6),
  remembered('Frangula alnus', ['glossy buckthorn', 'alder buckthorn'], 1, 5, 4, {
    synonyms: ['Rhamnus frangula'],
  }),
  remembered('Hippophae rhamnoides', ['sea buckthorn'], 2, 5, 5),
  remembered('Zanthoxylum americanum', ['prickly ash', 'toothache tree'], 1, 6, 5),
  remembered('Aralia elata', ['Japanese angelica tree'], 1, 7, 6),
  remembered('Vitex agnus-castus', ['chaste tree'], 1, 6, 6),
  remembered('Heptacodium miconioides', ['seven-son flower', 'seven sons tree'], 1, 6, 4),
];
