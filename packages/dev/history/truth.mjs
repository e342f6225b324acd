/**
 * How often roots really get in, in this invented world: times the rate that the model assumes, by kind of
 * opening. This is what is to be learned from the findings, and nothing else differs from the model.
 */
export const TRUE_MULTIPLIERS = {
  'mortar/clay': 1.8,
  'mortar/concrete': 1.3,
  'snap/hdpe-corrugated': 1.4,
  'snap/pvc-thin-wall': 1.2,
  'gasket/pvc-sdr35': 0.5,
  'solvent/pvc-sch40': 1,
  'slots-open/hdpe-corrugated': 1,
  'slots-wrapped/hdpe-corrugated': 0.8,
};

/** Walls are crushed as often as the model assumes. */
export const TRUE_CRUSH = 1;

export function multiplierOf(group) {
  const known = TRUE_MULTIPLIERS[group];
  if (known === undefined) throw new RangeError(`no true multiplier for '${group}'`);
  return known;
}
