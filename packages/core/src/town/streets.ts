import { joinColumns } from './columns.js';

/** Streets of trees or lines: the number of each one's name; `names[0]` is empty and stands for none. */
export interface Streets {
  readonly of: Uint32Array;
  readonly names: readonly string[];
}

export function streetsOf(items: readonly { readonly street?: string }[]): Streets {
  const numberOf = new Map([['', 0]]);
  const of = new Uint32Array(items.length);
  items.forEach(({ street = '' }, i) => {
    const number = numberOf.get(street) ?? numberOf.size;
    numberOf.set(street, number);
    of[i] = number;
  });
  return { of, names: [...numberOf.keys()] };
}

/** @param room makes a buffer of so many bytes. */
export function joinStreets(pieces: readonly Streets[], room: (bytes: number) => ArrayBufferLike): Streets {
  const of = joinColumns(
    pieces,
    (piece) => piece.of,
    (length) => new Uint32Array(room(4 * length)),
    (piece) => piece.names.length,
  );
  return { of, names: pieces.flatMap(({ names }) => names) };
}

/** Name of one's street; undefined where none is given. */
export const streetAt = ({ of, names }: Streets, i: number): string | undefined =>
  names[of[i] as number] || undefined;
