import { digStretch } from '../dig-stretch.js';
import { asItIs, type Case, impossible, type Plan } from '../plan.js';
import { withFittings } from '../renew.js';
import { metresSeen } from '../stretch.js';

/** A basin where water stands, on the line: it takes the water in and is a way in for camera and jet. */
export function inletAtLowSpot(c: Case): Plan {
  const { line, fromM, toM, slices } = c.stretch;
  if (metresSeen(c.stretch, ['full', 'crushed']) > 0)
    return impossible(c, 'inlet-at-low-spot', 'pipe-stays-blocked');
  const sags = slices.filter(({ trouble }) => trouble.seen === 'sag');
  if (sags.length === 0 && line.drain.wet !== 'standing')
    return impossible(c, 'inlet-at-low-spot', 'no-low-spot');
  const [first, last] = [sags[0], sags[sags.length - 1]];
  const atM = first === undefined || last === undefined ? (fromM + toM) / 2 : (first.fromM + last.toM) / 2;
  const half = c.assumed['basin-share-of-hole-m'] / 2;
  const fittings = [{ type: 'basin' as const, atM, replaces: null }];
  const { digs, stretches } = digStretch(
    c.around,
    Math.max(0, atM - half),
    Math.min(line.lengthM, atM + half),
    {
      pipe: 'pvc-sch40',
      sizeM: c.sizeM,
      perforated: false,
      wrapped: false,
      bedding: 'gravel',
      takesOut: true,
      fittings: [
        { type: 'basin', count: 1 },
        { type: 'coupling', count: 2 },
      ],
      handDigDiameters: c.assumed['hand-dig-diameters'],
    },
  );
  const dry = c.site.drains.map((drain) =>
    drain.id === line.drain.id ? { ...drain, wet: 'often' as const } : drain,
  );
  return {
    ...asItIs(c, 'inlet-at-low-spot'),
    reasons: ['takes-water-at-the-low-spot', 'old-joints-stay'],
    site: withFittings({ ...c.site, drains: dry }, line, line.drain.id, fittings, true),
    left: slices.find(({ trouble }) => trouble.seen !== 'sag') ?? null,
    work: { fromM: atM, toM: atM, pipe: null, sizeM: null, fittings },
    digs,
    stretches,
  };
}
