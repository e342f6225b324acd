/** The curve falls to exp(-3), five hundredths, at the reach. */
export const DECAY = 3;

/**
 * Relative presence of roots at a distance from the stem, 1 at the stem: rho(d) = exp(-3 d / R).
 *
 * Our own curve (judgement). Three independent things agree with it and are tests: coarse-root counts beside
 * poplars (Upson 2015), the share of roots beyond the dripline (Gilman 1988), and the distances within which
 * 75 % and 90 % of root damage to buildings lay (Cutler & Richardson 1989).
 * @param distanceM d, from the stem.
 * @param reachM R, where 5 % is left.
 */
export function rootDensity(distanceM: number, reachM: number): number {
  return Math.exp((-DECAY * distanceM) / reachM);
}
