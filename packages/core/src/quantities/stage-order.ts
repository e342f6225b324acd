import type { Quantity } from '../model/quantity.js';

/** Beginnings of codes in the order in which a job is done and a bill is read. */
const STAGES: readonly string[] = [
  'set-up',
  'utility-locate',
  'saw-cut',
  'trench-by-hand',
  'trench-',
  'shoring',
  'root-cutting',
  'bore',
  'old-pipe-out',
  'bedding-',
  'drain-stone',
  'fabric',
  'pipe-',
  'joint-coupling-',
  'wye-',
  'tee-',
  'bend-',
  'reducer-',
  'coupling-',
  'cleanout-',
  'downspout-',
  'cap-',
  'outlet-',
  'basin',
  'root-barrier',
  'warning-tape',
  'backfill',
  'spoil-away',
  'reinstate-',
  'crew-hours',
  'digger-hours',
];

/** What no stage names comes last. */
function stageOf({ code }: Quantity): number {
  const at = STAGES.findIndex((start) => code.startsWith(start));
  return at < 0 ? STAGES.length : at;
}

/** Quantities in the order of the work; within a stage as they came up. */
export const byStage = (quantities: readonly Quantity[]): Quantity[] =>
  [...quantities].sort((a, b) => stageOf(a) - stageOf(b));
