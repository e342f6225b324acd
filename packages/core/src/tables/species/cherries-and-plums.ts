import type { SpeciesRow } from '../species-row.js';
import { book, growth, listed, named, ours, p95, ratio, remembered, species, standardHeight } from './row.js';

/** Cherries, plums and their kin, `Prunus`. */
export const cherriesAndPlums: readonly SpeciesRow[] = [
  species('Prunus avium', ['wild cherry', 'sweet cherry', 'mazzard', 'gean'], {
    vigour: listed(2, 'bundaberg-root-list', 'from 10 m'),
    water: named('moderate'),
    height: standardHeight(17),
    crown: book(12),
  }),
  species('Prunus cerasifera', ['cherry plum', 'purple-leaf plum', 'myrobalan plum'], {
    vigour: listed(2, 'bundaberg-root-list', 'from 10 m'),
    water: named('moderate'),
    height: p95(11.5),
    crown: p95(10.6),
    ratio: ratio(25.6, 173),
    growth: growth(1.15, 160),
  }),
  species(
    'Prunus serrulata',
    ['Japanese cherry', 'Kwanzan cherry', 'Japanese flowering cherry', 'oriental cherry'],
    {
      vigour: listed(2, 'bundaberg-root-list', 'from 10 m'),
      water: named('moderate'),
      height: p95(12),
      crown: p95(12.3),
      ratio: ratio(19.8, 65, 'Yoshino cherry'),
      growth: growth(1.7, 34, 'Yoshino cherry'),
    },
  ),
  species('Prunus × yedoensis', ['Yoshino cherry', 'Tokyo cherry'], {
    vigour: listed(2, 'bundaberg-root-list', 'from 10 m'),
    water: named('moderate'),
    height: p95(12),
    crown: p95(12.3),
    ratio: ratio(19.8, 65, 'Japanese cherry'),
    growth: growth(1.7, 34, 'Japanese cherry'),
  }),
  remembered('Prunus virginiana', ['chokecherry', 'Schubert chokecherry', 'Canada red cherry'], 2, 9, 7),
  remembered('Prunus serotina', ['black cherry', 'wild black cherry'], 3, 22, 13),
  remembered('Prunus persica', ['peach', 'nectarine'], 2, 6, 6),
  remembered('Prunus armeniaca', ['apricot'], 2, 8, 8),
  remembered('Prunus dulcis', ['almond'], 2, 8, 7, { synonyms: ['Prunus amygdalus'] }),
  remembered('Prunus sargentii', ['Sargent cherry', "Sargent's cherry"], 2, 12, 11),
  remembered('Prunus subhirtella', ['Higan cherry', 'weeping cherry', 'winter-flowering cherry'], 2, 9, 9, {
    synonyms: ['Prunus × subhirtella', 'Prunus pendula'],
  }),
  remembered('Prunus pensylvanica', ['pin cherry', 'fire cherry'], 2, 9, 6),
  remembered('Prunus padus', ['bird cherry', 'Mayday tree', 'European bird cherry'], 2, 12, 9),
  remembered('Prunus maackii', ['Amur chokecherry', 'Amur cherry', 'Manchurian cherry'], 2, 11, 8),
  remembered('Prunus americana', ['American plum', 'wild plum'], 2, 7, 6),
  remembered('Prunus nigra', ['Canada plum'], 2, 7, 6),
  remembered('Prunus salicina', ['Japanese plum'], 2, 8, 7),
  remembered('Prunus caroliniana', ['Carolina laurelcherry', 'Carolina cherry laurel'], 2, 9, 7),
  remembered('Prunus lusitanica', ['Portugal laurel', 'Portuguese laurel'], 2, 7, 6),
  remembered('Prunus ilicifolia', ['hollyleaf cherry', 'Catalina cherry'], 2, 9, 7, {
    synonyms: ['Prunus lyonii'],
  }),
  remembered('Prunus mume', ['Japanese apricot', 'mume'], 2, 6, 6),
  species('Prunus laurocerasus', ['cherry laurel', 'laurel cherry', 'English laurel'], {
    vigour: ours(2, 'by its kin and habit'),
    water: named('moderate'),
    height: standardHeight(8),
    crown: book(7),
  }),
  species('Prunus domestica', ['plum', 'European plum', 'damson', 'garden plum'], {
    vigour: listed(2, 'bundaberg-root-list', 'from 10 m'),
    water: named('moderate'),
    height: standardHeight(10),
    crown: book(7),
  }),
  species('Prunus cerasus', ['sour cherry', 'orchard cherry'], {
    vigour: listed(2, 'bundaberg-root-list', 'from 10 m'),
    water: named('moderate'),
    height: standardHeight(12),
    crown: book(8),
  }),
  species('Prunus spinosa', ['blackthorn', 'sloe'], {
    vigour: ours(2, 'by its kin and habit'),
    water: named('moderate'),
    height: standardHeight(8),
    crown: book(5),
  }),
];
