/** A place on the line where roots can come in at joints. */
export interface JointPlace {
  readonly stationM: number;
  /** Joints at this place. */
  readonly count: number;
  /** Id of the fitting, or null for a plain pipe joint. */
  readonly fitting: string | null;
  /** The fitting's own seal, where it is said. */
  readonly sealed: boolean | null;
}

/** A fitting at a station with the joints it brings. */
export interface FittingJoints {
  readonly id: string;
  readonly stationM: number;
  readonly joints: number;
  readonly sealed: boolean | null;
}

/** Pipe ends closer than this to a fitting or line end are that fitting or end, metres (judgement). */
const SAME_PLACE_M = 0.05;

/**
 * Joints of a line: at every piece end, where the first piece starts at the line's end or at a fitting, and at
 * every fitting. Sorted by station.
 * @param pieceM length of a pipe piece, or null for a run without joints.
 */
export function jointsOf(
  lengthM: number,
  pieceM: number | null,
  fittings: readonly FittingJoints[],
): JointPlace[] {
  const places: JointPlace[] = [];
  const stops = [0, ...fittings.map((f) => f.stationM).sort((a, b) => a - b), lengthM];
  if (pieceM !== null) {
    for (let i = 0; i + 1 < stops.length; i++) {
      const from = stops[i] as number;
      const to = stops[i + 1] as number;
      for (let k = 1; from + k * pieceM < to - SAME_PLACE_M; k++) {
        places.push({ stationM: from + k * pieceM, count: 1, fitting: null, sealed: null });
      }
    }
  }
  for (const f of fittings) {
    if (f.joints > 0) {
      places.push({ stationM: f.stationM, count: f.joints, fitting: f.id, sealed: f.sealed });
    }
  }
  return fittings.length === 0 ? places : places.sort((a, b) => a.stationM - b.stationM);
}
