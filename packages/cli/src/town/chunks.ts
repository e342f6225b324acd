import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** A piece of a GeoJSON file that is read on its own: some of its features, with the members that stand before them. */
export interface Chunk {
  readonly file: string;
  /** Text before the first feature: `{"type":"FeatureCollection","features":[`. */
  readonly head: string;
  /** Bytes of the features. */
  readonly from: number;
  readonly to: number;
  /** The last piece runs to the end of the file and closes itself. */
  readonly last: boolean;
}

/** Bytes of one piece: what a thread makes of it stays small enough to be cleared up cheaply (measured: 1 to 2 MB). */
const CHUNK_BYTES = 1_500_000;
const HEAD_BYTES = 65_536;

function bytesAt(fd: number, from: number, length: number): Buffer {
  const buffer = Buffer.allocUnsafe(Math.max(0, length));
  let got = 0;
  while (got < buffer.length) {
    const read = readSync(fd, buffer, got, buffer.length - got, from + got);
    if (read === 0) break;
    got += read;
  }
  return buffer.subarray(0, got);
}

/** Where the first feature begins, and how features begin in this file; null where that cannot be told. */
function firstFeature(
  fd: number,
): { readonly at: number; readonly mark: Buffer; readonly head: string } | null {
  const bytes = bytesAt(fd, 0, HEAD_BYTES);
  const start = /"features"\s*:\s*\[\s*/.exec(bytes.toString('latin1'));
  if (!start) return null;
  const at = start.index + start[0].length;
  const mark = /^\{\s*"type"\s*:\s*"Feature"/.exec(bytes.toString('latin1', at));
  return mark ? { at, mark: Buffer.from(mark[0], 'latin1'), head: bytes.toString('utf8', 0, at) } : null;
}

const isSpace = (byte: number | undefined): boolean =>
  byte === 32 || byte === 10 || byte === 13 || byte === 9;

/**
 * Start of the next feature at or after a place. An unescaped `{"type"` cannot stand inside a text, so it is where an
 * object begins; that it follows a comma makes it a member of a list.
 */
function nextFeature(fd: number, from: number, end: number, mark: Buffer): number | null {
  for (let at = from; at < end; at += HEAD_BYTES - mark.length - 64) {
    const bytes = bytesAt(fd, at, Math.min(HEAD_BYTES, end - at));
    for (let found = bytes.indexOf(mark); found >= 0; found = bytes.indexOf(mark, found + 1)) {
      let before = found - 1;
      while (before >= 0 && isSpace(bytes[before])) before--;
      if (before >= 0 && bytes[before] === 44) return at + found;
    }
  }
  return null;
}

/** Cuts a GeoJSON file into pieces at the borders of its features; one piece where it is written in another way. */
export function chunksOf(file: string, chunkBytes = CHUNK_BYTES): Chunk[] {
  const fd = openSync(file, 'r');
  try {
    const { size } = fstatSync(fd);
    const first = size > chunkBytes ? firstFeature(fd) : null;
    if (first === null) return [{ file, head: '', from: 0, to: size, last: true }];
    const starts = [first.at];
    for (let at = first.at + chunkBytes; at < size; ) {
      const next = nextFeature(fd, at, size, first.mark);
      if (next === null) break;
      starts.push(next);
      at = next + chunkBytes;
    }
    return starts.map((from, i) => ({
      file,
      head: first.head,
      from,
      to: starts[i + 1] ?? size,
      last: i === starts.length - 1,
    }));
  } finally {
    closeSync(fd);
  }
}

/** Length of a piece without the comma and the space that follow its last feature. */
function withoutComma(bytes: Buffer): number {
  let end = bytes.length;
  while (end > 0 && isSpace(bytes[end - 1])) end--;
  return end > 0 && bytes[end - 1] === 44 ? end - 1 : end;
}

/** The piece as a GeoJSON text of its own. */
export function textOfChunk({ file, head, from, to, last }: Chunk): string {
  const fd = openSync(file, 'r');
  try {
    const bytes = bytesAt(fd, from, to - from);
    return head + (last ? bytes.toString('utf8') : `${bytes.toString('utf8', 0, withoutComma(bytes))}]}`);
  } finally {
    closeSync(fd);
  }
}
