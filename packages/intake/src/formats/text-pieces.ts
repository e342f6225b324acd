/** A text in pieces; each call starts again from its beginning. */
export type TextPieces = () => Iterable<string>;

/** Beginning of a text, as long as it is asked for. */
export function headOf(pieces: TextPieces, length: number): string {
  let head = '';
  for (const piece of pieces()) {
    head += piece;
    if (head.length >= length) break;
  }
  return head.slice(0, length);
}

/** The first bytes, as many as asked for. */
export function firstBytes(pieces: Iterable<Uint8Array>, length: number): Uint8Array {
  const first: number[] = [];
  for (const piece of pieces) {
    first.push(...piece.subarray(0, length - first.length));
    if (first.length >= length) break;
  }
  return Uint8Array.from(first);
}

function* decoded(pieces: Iterable<Uint8Array>, encoding: string, fatal: boolean): Iterable<string> {
  const decoder = new TextDecoder(encoding, { fatal });
  for (const piece of pieces) yield decoder.decode(piece, { stream: true });
  yield decoder.decode();
}

function isUtf8(pieces: Iterable<Uint8Array>): boolean {
  try {
    for (const _ of decoded(pieces, 'utf-8', true));
    return true;
  } catch {
    return false;
  }
}

/** Text of UTF-8, UTF-16 with its mark, or else of the old western code page: which one is told from all of it. */
export function textPieces(pieces: () => Iterable<Uint8Array>): TextPieces {
  const [one, two] = firstBytes(pieces(), 2);
  if (one === 0xff && two === 0xfe) return () => decoded(pieces(), 'utf-16le', false);
  const encoding = isUtf8(pieces()) ? 'utf-8' : 'windows-1252';
  return () => decoded(pieces(), encoding, false);
}
