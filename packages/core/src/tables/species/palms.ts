import type { SpeciesRow } from '../species-row.js';
import { book, listed, remembered, species } from './row.js';
import { waterOfGenus } from './water-of-genus.js';

/** Palms. */
export const palms: readonly SpeciesRow[] = [
  species('Washingtonia robusta', ['Mexican fan palm', 'Washington palm'], {
    form: 'palm',
    vigour: listed(2, 'bundaberg-root-list', 'date palms not at all; roots fibrous'),
    water: waterOfGenus('Washingtonia robusta'),
    height: book(25),
    crown: book(3.5),
  }),
  remembered(
    'Washingtonia filifera',
    ['California fan palm', 'desert fan palm', 'California palm'],
    2,
    16,
    5,
    { form: 'palm' },
  ),
  species('Phoenix canariensis', ['Canary Island date palm', 'Canary date palm'], {
    form: 'palm',
    vigour: listed(2, 'utility-root-list', 'high; roots fibrous'),
    water: waterOfGenus('Phoenix canariensis'),
    height: book(15),
    crown: book(8),
  }),
  remembered('Phoenix dactylifera', ['edible date palm'], 2, 18, 8, { form: 'palm' }),
  remembered('Phoenix roebelenii', ['pygmy date palm'], 1, 3, 2.5, { form: 'palm' }),
  remembered('Syagrus romanzoffiana', ['queen palm'], 2, 13, 6, {
    synonyms: ['Arecastrum romanzoffianum'],
    form: 'palm',
  }),
  remembered('Sabal palmetto', ['cabbage palm', 'cabbage palmetto', 'sabal palm', 'palmetto'], 2, 14, 4, {
    form: 'palm',
  }),
  remembered('Roystonea regia', ['royal palm', 'Cuban royal palm'], 2, 20, 6, { form: 'palm' }),
  remembered('Cocos nucifera', ['coconut palm', 'coconut'], 2, 20, 8, { form: 'palm' }),
  remembered('Trachycarpus fortunei', ['windmill palm', 'Chusan palm'], 1, 9, 2.5, { form: 'palm' }),
  remembered('Chamaerops humilis', ['European fan palm', 'Mediterranean fan palm'], 1, 4, 3, {
    form: 'palm',
  }),
  remembered('Butia odorata', ['pindo palm', 'jelly palm'], 1, 5, 4, {
    synonyms: ['Butia capitata'],
    form: 'palm',
  }),
  remembered('Archontophoenix cunninghamiana', ['bangalow palm', 'king palm'], 1, 15, 5, { form: 'palm' }),
  remembered('Livistona australis', ['cabbage tree palm'], 2, 18, 5, { form: 'palm' }),
  remembered('Brahea armata', ['Mexican blue palm'], 1, 10, 4, { form: 'palm' }),
];
