import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import type { PiecedFile } from '@rootreach/intake';
import { cannotRead } from '../read-inputs.js';
import { chunksOf, textOfChunk } from './chunks.js';

const PIECE_BYTES = 1 << 20;

/** A file to be taken in by pieces, and how far its reading has come, 0 to 1. */
export interface FileInPieces extends PiecedFile {
  readonly share: () => number;
}

/** @param pieceBytes Bytes read at a time. */
export function piecesOfFile(path: string, pieceBytes = PIECE_BYTES): FileInPieces {
  let share = 0;
  function* bytes(): Iterable<Uint8Array> {
    let fd: number;
    try {
      fd = openSync(path, 'r');
    } catch (error) {
      throw cannotRead(path, error);
    }
    try {
      const { size } = fstatSync(fd);
      const room = new Uint8Array(pieceBytes);
      for (let at = 0; ; ) {
        const read = readSync(fd, room, 0, pieceBytes, at);
        if (read === 0) break;
        at += read;
        share = Math.min(1, at / size);
        yield room.subarray(0, read);
      }
    } finally {
      closeSync(fd);
    }
  }
  function* collections(): Iterable<string> {
    const chunks = chunksOf(path);
    for (const [i, chunk] of chunks.entries()) {
      share = (i + 1) / chunks.length;
      yield textOfChunk(chunk);
    }
  }
  return {
    name: path,
    bytes,
    collections: chunksOf(path).length > 1 ? collections : null,
    share: () => share,
  };
}
