/** One step of the search over the lattice. */
export interface Move {
  readonly dx: number;
  readonly dy: number;
  /** In cells. */
  readonly length: number;
  /** Nodes whose values are taken along the step, with their shares of its length. */
  readonly nodeX: Int8Array;
  readonly nodeY: Int8Array;
  readonly share: Float64Array;
  /** Half-cell places passed on the way, where nothing may be in the way. */
  readonly halfX: Int8Array;
  readonly halfY: Int8Array;
}

/** First octant of 8, 16 and 32 directions: fractions in lowest terms. */
const OCTANT: readonly (readonly [number, number])[] = [
  [1, 0],
  [1, 1],
  [2, 1],
  [3, 1],
  [3, 2],
];

function allTurns(): [number, number][] {
  const seen = new Map<string, [number, number]>();
  for (const [a, b] of OCTANT) {
    for (const [x, y] of [
      [a, b],
      [b, a],
    ] as const) {
      for (const sx of [1, -1])
        for (const sy of [1, -1]) seen.set(`${sx * x || 0} ${sy * y || 0}`, [sx * x || 0, sy * y || 0]);
    }
  }
  return [...seen.values()];
}

/** Trapezoid rule at whole cells of the longer side, values between nodes in a straight line. */
function samples(dx: number, dy: number): Pick<Move, 'nodeX' | 'nodeY' | 'share'> {
  const parts = Math.max(Math.abs(dx), Math.abs(dy));
  const weights = new Map<string, [x: number, y: number, share: number]>();
  const add = (x: number, y: number, share: number): void => {
    if (share === 0) return;
    const key = `${x} ${y}`;
    weights.set(key, [x, y, (weights.get(key)?.[2] ?? 0) + share]);
  };
  for (let i = 0; i <= parts; i++) {
    const share = (i === 0 || i === parts ? 0.5 : 1) / parts;
    const x = (i * dx) / parts;
    const y = (i * dy) / parts;
    const [x0, y0] = [Math.floor(x), Math.floor(y)];
    const [s, t] = [x - x0, y - y0];
    add(x0, y0, share * (1 - s) * (1 - t));
    add(x0 + 1, y0, share * s * (1 - t));
    add(x0, y0 + 1, share * (1 - s) * t);
    add(x0 + 1, y0 + 1, share * s * t);
  }
  const all = [...weights.values()];
  return {
    nodeX: Int8Array.from(all, ([x]) => x),
    nodeY: Int8Array.from(all, ([, y]) => y),
    share: Float64Array.from(all, ([, , share]) => share),
  };
}

function halves(dx: number, dy: number): Pick<Move, 'halfX' | 'halfY'> {
  const parts = 2 * Math.max(Math.abs(dx), Math.abs(dy));
  const passed = Array.from({ length: parts }, (_, i): [number, number] => [
    Math.round((2 * dx * (i + 1)) / parts),
    Math.round((2 * dy * (i + 1)) / parts),
  ]);
  return {
    halfX: Int8Array.from(passed, ([x]) => x),
    halfY: Int8Array.from(passed, ([, y]) => y),
  };
}

/** The 32 directions of the search. */
export const moves: readonly Move[] = allTurns().map(([dx, dy]) => ({
  dx,
  dy,
  length: Math.hypot(dx, dy),
  ...samples(dx, dy),
  ...halves(dx, dy),
}));
