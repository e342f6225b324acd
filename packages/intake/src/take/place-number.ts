const one = new Float64Array(1);
const halves = new Uint32Array(one.buffer);

/** Mixes the numbers of coordinates, however deep they lie, into two halves. */
function mix(coordinates: unknown, [a, b]: readonly [number, number]): [number, number] {
  if (Array.isArray(coordinates)) {
    let mixed: [number, number] = [Math.imul(a ^ coordinates.length, 0x01000193), b];
    for (const part of coordinates) mixed = mix(part, mixed);
    return mixed;
  }
  one[0] = coordinates as number;
  const [low = 0, high = 0] = halves;
  const x = Math.imul(a ^ low, 0x85ebca6b) ^ high;
  const y = Math.imul(b ^ high, 0xc2b2ae35) ^ low;
  return [Math.imul(x ^ (x >>> 15), 0x2c1b3c6d), Math.imul(y ^ (y >>> 13), 0x297a2d39)];
}

/**
 * A number of 53 bits for a place: the same for the same coordinates, hardly ever for others. Asked only of rows that
 * have one id, so that two of a million meeting by chance is out of the question.
 */
export function placeNumber(coordinates: unknown): number {
  const [a, b] = mix(coordinates, [0x811c9dc5, 0x9747b28c]);
  return (a >>> 0) * 0x200000 + (b >>> 11);
}
