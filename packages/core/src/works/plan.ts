import type { Network } from '../line/network.js';
import type { Dig } from '../model/dig.js';
import type { Quantity, QuantityUnit } from '../model/quantity.js';
import type { Site } from '../model/site.js';
import type { ChoiceId, ChoiceReason, ChoiceWork } from '../model/works.js';
import type { SeenContext } from '../risk/seen-context.js';
import type { Stretch as HarmStretch } from '../roots/harm.js';
import type { Assumed } from './assumptions.js';
import type { Surroundings } from './dig-stretch.js';
import type { MainTree } from './main-tree.js';
import type { NewRoute } from './options.js';
import type { Stretch, TroubleSlice } from './stretch.js';
import type { OddsPart } from './stretch-odds.js';

/** Everything that the choices are made from. */
export interface Case {
  readonly site: Site;
  readonly seen: SeenContext;
  readonly network: Network;
  readonly stretch: Stretch;
  readonly around: Surroundings;
  readonly mainTree: MainTree | null;
  readonly assumed: Assumed;
  readonly nowYear: number;
  readonly newRoute: NewRoute | null;
  /** Nominal size of the line; 4 in where nobody gave it. */
  readonly sizeM: number;
}

/** What comes again after a choice. */
export type Visits = 'none' | 'look' | 'jet' | 'cutter';

/** One choice before it is priced and its odds are worked out. */
export interface Plan {
  readonly id: ChoiceId;
  readonly possible: boolean;
  readonly reasons: readonly ChoiceReason[];
  /** The site with it done, and where the stretch then is. */
  readonly site: Site;
  readonly parts: readonly OddsPart[];
  /** The gravest that stays in the pipe. */
  readonly left: TroubleSlice | null;
  readonly work: ChoiceWork | null;
  readonly digs: readonly Dig[];
  /** Laying length of new pipe; null: its usual one. */
  readonly pieceM: number | null;
  /** The same as harm to trees is judged from. */
  readonly stretches: readonly HarmStretch[];
  /** Measured already, in place of the digs; null: as the digs ask for. */
  readonly measured: readonly Quantity[] | null;
  /** Visits and other things that are not dug. */
  readonly extras: readonly Quantity[];
  readonly visits: Visits;
  readonly felled: string | null;
}

/** The stretch as it is, nothing done. */
export function asItIs({ site, stretch }: Case, id: ChoiceId): Plan {
  const { line, fromM, toM, gravest } = stretch;
  return {
    id,
    possible: true,
    reasons: [],
    site,
    parts: [{ drainId: line.drain.id, fromM, toM }],
    left: gravest,
    work: null,
    digs: [],
    pieceM: null,
    stretches: [],
    measured: null,
    extras: [],
    visits: 'look',
    felled: null,
  };
}

export const impossible = (c: Case, id: ChoiceId, ...reasons: ChoiceReason[]): Plan => ({
  ...asItIs(c, id),
  possible: false,
  reasons,
});

const EXTRA_TEXT = {
  'clear-by-jet': 'roots jetted out from the nearest way in, and a look',
  'clear-by-cutter': 'roots cut out from the nearest way in, and a look',
  'camera-look': 'camera pushed through and what it saw noted',
  'lining-set-up': 'lining crew to the site',
  'arborist-visit': 'certified arborist on site before and while roots are cut',
  'emergency-call': 'stopped line cleared at short notice',
  'flood-clean-up': 'what backed-up water did, cleaned up',
  'fell-tree': 'tree felled and stump taken out, by trunk diameter',
} as const;

export type ExtraCode = keyof typeof EXTRA_TEXT;

/** A thing that is not dug: a visit, a set-up, a tree. */
export const extra = (code: ExtraCode, quantity = 1, unit: QuantityUnit = 'job', basis = ''): Quantity => ({
  code,
  text: EXTRA_TEXT[code],
  quantity,
  unit,
  basis,
  isMaterial: false,
});
