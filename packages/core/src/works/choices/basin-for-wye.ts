import { digStretch } from '../dig-stretch.js';
import { asItIs, type Case, impossible, type Plan } from '../plan.js';
import { BRANCHES, withFittings } from '../renew.js';
import { metresSeen } from '../stretch.js';

/** Roots this near to a branch go out with it, metres. */
const GOES_WITH_IT_M = 1;

/** Each wye or tee of the stretch dug out for a basin with sealed entries: a way in to all of its lines. */
export function basinForWye(c: Case): Plan {
  const { line, fromM, toM, slices } = c.stretch;
  const branches = line.fittings.filter(
    ({ type, stationM, joints }) =>
      BRANCHES.includes(type) && joints > 0 && stationM >= fromM - 0.01 && stationM <= toM + 0.01,
  );
  if (branches.length === 0) return impossible(c, 'basin-for-wye', 'no-branch-here');
  if (metresSeen(c.stretch, ['full', 'crushed']) > 0)
    return impossible(c, 'basin-for-wye', 'pipe-stays-blocked');
  const hole = c.assumed['basin-share-of-hole-m'] / 2;
  const fittings = branches.map(({ id, stationM }) => ({
    type: 'basin' as const,
    atM: stationM,
    replaces: id,
  }));
  const dug = branches.map(({ stationM }) =>
    digStretch(c.around, Math.max(0, stationM - hole), Math.min(line.lengthM, stationM + hole), {
      pipe: 'pvc-sch40',
      sizeM: c.sizeM,
      perforated: false,
      wrapped: false,
      bedding: 'gravel',
      takesOut: true,
      // the basin, and a coupling to the old pipe for each of the three lines that meet
      fittings: [
        { type: 'basin', count: 1 },
        { type: 'coupling', count: 3 },
      ],
      handDigDiameters: c.assumed['hand-dig-diameters'],
    }),
  );
  const gone = (at: { fromM: number; toM: number }): boolean =>
    branches.some(
      ({ stationM }) => at.fromM >= stationM - GOES_WITH_IT_M && at.toM <= stationM + GOES_WITH_IT_M,
    );
  const kept = slices.filter((slice) => !gone(slice));
  return {
    ...asItIs(c, 'basin-for-wye'),
    reasons: ['way-in-to-all-lines', 'old-joints-stay'],
    site: withFittings(c.site, line, line.drain.id, fittings, true),
    left: kept.find(({ trouble }) => trouble.seen === c.stretch.gravest?.trouble.seen) ?? kept[0] ?? null,
    work: { fromM, toM, pipe: null, sizeM: null, fittings },
    digs: dug.flatMap(({ digs }) => digs),
    stretches: dug.flatMap(({ stretches }) => stretches),
  };
}
