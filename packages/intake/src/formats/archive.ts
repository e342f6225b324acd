import { unzipSync } from 'fflate';

/** More than this out of one archive is a trap or no town's file (judgement). */
const MOST_BYTES = 2_000_000_000;

export interface Packed {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Files in a zip archive whose names end in one of these, folders and resource forks left out. */
export function filesIn(bytes: Uint8Array, endings: readonly string[]): Packed[] {
  let total = 0;
  const found = unzipSync(bytes, {
    filter: ({ name, originalSize }) => {
      const wanted =
        !name.startsWith('__MACOSX/') && endings.some((ending) => name.toLowerCase().endsWith(ending));
      if (!wanted) return false;
      total += originalSize;
      if (total > MOST_BYTES) throw new RangeError('the archive holds more than 2 GB');
      return true;
    },
  });
  return Object.entries(found).map(([name, content]) => ({ name, bytes: content }));
}

/** Whether the bytes are a zip archive. */
export const isArchive = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);
