import { type Issue, packPiece, readSite, type SiteReading, type TownPiece } from '@rootreach/core';
import { type Chunk, textOfChunk } from './chunks.js';

/** What a thread is to read: a piece of a file, or a text that was taken in. */
export interface PieceToRead {
  readonly name: string;
  readonly source: Chunk | { readonly text: string };
  readonly asOf: string;
  readonly horizonYears?: number;
}

/** A piece read: what it holds, and what was found wrong. Numbers of features count from its own first one. */
export interface ReadPiece {
  readonly piece: TownPiece;
  readonly features: number;
  readonly counts: SiteReading['counts'];
  readonly issues: readonly Issue[];
  /** True where the piece is no GeoJSON of its own: then the file must be read whole. */
  readonly broken: boolean;
}

/** Said of the whole town, not of a piece. */
const OF_THE_WHOLE: readonly Issue['code'][] = ['nothing-to-score'];

/** Reads and packs one piece. */
export function readPiece({ name, source, ...growth }: PieceToRead): ReadPiece {
  const text = 'text' in source ? source.text : textOfChunk(source);
  const { site, issues, counts } = readSite([{ name, text }]);
  return {
    piece: packPiece(site, growth),
    features: Object.values(counts.features).reduce((sum, n) => sum + n, 0),
    counts,
    issues: issues.filter(({ code }) => !OF_THE_WHOLE.includes(code)),
    broken: issues.some(({ code }) => code === 'not-json'),
  };
}
