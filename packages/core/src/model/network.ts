/** Where water comes from: a place in plane metres and what it brings (area, flow: whatever the pipe is sized by). */
export interface NetworkSource {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly load: number;
  /** True where other lines may end in it without a wye, as in a basin. */
  readonly basin?: boolean;
}

/** Where water may leave a network: a place in plane metres. */
export interface NetworkOutlet {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** A pipe for a load. */
export interface NetworkPipe {
  /** Nominal size, metres. */
  readonly sizeM: number;
  /** More for a metre than for the pipe that the field counts. */
  readonly morePerM: number;
}

/** One line of a network, from a source or a junction down to a junction, a source on the way, or an outlet. */
export interface NetworkLine {
  readonly id: string;
  /** Ids of a source, junction or outlet. */
  readonly from: string;
  readonly to: string;
  /** Plane metres, from its upper end. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly lengthM: number;
  readonly load: number;
  readonly sizeM: number;
  /** Trench, pipe and bends. */
  readonly cost: number;
}

/** A branch that comes into a junction. */
export interface NetworkBranch {
  /** Id of the line, or of the source that comes down there. */
  readonly line: string;
  /** How far its water turns to flow on with the main. */
  readonly turnDegrees: number;
  /** Bends before the wye, degrees each; empty where the wye alone turns it. */
  readonly bendDegrees: readonly number[];
}

/** A place where lines meet, made of wyes: one for each branch. */
export interface NetworkJunction {
  /** Its own, or that of the source that it stands at. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** The line that goes straightest on. */
  readonly main: string;
  /** How far the main itself turns there. */
  readonly mainTurnDegrees: number;
  /** Bends that turn the main before it. */
  readonly mainBendDegrees: readonly number[];
  readonly branches: readonly NetworkBranch[];
}

/** Lines from every source to an outlet. */
export interface PlannedNetwork {
  /** `separate` where no shared trench is cheaper than a line for each source. */
  readonly shape: 'shared' | 'separate';
  readonly lines: readonly NetworkLine[];
  readonly junctions: readonly NetworkJunction[];
  readonly lengthM: number;
  /** Lines, bends and wyes; a shared trench counts once. */
  readonly cost: number;
  /** The same for a line of its own for each source. */
  readonly separate: {
    readonly lines: readonly NetworkLine[];
    readonly lengthM: number;
    readonly cost: number;
  };
}
