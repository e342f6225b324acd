interface FittingJoints {
  /** Joints at the fitting; at a basin: for each pipe end connected to it. */
  readonly joints: number;
  readonly perPipeEnd: boolean;
  readonly why: string;
}

/** How many joints a fitting brings (common practice: count the sockets). */
export const fittingJoints = {
  coupling: { joints: 1, perPipeEnd: false, why: 'one gap between two pipe ends' },
  bend: { joints: 2, perPipeEnd: false, why: 'a socket at each end' },
  reducer: { joints: 2, perPipeEnd: false, why: 'a socket at each end' },
  wye: { joints: 3, perPipeEnd: false, why: 'three sockets' },
  tee: { joints: 3, perPipeEnd: false, why: 'three sockets' },
  basin: { joints: 1, perPipeEnd: true, why: 'one entry for each pipe end' },
  cleanout: { joints: 5, perPipeEnd: false, why: 'two on the riser and three on its tee' },
  downspout: { joints: 1, perPipeEnd: false, why: 'one adapter' },
  outlet: { joints: 0, perPipeEnd: false, why: 'the pipe ends in the open' },
  cap: { joints: 1, perPipeEnd: false, why: 'one socket' },
} as const satisfies Readonly<Record<string, FittingJoints>>;
