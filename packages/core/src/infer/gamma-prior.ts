import { judgement } from '../tables/judgement.js';

/**
 * Prior of a rate multiplier: gamma with mean 1. A coefficient of variation of 0.8 goes with the log-sd of 0.7
 * that the rates have in the table of judgements. It is split in two, so that groups of one kind of joint lean on
 * each other: a factor of the kind (shared over materials) times a factor of the group.
 */
export const KIND_CV = 0.53;
export const GROUP_CV = 0.53;

/** Lines of one group differ from each other by this. */
export const LINE_CV: number = judgement.lineFromItsKindCv.value;

/** Shape of a gamma with mean 1 and this coefficient of variation: 1 / cv^2. */
export const shapeOf = (cv: number): number => 1 / (cv * cv);

/** Logarithm of a gamma density with mean 1 in terms of ln m, without its constant. */
export function logGammaPrior(lnM: number, shape: number): number {
  return shape * (lnM - Math.exp(lnM));
}
