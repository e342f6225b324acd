import { describe, expect, it } from 'vitest';
import { resolveSpecies } from '../../../packages/core/src/names/resolve-species.js';
import { speciesTable } from '../../../packages/core/src/tables/species.js';

const keyOf = (text: string | null): string => resolveSpecies(text).key;

describe('names as they stand in the table', () => {
  it('resolve exactly, by key, botanical and first plain name', () => {
    for (const row of speciesTable.values()) {
      if (row.rank === 'unknown') continue;
      for (const text of [row.key, row.botanical, row.botanical.toUpperCase()]) {
        expect(resolveSpecies(text), text).toMatchObject({
          text,
          key: row.key,
          level: row.rank,
          certainty: 'exact',
        });
      }
    }
  });

  it('resolve by every plain name, but for those that mean several trees', () => {
    const strayed = [...speciesTable.values()].flatMap((row) =>
      row.common.filter((name) => keyOf(name) !== row.key).map((name) => `${name} of ${row.key}`),
    );
    expect(strayed).toEqual([]);
  });

  it('resolve by every synonym', () => {
    for (const row of speciesTable.values()) {
      for (const synonym of row.synonyms) expect(keyOf(synonym), synonym).toBe(row.key);
    }
  });
});

describe('ways of writing', () => {
  it.each([
    // order and case
    ['Maple, Norway', 'acer-platanoides', 'exact'],
    ['MAPLE, NORWAY', 'acer-platanoides', 'exact'],
    ['Cypress, bald', 'taxodium-distichum', 'exact'],
    ['Fir, Douglas', 'pseudotsuga-menziesii', 'exact'],
    ['Magnolia, southern', 'magnolia-grandiflora', 'exact'],
    ['Acacia, false', 'robinia-pseudoacacia', 'exact'],
    ['acer RUBRUM', 'acer-rubrum', 'exact'],
    ['Pine scots', 'pinus-sylvestris', 'exact'],
    // both names
    ['Quercus robur :: English oak', 'quercus-robur', 'exact'],
    ['Acer :: Norway maple', 'acer-platanoides', 'exact'],
    ['Quercus robur - English oak', 'quercus-robur', 'exact'],
    ['Quercus robur, English oak', 'quercus-robur', 'exact'],
    ['Quercus robur (English oak)', 'quercus-robur', 'exact'],
    ['English oak (Quercus robur)', 'quercus-robur', 'exact'],
    ['Callery pear / Bradford', 'pyrus-calleryana', 'exact'],
    ['Norway maple Acer platanoides', 'acer-platanoides', 'exact'],
    // cultivars and lower ranks
    ["Acer rubrum 'October Glory'", 'acer-rubrum', 'exact'],
    ['Acer rubrum “Red Sunset”', 'acer-rubrum', 'exact'],
    ['Pyrus calleryana cv. Aristocrat', 'pyrus-calleryana', 'exact'],
    ["Gleditsia triacanthos f. inermis 'Shademaster'", 'gleditsia-triacanthos', 'exact'],
    ['Gleditsia triacanthos var. inermis', 'gleditsia-triacanthos', 'exact'],
    ['Betula pendula subsp. pendula', 'betula-pendula', 'exact'],
    ["Fraxinus pennsylvanica 'Marshall's seedless'", 'fraxinus-pennsylvanica', 'exact'],
    ["Populus nigra 'Italica'", 'populus-nigra-italica', 'exact'],
    ["Populus nigra 'Vereecken'", 'populus-nigra', 'exact'],
    ['Maple, Norway Crimson King', 'acer-platanoides', 'likely'],
    ['Mulberry, white weeping', 'morus-alba', 'likely'],
    ["Japanese Maple 'Bloodgood'", 'acer-palmatum', 'exact'],
    // hybrids
    ['Platanus x acerifolia', 'platanus-x-acerifolia', 'exact'],
    ['Platanus X acerifolia', 'platanus-x-acerifolia', 'exact'],
    ['Platanus × acerifolia', 'platanus-x-acerifolia', 'exact'],
    ['Platanus acerifolia', 'platanus-x-acerifolia', 'exact'],
    ['Tilia europaea', 'tilia-x-europaea', 'exact'],
    ['x Hesperotropsis leylandii', 'x-hesperotropsis-leylandii', 'exact'],
    ["Acer x freemanii (A. rubrum x saccharinum) 'Autumn Blaze'", 'acer-x-freemanii', 'exact'],
    // synonyms
    ['Platanus × hispanica', 'platanus-x-acerifolia', 'likely'],
    ['Sophora japonica', 'styphnolobium-japonicum', 'likely'],
    ['Cupressocyparis leylandii', 'x-hesperotropsis-leylandii', 'likely'],
    ['× Cupressocyparis leylandii', 'x-hesperotropsis-leylandii', 'likely'],
    ['Acer ginnala', 'acer-tataricum', 'likely'],
    ['Sapium sebiferum', 'triadica-sebifera', 'likely'],
    ['Tristania conferta', 'lophostemon-confertus', 'likely'],
    // spacing, hyphens, plural, fillers
    ['honey locust', 'gleditsia-triacanthos', 'exact'],
    ['Honeylocust', 'gleditsia-triacanthos', 'exact'],
    ['Horse-chestnut', 'aesculus-hippocastanum', 'exact'],
    ['tulip-poplar', 'liriodendron-tulipifera', 'exact'],
    ['Maple (red)', 'acer-rubrum', 'exact'],
    ['Oak - white', 'quercus-alba', 'exact'],
    ['red maples', 'acer-rubrum', 'exact'],
    ['Red Maple Tree', 'acer-rubrum', 'exact'],
    ['huge old cottonwood', 'populus-deltoides', 'exact'],
    ["'Schubert' chokecherry", 'prunus-virginiana', 'exact'],
  ] as const)('%s is %s (%s)', (text, key, certainty) => {
    expect(resolveSpecies(text)).toEqual({ text, key, level: 'species', certainty });
  });

  it.each([
    ['Acer', 'acer', 'exact'],
    ['Quercus sp.', 'quercus', 'exact'],
    ['Quercus spp.', 'quercus', 'exact'],
    ['Prunus species', 'prunus', 'exact'],
    ['oaks', 'quercus', 'exact'],
    ['cherries', 'prunus', 'exact'],
    ['big old oak', 'quercus', 'exact'],
    ["Malus 'Profusion'", 'malus', 'exact'],
    ['Thuya', 'thuja', 'exact'],
    ['ash', 'fraxinus', 'exact'],
    ['fir', 'abies', 'exact'],
    ['plane', 'platanus', 'exact'],
    ['beech', 'fagus', 'exact'],
    ['Acer foobarensis', 'acer', 'guess'],
    ['Malus profusion', 'malus', 'guess'],
    ['tortilla oak', 'quercus', 'guess'],
    ['Elm, tortilla', 'ulmus', 'guess'],
    // one species stands for the genus
    ['Metasequoia', 'metasequoia-glyptostroboides', 'likely'],
    ['Pittosporum tobira', 'pittosporum-undulatum', 'guess'],
    ['Picea :: Norway maple', 'picea', 'guess'],
  ] as const)('%s is the genus %s (%s)', (text, key, certainty) => {
    expect(resolveSpecies(text)).toEqual({ text, key, level: 'genus', certainty });
  });
});

describe('names that mean several trees', () => {
  it.each([
    ['sycamore', 'platanus-occidentalis'],
    ['lime', 'tilia'],
    ['locust', 'robinia'],
    ['mountain ash', 'sorbus'],
    ['Ash, mountain', 'sorbus'],
    ['red cedar', 'juniperus-virginiana'],
    ['white cedar', 'thuja-occidentalis'],
    ['cedar', 'unknown-conifer'],
    ['ironwood', 'ostrya-virginiana'],
    ['gum', 'eucalyptus'],
    ['Sophora', 'styphnolobium-japonicum'],
  ] as const)('%s is only guessed to be %s', (text, key) => {
    expect(resolveSpecies(text)).toMatchObject({ key, certainty: 'guess' });
  });
});

describe('names that look like another genus', () => {
  it.each([
    ['Douglas fir', 'pseudotsuga-menziesii'],
    ['European mountain ash', 'sorbus-aucuparia'],
    ['Australian mountain ash', 'eucalyptus-regnans'],
    ['prickly ash', 'zanthoxylum-americanum'],
    ['western red cedar', 'thuja-plicata'],
    ['incense cedar', 'calocedrus-decurrens'],
    ['Atlas cedar', 'cedrus-atlantica'],
    ['cedar elm', 'ulmus-crassifolia'],
    ['silky oak', 'grevillea-robusta'],
    ['she-oak', 'casuarina'],
    ['tulip poplar', 'liriodendron-tulipifera'],
    ['yellow poplar', 'liriodendron-tulipifera'],
    ['black gum', 'nyssa-sylvatica'],
    ['sweet gum', 'liquidambar-styraciflua'],
    ['blue gum', 'eucalyptus-globulus'],
    ['horse chestnut', 'aesculus-hippocastanum'],
    ['chestnut', 'castanea'],
    ['chestnut oak', 'quercus-montana'],
    ['willow oak', 'quercus-phellos'],
    ['desert willow', 'chilopsis-linearis'],
    ['Australian willow', 'geijera-parviflora'],
    ['Russian olive', 'elaeagnus-angustifolia'],
    ['Cornelian cherry', 'cornus-mas'],
    ['cherry laurel', 'prunus-laurocerasus'],
    ['cherry plum', 'prunus-cerasifera'],
    ['camphor laurel', 'cinnamomum-camphora'],
    ['crape myrtle', 'lagerstroemia-indica'],
    ['box elder', 'acer-negundo'],
    ['ash-leaved maple', 'acer-negundo'],
    ['sycamore maple', 'acer-pseudoplatanus'],
    ['Acer pseudoplatanus', 'acer-pseudoplatanus'],
    ['Robinia pseudoacacia', 'robinia-pseudoacacia'],
    ['false cypress', 'chamaecyparis'],
    ['bald cypress', 'taxodium-distichum'],
    ['swamp cypress', 'taxodium-distichum'],
    ['Norfolk Island pine', 'araucaria-heterophylla'],
    ['Australian pine', 'casuarina-equisetifolia'],
    ['dawn redwood', 'metasequoia-glyptostroboides'],
    ['witch hazel', 'hamamelis-virginiana'],
    ['paper mulberry', 'broussonetia-papyrifera'],
    ['Osage orange', 'maclura-pomifera'],
    ['southern beech', 'nothofagus'],
    ['water elm', 'planera'],
    ['African tulip tree', 'spathodea-campanulata'],
    ['Japanese cedar', 'cryptomeria-japonica'],
    ['Port Orford cedar', 'chamaecyparis-lawsoniana'],
    ['Chile pine', 'araucaria-araucana'],
    ['pepper tree', 'schinus-molle'],
    ['Norway spruce', 'picea-abies'],
  ] as const)('%s is %s', (text, key) => {
    expect(keyOf(text)).toBe(key);
  });

  it.each(['rose apple', 'prickly pear', 'Cape chestnut', 'Spanish cedar', 'poison oak', 'hoop pine'])(
    '%s is known by its form only',
    (text) => {
      expect(resolveSpecies(text)).toMatchObject({ level: 'group', certainty: 'guess' });
    },
  );

  it.each([
    'mock orange',
    'oak leaf hydrangea',
    'oakleaf hydrangea',
    'Rosa',
    'Salvia',
    'Morinda citrifolia',
    'plant',
  ])('%s is no tree of the table', (text) => {
    expect(resolveSpecies(text)).toMatchObject({ key: 'unknown-tree', level: 'unknown', certainty: 'none' });
  });
});

describe('names of no tree in particular', () => {
  it.each([
    null,
    '',
    '  ',
    '?',
    'n/a',
    'unknown',
    'Unknown tree',
    'other',
    'tree',
    'unidentified species',
    '12',
  ])('%s is an unknown tree', (text) => {
    expect(resolveSpecies(text)).toEqual({ text, key: 'unknown-tree', level: 'unknown', certainty: 'none' });
  });

  it.each(['stump', 'Dead Acer rubrum', 'vacant site', 'Planting space', 'removed'])(
    '%s is no species',
    (text) => {
      expect(resolveSpecies(text)).toMatchObject({ key: 'unknown-tree', certainty: 'none' });
    },
  );

  it.each([
    ['conifer', 'unknown-conifer'],
    ['evergreen', 'unknown-conifer'],
    ['large conifer', 'unknown-conifer-large'],
    ['broadleaf', 'unknown-broadleaf'],
    ['broad-leaved tree', 'unknown-broadleaf'],
    ['small deciduous', 'unknown-broadleaf-small'],
    ['medium broadleaf', 'unknown-broadleaf-medium'],
    ['big tree', 'unknown-broadleaf-large'],
    ['palm', 'unknown-palm'],
    ['some kind of palm', 'unknown-palm'],
  ] as const)('%s is %s', (text, key) => {
    expect(resolveSpecies(text)).toEqual({ text, key, level: 'group', certainty: 'guess' });
  });
});
