import type { ElevationFault, ElevationReading } from '../elevation/elevation-reading.js';

const WORDS: Readonly<Record<ElevationFault, string>> = {
  'not-a-grid': 'not a grid of heights: a GeoTIFF or an ASCII grid is read',
  'odd-header': 'the header lacks something or says what cannot be',
  'too-few-heights': 'it has fewer heights than cells',
  'no-reference':
    'nothing tells where on earth it lies: give the EPSG code of its coordinates, or a place for its corner',
  'unknown-reference': 'the system of its coordinates is not known here',
  'too-many-cells': 'too many cells: cut it to the place first, or give a box',
  elsewhere: 'none of it lies about the place asked for',
  'no-heights': 'none of its cells has a height',
};

/** Why a file gives no ground heights, a sentence without its full stop. */
export const wordElevationFault = ({ fault, found }: Extract<ElevationReading, { kind: 'fault' }>): string =>
  `${WORDS[fault]} (${found})`;
