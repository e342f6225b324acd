import { type Case, impossible, type Plan } from '../plan.js';
import { renewed } from '../renew.js';

/** One hole at the one place where something was seen, a short new piece coupled in. */
export function spotRepair(c: Case): Plan {
  const { slices, line } = c.stretch;
  const [first, last] = [slices[0], slices[slices.length - 1]];
  if (first === undefined || last === undefined) return impossible(c, 'spot-repair', 'nothing-known-to-mend');
  const spanM = last.toM - first.fromM;
  const wantedM = c.assumed['spot-length-m'];
  if (spanM > wantedM + 1e-6) return impossible(c, 'spot-repair', 'trouble-too-long-for-a-spot');
  const middle = (first.fromM + last.toM) / 2;
  const fromM = Math.max(0, Math.min(middle - wantedM / 2, line.lengthM - wantedM));
  const toM = Math.min(line.lengthM, fromM + wantedM);
  return {
    ...renewed(c, 'spot-repair', { pipe: 'pvc-sch40', fromM, toM, basins: false }),
    reasons: ['old-joints-stay'],
  };
}
