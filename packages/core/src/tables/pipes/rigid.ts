import { cite } from '../../sources/cited.js';
import type { PipeRow } from '../pipe-row.js';
import { feet, life, nominalSizes, otherFeet, psi, size } from './row-parts.js';

const RIGID = 'equivalent for a pipe that breaks rather than bends';

const CONCRETE_N: PipeRow['manningN'] = {
  low: cite(0.011, 'caltrans-hdm-851', 'quoted', 'precast concrete'),
  mid: cite(0.013, 'common-practice', 'memory', 'usual design value'),
  high: cite(0.017, 'caltrans-hdm-851', 'quoted', 'precast concrete'),
};

export const rigidPipes: readonly PipeRow[] = [
  {
    key: 'clay',
    name: 'clay tile',
    sizes: nominalSizes([3, 4, 6, 8, 10, 12], 'common-practice', 'memory'),
    pieceM: feet(3, 'common-practice', 'memory', 'joints every 3 to 5 ft; older pipe 2 to 3 ft'),
    otherPiecesM: otherFeet(1, 2, 4, 5, 6),
    joint: 'mortar',
    stiffness: psi(200, 'our-judgement', 'judgement', RIGID),
    rigid: true,
    manningN: {
      low: cite(0.012, 'common-practice', 'memory', 'clay drain tile'),
      mid: cite(0.013, 'caltrans-hdm-851', 'quoted', 'clay sewer pipe'),
      high: cite(0.015, 'fhwa-hec22', 'quoted', 'vitrified clay'),
    },
    ...life(75, '50 to 150 years; mortar joints less'),
  },
  {
    key: 'concrete',
    name: 'concrete',
    sizes: nominalSizes([4, 6, 8, 10, 12], 'common-practice', 'memory'),
    pieceM: feet(3, 'common-practice', 'memory', 'old house lines; newer pipe 4 to 8 ft'),
    otherPiecesM: otherFeet(4, 6, 8),
    joint: 'mortar',
    stiffness: psi(200, 'our-judgement', 'judgement', RIGID),
    rigid: true,
    manningN: CONCRETE_N,
    ...life(75, '75 to 100 years'),
  },
  {
    key: 'cast-iron',
    name: 'cast iron',
    sizes: [
      size(3, cite(3, 'common-practice', 'memory', 'nominal size is the bore')),
      size(4, cite(3.94, 'common-practice', 'memory', 'service weight')),
      size(6, cite(5.94, 'common-practice', 'memory', 'service weight')),
      size(8, cite(7.94, 'common-practice', 'memory', 'service weight')),
    ],
    pieceM: feet(5, 'astm-a74', 'read', '2.5, 3.5, 5 and 10 ft'),
    otherPiecesM: otherFeet(2.5, 3.5, 10),
    joint: 'band',
    stiffness: psi(300, 'our-judgement', 'judgement', RIGID),
    rigid: true,
    manningN: {
      low: cite(0.013, 'common-practice', 'memory', 'coated, new'),
      mid: cite(0.015, 'caltrans-hdm-851', 'quoted'),
      high: cite(0.018, 'our-judgement', 'judgement', 'rusted inside'),
    },
    ...life(70, '50 to 100 years'),
  },
  {
    key: 'asbestos-cement',
    name: 'asbestos cement',
    sizes: nominalSizes([4, 6, 8, 10, 12], 'common-practice', 'memory'),
    pieceM: feet(10, 'common-practice', 'memory', '10 and 13 ft'),
    otherPiecesM: otherFeet(5, 13),
    joint: 'gasket',
    stiffness: psi(150, 'our-judgement', 'judgement', RIGID),
    rigid: true,
    manningN: {
      low: cite(0.01, 'common-practice', 'memory'),
      mid: cite(0.011, 'common-practice', 'memory'),
      high: cite(0.015, 'common-practice', 'memory'),
    },
    ...life(60, '50 to 70 years', 'memory'),
  },
  {
    key: 'bituminous-fibre',
    name: 'bituminous fibre',
    sizes: nominalSizes([3, 4, 6], 'common-practice', 'memory'),
    pieceM: feet(8, 'common-practice', 'memory', '5 to 10 ft'),
    otherPiecesM: otherFeet(5, 10),
    // tapered ends driven together, nothing in the gap
    joint: 'snap',
    stiffness: psi(25, 'our-judgement', 'judgement', 'softens and flattens with age'),
    rigid: false,
    manningN: {
      low: cite(0.011, 'our-judgement', 'judgement', 'new'),
      mid: cite(0.013, 'our-judgement', 'judgement'),
      high: cite(0.018, 'our-judgement', 'judgement', 'blistered'),
    },
    ...life(40, '30 to 50 years; replace on sight'),
  },
  {
    key: 'brick',
    name: 'brick',
    sizes: nominalSizes([8, 10, 12], 'our-judgement', 'judgement'),
    // brickwork is joints all along; a bonded length of a foot counts as one open way in
    pieceM: feet(1, 'our-judgement', 'judgement', 'mortar joints all along'),
    otherPiecesM: [],
    joint: 'mortar',
    stiffness: psi(60, 'our-judgement', 'judgement', 'old mortar gives way'),
    rigid: true,
    manningN: {
      low: cite(0.013, 'common-practice', 'memory'),
      mid: cite(0.015, 'common-practice', 'memory'),
      high: cite(0.017, 'common-practice', 'memory'),
    },
    ...life(100, '100 years and more', 'judgement'),
  },
  {
    key: 'unknown',
    name: 'pipe of unknown material',
    sizes: nominalSizes([3, 4, 6, 8, 10, 12], 'our-judgement', 'judgement'),
    pieceM: feet(10, 'our-judgement', 'judgement', 'the commonest stick'),
    otherPiecesM: otherFeet(3, 5, 20),
    joint: 'snap',
    stiffness: psi(46, 'our-judgement', 'judgement', 'as sewer-grade PVC, the middle of the table'),
    rigid: false,
    manningN: {
      low: cite(0.01, 'our-judgement', 'judgement'),
      mid: cite(0.013, 'our-judgement', 'judgement'),
      high: cite(0.02, 'our-judgement', 'judgement'),
    },
    ...life(60, 'the middle of the table', 'judgement'),
  },
];
