import type { PlacedFinding } from '../line/find.js';
import type { LineModel } from '../line/line-model.js';
import type { KnownTrouble } from '../model/result.js';
import type { Seen, Site } from '../model/site.js';
import type { WorkTarget } from '../model/works.js';
import { knownIn } from '../risk/known.js';
import type { SeenContext } from '../risk/seen-context.js';
import { segmentId } from '../risk/segment-result.js';

/** What is to be decided on: one segment, or a line, whole or from one station to another. */
export type WorkRequest =
  | { readonly segment: string }
  | { readonly drain: string; readonly fromM?: number; readonly toM?: number };

/** From the gravest to the mildest. */
export const GRAVEST_FIRST: readonly Seen[] = ['crushed', 'full', 'mass', 'offset', 'sag', 'fine'];
/** Stretches are looked through in slices of this length, metres: finer than a reel counter. */
const SLICE_M = 0.1;

/** A slice of a stretch in which something was seen that nobody has dealt with. */
export interface TroubleSlice {
  readonly fromM: number;
  readonly toM: number;
  readonly trouble: KnownTrouble;
}

/** The stretch on its line, with what is known of it. */
export interface Stretch {
  readonly number: number;
  readonly line: LineModel;
  readonly fromM: number;
  readonly toM: number;
  readonly slices: readonly TroubleSlice[];
  readonly gravest: TroubleSlice | null;
}

function slicesOf(
  line: LineModel,
  findings: readonly PlacedFinding[],
  fromM: number,
  toM: number,
): TroubleSlice[] {
  if (findings.length === 0) return [];
  const count = Math.max(1, Math.ceil((toM - fromM) / SLICE_M));
  const step = (toM - fromM) / count;
  const slices: TroubleSlice[] = [];
  for (let i = 0; i < count; i++) {
    const [a, b] = [fromM + i * step, i === count - 1 ? toM : fromM + (i + 1) * step];
    const trouble = knownIn(line, findings, a, b);
    if (trouble !== null) slices.push({ fromM: a, toM: b, trouble });
  }
  return slices;
}

const gravity = ({ trouble }: TroubleSlice): number => GRAVEST_FIRST.indexOf(trouble.seen);

/** Metres in which one of these was seen. */
export const metresSeen = ({ slices }: Stretch, seen: readonly Seen[]): number =>
  slices
    .filter(({ trouble }) => seen.includes(trouble.seen))
    .reduce((sum, slice) => sum + slice.toM - slice.fromM, 0);

function placeOf(site: Site, { context }: SeenContext, request: WorkRequest): [number, number, number] {
  const drainId =
    'segment' in request ? request.segment.slice(0, request.segment.lastIndexOf('/')) : request.drain;
  const number = site.drains.findIndex(({ id }) => id === drainId);
  if (number < 0) throw new RangeError(`there is no line '${drainId}'`);
  const line = context.lines.at(number);
  if ('segment' in request) {
    const segment = line.segments.find((_, i) => segmentId(drainId, i) === request.segment);
    if (segment === undefined) throw new RangeError(`there is no segment '${request.segment}'`);
    return [number, segment.fromM, segment.toM];
  }
  const fromM = Math.max(0, Math.min(request.fromM ?? 0, request.toM ?? line.lengthM));
  const toM = Math.min(line.lengthM, Math.max(request.fromM ?? 0, request.toM ?? line.lengthM));
  if (!(toM - fromM > 0)) {
    throw new RangeError(
      `line '${drainId}' is ${line.lengthM.toFixed(2)} m long: ${fromM} to ${toM} m is no stretch of it`,
    );
  }
  return [number, fromM, toM];
}

/** @throws RangeError for a line, segment or stretch that is not there. */
export function stretchOf(site: Site, seen: SeenContext, request: WorkRequest): Stretch {
  const [number, fromM, toM] = placeOf(site, seen, request);
  const line = seen.context.lines.at(number);
  const slices = slicesOf(line, seen.known.get(number) ?? [], fromM, toM);
  const gravest = [...slices].sort((a, b) => gravity(a) - gravity(b))[0] ?? null;
  return { number, line, fromM, toM, slices, gravest };
}

/** A stretch as it is reported. */
export function targetOf(stretch: Stretch): WorkTarget {
  const { line, fromM, toM, gravest } = stretch;
  const segmentIds = line.segments.flatMap((segment, i) =>
    Math.min(segment.toM, toM) - Math.max(segment.fromM, fromM) > 0.01 ? [segmentId(line.drain.id, i)] : [],
  );
  return {
    drainId: line.drain.id,
    drainName: line.drain.name,
    fromM,
    toM,
    lengthM: toM - fromM,
    lineLengthM: line.lengthM,
    segmentIds,
    material: line.drain.material,
    sizeM: line.drain.sizeM,
    known:
      gravest === null
        ? null
        : {
            seen: gravest.trouble.seen,
            lengthM: metresSeen(stretch, [gravest.trouble.seen]),
            trouble: gravest.trouble,
          },
  };
}
