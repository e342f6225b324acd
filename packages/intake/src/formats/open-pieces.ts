import type { RawTable } from '../take/raw-table.js';
import { isArchive } from './archive.js';
import { csvTable } from './csv.js';
import { collectionsTable, lineTable } from './features.js';
import { contentOf } from './open-table.js';
import { firstBytes, headOf, type TextPieces, textPieces } from './text-pieces.js';

/** A file that is read in pieces, as often as wanted. */
export interface PiecedFile {
  readonly name: string;
  readonly bytes: () => Iterable<Uint8Array>;
  /** A GeoJSON file as several collections; null where it cannot be cut. */
  readonly collections: TextPieces | null;
}

const HEAD = 1000;

/** Takes a file apart into rows without holding all of it; null where its format must be read whole. */
export function openPieces({ name, bytes, collections }: PiecedFile): RawTable | null {
  if (isArchive(firstBytes(bytes(), 4))) return null;
  const pieces = textPieces(bytes);
  switch (contentOf(name, () => headOf(pieces, HEAD))) {
    case 'json':
      return collections === null ? null : collectionsTable(name, collections);
    case 'lines':
      return lineTable(name, pieces);
    case 'csv':
      return csvTable(name, pieces);
    default:
      return null;
  }
}
