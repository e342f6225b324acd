import { cite } from '../../sources/cited.js';
import type { PipeRow } from '../pipe-row.js';
import { feet, life, nominalSizes, otherFeet, psi, size } from './row-parts.js';

const HALF_CORRUGATED_N: PipeRow['manningN'] = {
  low: cite(0.015, 'common-practice', 'memory', 'corrugated tubing of 3 to 8 in'),
  mid: cite(0.018, 'fhwa-hec22', 'quoted', 'corrugated inner wall, low end'),
  high: cite(0.024, 'fhwa-hec22', 'quoted', 'corrugated inner wall, near the high end of 0.025'),
};

const SMOOTH_PLASTIC_N: PipeRow['manningN'] = {
  low: cite(0.009, 'fhwa-hec22', 'quoted', 'smooth PVC, low end'),
  mid: cite(0.011, 'fhwa-hec22', 'quoted', 'smooth PVC, high end'),
  high: cite(0.013, 'caltrans-hdm-851', 'quoted', 'smooth plastic, high end'),
};

const CORRUGATED_LENGTHS = otherFeet(10, 20, 250);
const SMALL_SIZES = [3, 4, 6, 8];

const corrugated: readonly PipeRow[] = [
  {
    key: 'hdpe-corrugated',
    name: 'single-wall corrugated plastic',
    sizes: nominalSizes(SMALL_SIZES, 'aashto-m252', 'quoted'),
    pieceM: feet(100, 'common-practice', 'memory', 'the usual retail coil'),
    otherPiecesM: CORRUGATED_LENGTHS,
    joint: 'snap',
    stiffness: psi(24, 'astm-f667', 'memory', 'F405 standard grade'),
    rigid: false,
    manningN: HALF_CORRUGATED_N,
    ...life(25, 'shallow yard lines, 15 to 30 years', 'judgement'),
  },
  {
    key: 'hdpe-corrugated-heavy',
    name: 'heavy-duty single-wall corrugated plastic',
    sizes: nominalSizes(SMALL_SIZES, 'aashto-m252', 'quoted'),
    pieceM: feet(100, 'common-practice', 'memory', 'the usual retail coil'),
    otherPiecesM: CORRUGATED_LENGTHS,
    joint: 'snap',
    stiffness: psi(35, 'aashto-m252', 'memory', 'minimum of the highway grade'),
    rigid: false,
    manningN: HALF_CORRUGATED_N,
    ...life(35, 'between thin corrugated and dual wall', 'judgement'),
  },
  {
    key: 'hdpe-dual-wall',
    name: 'dual-wall corrugated plastic',
    sizes: [
      size(4, cite(4.1, 'common-practice', 'memory', 'varies by maker')),
      size(6, cite(6.1, 'common-practice', 'memory', 'varies by maker')),
      size(8, cite(8, 'common-practice', 'memory', 'varies by maker')),
      size(10, cite(9.9, 'common-practice', 'memory', 'varies by maker')),
      size(
        12,
        cite(12.1, 'common-practice', 'memory', 'varies by maker'),
        psi(50, 'aashto-m252', 'memory', 'M294'),
      ),
    ],
    pieceM: feet(20, 'common-practice', 'memory'),
    otherPiecesM: otherFeet(10, 13),
    joint: 'gasket',
    stiffness: psi(35, 'aashto-m252', 'memory'),
    rigid: false,
    manningN: {
      low: cite(0.009, 'fhwa-hec22', 'quoted', 'corrugated polyethylene with a smooth inner wall'),
      mid: cite(0.012, 'caltrans-hdm-851', 'quoted', 'smooth interior, design value'),
      high: cite(0.015, 'fhwa-hec22', 'quoted', 'corrugated polyethylene with a smooth inner wall'),
    },
    ...life(60, '50 to 100 years claimed', 'memory'),
  },
];

const solidWall: readonly PipeRow[] = [
  {
    key: 'hdpe-welded',
    name: 'heat-fused solid polyethylene',
    sizes: [
      size(4, cite(4.5 - 2 * (4.5 / 17), 'common-practice', 'calculated', 'OD 4.500 in, wall OD / 17')),
      size(6, cite(6.625 - 2 * (6.625 / 17), 'common-practice', 'calculated', 'OD 6.625 in, wall OD / 17')),
      size(8, cite(8.625 - 2 * (8.625 / 17), 'common-practice', 'calculated', 'OD 8.625 in, wall OD / 17')),
    ],
    pieceM: feet(40, 'common-practice', 'memory'),
    otherPiecesM: otherFeet(20, 50),
    joint: 'welded',
    // 4.47 E / (DR - 1)^3 with E = 110,000 psi and DR 17
    stiffness: psi(120, 'astm-d2412', 'calculated', 'DR 17, E = 110,000 psi'),
    rigid: false,
    manningN: SMOOTH_PLASTIC_N,
    ...life(80, '50 to 100 years claimed', 'memory'),
  },
  {
    key: 'pvc-sdr35',
    name: 'PVC sewer pipe (SDR 35)',
    sizes: [
      size(4, cite(3.974, 'astm-d3034', 'calculated', 'OD 4.215 in less two minimum walls of 0.120 in')),
      size(6, cite(5.916, 'astm-d3034', 'calculated', 'OD 6.275 in less two walls of OD / 35')),
      size(8, cite(7.92, 'astm-d3034', 'calculated', 'OD 8.400 in less two walls of OD / 35')),
      size(10, cite(9.9, 'astm-d3034', 'calculated', 'OD 10.500 in less two walls of OD / 35')),
      size(12, cite(11.786, 'astm-d3034', 'calculated', 'OD 12.500 in less two walls of OD / 35')),
    ],
    pieceM: feet(14, 'astm-d3034', 'quoted', 'laying lengths 14 and 20 ft'),
    otherPiecesM: otherFeet(10, 20),
    joint: 'gasket',
    stiffness: psi(46, 'astm-d3034', 'quoted', '4.47 x 400,000 / 34^3 = 45.5'),
    rigid: false,
    manningN: SMOOTH_PLASTIC_N,
    ...life(75, '50 to 100 years'),
  },
  {
    key: 'pvc-sch40',
    name: 'schedule 40 PVC',
    sizes: [
      size(3, cite(3.042, 'astm-d1785', 'quoted'), psi(509, 'astm-d2412', 'calculated', 'E = 400,000 psi')),
      size(4, cite(3.998, 'astm-d1785', 'quoted'), psi(307, 'astm-d2412', 'calculated', 'E = 400,000 psi')),
      size(6, cite(6.031, 'astm-d1785', 'quoted'), psi(154, 'astm-d2412', 'calculated', 'E = 400,000 psi')),
      size(8, cite(7.943, 'astm-d1785', 'quoted'), psi(104, 'astm-d2412', 'calculated', 'E = 400,000 psi')),
      size(10, cite(9.976, 'astm-d1785', 'quoted'), psi(78, 'astm-d2412', 'calculated', 'E = 400,000 psi')),
      size(12, cite(11.89, 'astm-d1785', 'quoted'), psi(64, 'astm-d2412', 'calculated', 'E = 400,000 psi')),
    ],
    pieceM: feet(10, 'common-practice', 'read'),
    otherPiecesM: otherFeet(20),
    joint: 'solvent',
    stiffness: psi(307, 'astm-d2412', 'calculated', '4 in, E = 400,000 psi'),
    rigid: false,
    manningN: SMOOTH_PLASTIC_N,
    ...life(75, '50 to 100 years'),
  },
  {
    key: 'pvc-thin-wall',
    name: 'thin-wall PVC drain pipe',
    sizes: [
      size(
        3,
        cite(3.11, 'astm-d2729', 'memory', 'OD 3.250 in less two walls of 0.070 in'),
        psi(19, 'astm-d2729', 'read', 'table 5'),
      ),
      size(
        4,
        cite(4.065, 'astm-d2729', 'memory', 'OD 4.215 in less two walls of 0.075 in'),
        psi(11, 'astm-d2729', 'read', 'table 5'),
      ),
      size(
        6,
        cite(6.075, 'astm-d2729', 'memory', 'OD 6.275 in less two walls of 0.100 in'),
        psi(8, 'astm-d2729', 'read', 'table 5'),
      ),
    ],
    pieceM: feet(10, 'common-practice', 'memory'),
    otherPiecesM: [],
    // pushed together; the standard has no tightness test for it
    joint: 'snap',
    stiffness: psi(11, 'astm-d2729', 'read', 'table 5, 4 in'),
    rigid: false,
    manningN: SMOOTH_PLASTIC_N,
    ...life(40, 'thin wall: about half of sewer-grade PVC', 'judgement'),
  },
  {
    key: 'abs',
    name: 'ABS',
    sizes: [
      size(3, cite(3.042, 'astm-d1785', 'memory', 'as schedule 40 PVC')),
      size(4, cite(3.998, 'astm-d1785', 'memory', 'as schedule 40 PVC')),
      size(6, cite(6.031, 'astm-d1785', 'memory', 'as schedule 40 PVC')),
    ],
    pieceM: feet(10, 'common-practice', 'memory'),
    otherPiecesM: otherFeet(20),
    joint: 'solvent',
    // E of 240,000 psi against 400,000 psi of PVC, same walls
    stiffness: psi(184, 'astm-d2412', 'calculated', '4 in, E = 240,000 psi'),
    rigid: false,
    manningN: SMOOTH_PLASTIC_N,
    ...life(60, '50 to 100 years'),
  },
];

export const plasticPipes: readonly PipeRow[] = [...corrugated, ...solidWall];
