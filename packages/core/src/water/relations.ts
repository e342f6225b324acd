import type { WaterResult } from '../model/water-result.js';

/** Every published relation that a line's water is worked out with. */
export const waterRelations: WaterResult['basis'] = [
  { what: 'flow and velocity in a pipe', source: 'manning-1891', known: 'quoted' },
  { what: 'peak runoff from rain, runoff coefficient and area', source: 'kuichling-1889', known: 'quoted' },
  { what: 'runoff coefficients by surface', source: 'asce-runoff-table', known: 'quoted' },
  {
    what: 'all rain on a roof runs off, the high end',
    source: 'us-plumbing-code-storm',
    known: 'calculated',
  },
  { what: 'n of pipes, ranges', source: 'fhwa-hec22', known: 'quoted' },
  { what: 'n of pipes, design values', source: 'caltrans-hdm-851', known: 'quoted' },
  { what: 'n of smooth pipe with holes', source: 'austin-drainage-criteria', known: 'read' },
  { what: '2 ft/s in the full pipe keeps it clean', source: 'aspe-data-book', known: 'read' },
  { what: 'usual fall of an eighth of an inch per foot', source: 'chicago-plumbing-code', known: 'read' },
  {
    what: 'share of the section lost where the log does not say',
    source: 'our-judgement',
    known: 'judgement',
  },
];
