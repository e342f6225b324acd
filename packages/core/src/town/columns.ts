type Column = Float64Array | Int32Array | Uint32Array | Uint8Array;

/**
 * Columns of pieces, one after the other.
 * @param make An empty column of so many numbers.
 * @param numbersOf Given where the column holds numbers into a list of the piece: how long that list is. The numbers
 * are then those into the lists put together.
 */
export function joinColumns<P, C extends Column>(
  pieces: readonly P[],
  columnOf: (piece: P) => C,
  make: (length: number) => C,
  numbersOf?: (piece: P) => number,
): C {
  const whole = make(pieces.reduce((sum, piece) => sum + columnOf(piece).length, 0));
  let at = 0;
  let first = 0;
  for (const piece of pieces) {
    const column = columnOf(piece);
    if (first === 0) whole.set(column, at);
    else for (let i = 0; i < column.length; i++) whole[at + i] = first + (column[i] as number);
    at += column.length;
    first += numbersOf?.(piece) ?? 0;
  }
  return whole;
}
