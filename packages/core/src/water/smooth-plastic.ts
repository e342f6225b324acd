import type { MaterialKey } from '../tables/pipe-row.js';

const SMOOTH: readonly MaterialKey[] = [
  'hdpe-dual-wall',
  'hdpe-welded',
  'pvc-sdr35',
  'pvc-sch40',
  'pvc-thin-wall',
  'abs',
];

/** Plastic pipe with a smooth inside. */
export const isSmoothPlastic = (material: MaterialKey): boolean => SMOOTH.includes(material);
