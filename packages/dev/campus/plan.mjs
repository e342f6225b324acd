/* What the invented campus is made of; every number here is our judgement of what is usual. */

export const TREE_COUNT = 150;
export const COLUMNS = [8, 82, 156];
export const ROWS = [12, 74, 136];
export const HALL_NAMES = [
  'Hall 1',
  'Hall 2',
  'Workshop',
  'Hall 3',
  'Reading room',
  'Hall 4',
  'Sports hall',
  'Hall 5',
  'Greenhouse',
];
export const NOTE = 'Invented.';

/* Mains by what they carry, from the upper end to the outlet; `y` is where the main runs. */
export const MAINS = [
  { key: 'a', carries: 'storm', y: 63, from: 226, to: -6, sizes: [200, 250, 300] },
  { key: 'c', carries: 'storm', y: 185, from: 226, to: -6, sizes: [200, 250, 300] },
  { key: 'b', carries: 'foul', y: 126, from: 2, to: 234, sizes: [150, 150, 200] },
  { key: 'd', carries: 'foul', y: 2, from: 2, to: 234, sizes: [150, 150, 200] },
];
export const MAIN_REACHES = {
  a: [
    ['clay', 1964],
    ['concrete', 1971],
    ['hdpe-dual-wall', 2011],
  ],
  c: [
    ['pvc-sdr35', 1996],
    ['concrete', 1971],
    ['concrete', 1971],
  ],
  b: [
    ['clay', 1964],
    ['asbestos-cement', 1969],
    ['pvc-sdr35', 2004],
  ],
  d: [
    ['cast-iron', 1964],
    ['clay', 1964],
    ['hdpe-welded', 2015],
  ],
};
export const TRUNKS = [
  {
    carries: 'storm',
    x: -6,
    y: [185, 63, -20],
    reaches: [
      ['concrete', 1971],
      ['hdpe-dual-wall', 2011],
    ],
    size: 375,
  },
  {
    carries: 'foul',
    x: 234,
    y: [126, 2, -20],
    reaches: [
      ['clay', 1964],
      ['pvc-sdr35', 2004],
    ],
    size: 225,
  },
];

/* Lines of the halls: material, years in which it was laid, nominal size in mm. */
export const STORM_KINDS = [
  ['clay', 1958, 1968, 100],
  ['cast-iron', 1958, 1970, 100],
  ['bituminous-fibre', 1958, 1966, 100],
  ['pvc-thin-wall', 1984, 2006, 100],
  ['pvc-sdr35', 1990, 2018, 110],
  ['hdpe-corrugated', 1992, 2014, 100],
  ['abs', 1978, 1990, 100],
  ['unknown', 1960, 1990, 100],
];
export const FOUL_KINDS = [
  ['clay', 1958, 1968, 150],
  ['cast-iron', 1958, 1970, 100],
  ['pvc-sdr35', 1990, 2018, 110],
  ['pvc-sch40', 1995, 2018, 110],
];
export const YARD_KINDS = [
  ['hdpe-corrugated', 1998, 2014, 100],
  ['hdpe-corrugated-heavy', 2006, 2018, 150],
  ['pvc-thin-wall', 1988, 2006, 100],
];

/* Names as an inventory may write them; stem growth in cm a year; the oldest that one stands here, in years. */
export const ROW_SPECIES = [
  ['Ulmus americana', 1.1, 85],
  ['Platanus x acerifolia', 1.2, 70],
  ['Tilia cordata', 0.8, 60],
  ['Acer rubrum', 0.9, 50],
  ['Fraxinus pennsylvanica', 0.9, 50],
  ['Gleditsia triacanthos', 0.9, 45],
  ['Quercus palustris', 1, 60],
  ['Acer saccharinum', 1.3, 60],
  ['Zelkova serrata', 0.9, 35],
  ['Ginkgo biloba', 0.6, 50],
  ['Quercus rubra', 0.9, 65],
  ['Pyrus calleryana', 0.9, 25],
];
export const CLUMP_SPECIES = [
  ['Betula nigra', 0.9, 35],
  ['river birch', 0.9, 35],
  ['Salix babylonica', 1.6, 40],
  ['Populus deltoides', 1.6, 45],
  ['Picea abies', 0.8, 50],
  ['Pinus strobus', 0.9, 55],
  ['Cornus florida', 0.4, 30],
  ['Cercis canadensis', 0.5, 25],
  ['Liquidambar styraciflua', 0.9, 45],
  ['Liriodendron tulipifera', 1.1, 55],
  ['sugar maple', 0.7, 60],
  ['Robinia pseudoacacia', 0.9, 40],
  ['Magnolia grandiflora', 0.8, 35],
  ['Quercus alba', 0.6, 90],
  ['Morus alba', 0.9, 40],
  ['Ilex opaca', 0.5, 35],
  ['Malus domestica', 0.6, 30],
];
