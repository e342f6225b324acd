import type { Dig } from '../../../packages/core/src/model/dig.js';

/** A plain dig for tests: 10 m of 4 in pipe under lawn, half a metre deep. */
export const sampleDig = (change: Partial<Dig> = {}): Dig => ({
  lengthM: 10,
  depthStartM: 0.5,
  depthEndM: 0.5,
  widthM: null,
  surface: 'lawn',
  bored: false,
  handDig: false,
  pipe: 'pvc-sdr35',
  sizeM: 0.1016,
  perforated: false,
  wrapped: false,
  bedding: 'gravel',
  stoneM: null,
  oldPipeM: 0,
  barrierM: 0,
  fittings: [],
  ...change,
});
