import type { Drain, FittingType } from '../model/site.js';

/** How we know which end of a line is the lower one. */
export type FlowBasis = 'given' | 'levels' | 'fittings' | 'branch' | 'as-drawn';

/** What is known at one end of a line as drawn. */
export interface EndFacts {
  /** Height of the pipe's top above datum, metres, where ground level and depth are both known. */
  readonly topM: number | null;
  readonly fittings: readonly FittingType[];
  /** True where this end runs into the middle of another line. */
  readonly joinsAnother: boolean;
}

const INLETS: readonly FittingType[] = ['downspout', 'basin', 'cap', 'cleanout'];

function isOutletOnly(facts: EndFacts): boolean {
  return facts.fittings.includes('outlet');
}

function isInlet(facts: EndFacts): boolean {
  return facts.fittings.some((type) => INLETS.includes(type));
}

/**
 * Which way water runs: as stated; else down a falling pipe; else towards an outlet or away from an inlet;
 * else out of a branch into its main; else as drawn, which the caller must say.
 */
export function flowOf(
  drain: Pick<Drain, 'flow'>,
  start: EndFacts,
  end: EndFacts,
): { asDrawn: boolean; basis: FlowBasis } {
  if (drain.flow !== null) return { asDrawn: drain.flow === 'as-drawn', basis: 'given' };
  if (start.topM !== null && end.topM !== null && start.topM !== end.topM) {
    return { asDrawn: start.topM > end.topM, basis: 'levels' };
  }
  if (isOutletOnly(start) !== isOutletOnly(end)) return { asDrawn: isOutletOnly(end), basis: 'fittings' };
  if (start.joinsAnother !== end.joinsAnother) return { asDrawn: end.joinsAnother, basis: 'branch' };
  if (isInlet(start) !== isInlet(end)) return { asDrawn: isInlet(start), basis: 'fittings' };
  return { asDrawn: true, basis: 'as-drawn' };
}
