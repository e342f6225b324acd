import type { SpeciesRow, TreeForm, VigourClass } from '../species-row.js';
import { book, keyOf, ours, USUAL_GROWTH } from './row.js';
import { waterOfGenus } from './water-of-genus.js';

type Hand = readonly [
  genus: string,
  common: readonly [string, ...string[]],
  vigour: VigourClass,
  heightM: number,
  crownM: number,
  form?: TreeForm,
  synonyms?: readonly string[],
];

/** Genera met in town inventories of which the table has no species; all figures from memory or ours. */
const HAND: readonly Hand[] = [
  ['Agathis', ['kauri', 'kauri pine'], 2, 30, 12, 'conifer'],
  ['Azadirachta', ['neem', 'neem tree'], 3, 15, 12],
  ['Banksia', ['banksia'], 2, 8, 6],
  ['Camellia', ['camellia'], 1, 4, 3],
  ['Cassia', ['cassia', 'golden shower tree'], 2, 9, 9],
  ['Cephalotaxus', ['plum yew'], 1, 5, 4, 'conifer'],
  ['Clusia', ['pitch apple', 'autograph tree'], 2, 8, 7],
  ['Coccoloba', ['sea grape'], 2, 8, 7],
  ['Conocarpus', ['buttonwood mangrove', 'silver buttonwood'], 3, 10, 8],
  ['Cordyline', ['cabbage tree', 'cordyline'], 1, 8, 3, 'palm'],
  ['Cunninghamia', ['China fir', 'Chinese fir'], 1, 20, 8, 'conifer'],
  ['Dracaena', ['dragon tree'], 1, 7, 6, 'palm'],
  ['Dypsis', ['areca palm', 'triangle palm'], 1, 7, 5, 'palm'],
  ['Feijoa', ['feijoa', 'pineapple guava'], 1, 5, 5, 'broadleaf', ['Acca']],
  ['Hakea', ['hakea'], 2, 6, 5],
  ['Kigelia', ['sausage tree'], 3, 12, 12],
  ['Lagunaria', ['Norfolk Island hibiscus', 'primrose tree'], 3, 12, 7],
  ['Leptospermum', ['tea tree'], 2, 5, 5],
  ['Macadamia', ['macadamia'], 2, 12, 9],
  ['Millettia', ['pongamia', 'pongam'], 3, 12, 12, 'broadleaf', ['Pongamia']],
  ['Moringa', ['moringa', 'horseradish tree'], 2, 9, 6],
  ['Myrtus', ['true myrtle', 'common myrtle'], 1, 4, 3],
  ['Nothofagus', ['southern beech', 'myrtle beech'], 2, 20, 12],
  ['Peltophorum', ['yellow poinciana', 'copperpod'], 3, 15, 14],
  ['Photinia', ['photinia', 'Christmas berry'], 1, 6, 5, 'broadleaf', ['Heteromeles']],
  ['Phyllostachys', ['bamboo'], 3, 8, 4, 'broadleaf', ['Bambusa']],
  ['Pinckneya', ['fevertree'], 1, 6, 4],
  ['Planera', ['water elm', 'planertree'], 2, 12, 9],
  ['Poncirus', ['trifoliate orange'], 1, 4, 3],
  ['Ptelea', ['hoptree', 'wafer ash'], 1, 6, 5],
  ['Rhododendron', ['rhododendron', 'azalea'], 1, 4, 4],
  ['Sapindus', ['soapberry'], 2, 12, 10],
  ['Senna', ['senna'], 2, 5, 5],
  ['Stewartia', ['stewartia'], 1, 9, 6],
  ['Tamarix', ['tamarisk', 'salt cedar'], 3, 7, 6],
  ['Terminalia', ['tropical almond', 'Indian almond', 'black olive'], 3, 15, 13, 'broadleaf', ['Bucida']],
  ['Toona', ['toona', 'Chinese mahogany', 'Australian red cedar', 'Chinese toon'], 3, 18, 11],
  ['Torreya', ['torreya', 'nutmeg yew', 'stinking cedar'], 1, 14, 8, 'conifer'],
  ['Toxicodendron', ['rhus tree', 'wax tree', 'poison sumac'], 3, 6, 5],
  ['Xylosma', ['xylosma'], 1, 6, 5],
  ['Yucca', ['yucca', 'Joshua tree'], 1, 6, 4, 'palm'],
];

function byHand([genus, common, vigour, heightM, crownM, form, synonyms]: Hand): SpeciesRow {
  return {
    key: keyOf(genus),
    botanical: genus,
    common,
    synonyms: synonyms ?? [],
    rank: 'genus',
    form: form ?? 'broadleaf',
    vigour: ours(vigour, 'by its kin and habit'),
    waterDemand: waterOfGenus(genus),
    matureHeightM: book(heightM),
    matureCrownM: book(crownM),
    crownRatio: null,
    crownEquation: null,
    dbhGrowthCmPerYear: USUAL_GROWTH,
  };
}

export const generaByHand: readonly SpeciesRow[] = HAND.map(byHand);
