import { judgement } from '../tables/judgement.js';
import type { VigourClass } from '../tables/species-row.js';

/** Metres a year at which roots spread outward: 0.45-1.2 (Gilman 1990), by vigour class (judgement). */
export function rootSpreadRate(vigour: VigourClass): number {
  return judgement.regrowthMetresPerYear.value[vigour - 1] as number;
}

/**
 * Years until roots are back at a freshly dug place: the way from stem to pipe over the yearly spread,
 * kept within 2-10 years.
 */
export function regrowthYears(distanceM: number, spreadMPerYear: number): number {
  const least = judgement.clockMinYears.value;
  const most = judgement.clockMaxYears.value;
  return Math.min(most, Math.max(least, distanceM / spreadMPerYear));
}

/** Share of the full rate that is back t years after: 1 - exp(-(t / tau)^2). */
export function regrownShare(yearsSince: number, tauYears: number): number {
  const x = Math.max(0, yearsSince) / tauYears;
  return 1 - Math.exp(-x * x);
}
