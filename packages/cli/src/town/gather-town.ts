import { type Issue, joinTown, packPiece, readSite, type SiteReading, type Town } from '@rootreach/core';
import type { IntakeReport } from '@rootreach/intake';
import type { Io } from '../io.js';
import { checkStdinOnce } from '../read-inputs.js';
import { joinCounts, joinIssues } from './join-reports.js';
import type { Pool } from './pool.js';
import type { ReadPiece } from './read-piece.js';
import { TownPieces, type TownReadOptions } from './town-pieces.js';

/** A town read from its files, and what was found wrong with them. */
export interface GatheredTown {
  readonly town: Town;
  readonly counts: SiteReading['counts'];
  readonly issues: readonly Issue[];
  readonly reports: readonly IntakeReport[];
}

/** Pieces that are no GeoJSON of their own: their file is read again, whole. */
async function mended(pieces: TownPieces, read: readonly ReadPiece[], pool: Pool) {
  const kept = pieces.asked.map(({ name }, i) => ({ name, read: read[i] as ReadPiece }));
  const broken = new Set(
    pieces.asked
      .filter(({ chunk }, i) => read[i]?.broken && chunk !== null && chunk.head !== '')
      .map(({ name }) => name),
  );
  if (broken.size === 0) return kept;
  const again = [...broken];
  const whole = (await pool.run(again.map((name) => pieces.whole(name)))) as ReadPiece[];
  return [
    ...kept.filter(({ name }) => !broken.has(name)),
    ...again.map((name, i) => ({ name, read: whole[i] as ReadPiece })),
  ];
}

/** Reads a town's files in pieces, several at once; the result does not depend on how many threads there are. */
export async function gatherTown(
  paths: readonly string[],
  options: TownReadOptions,
  pool: Pool,
  io: Io,
): Promise<GatheredTown> {
  checkStdinOnce(paths);
  const pieces = new TownPieces(paths, options, io);
  const read = (await pool.run(pieces.tasks(), () =>
    options.progress(Math.min(0.99, pieces.share)),
  )) as ReadPiece[];
  options.progress(1);
  const whole = await mended(pieces, read, pool);
  const packed = whole.map((one) => one.read.piece);
  // where no file could be read, what was wrong with them is still to be said
  const town = joinTown(
    packed.length > 0 ? packed : [packPiece(readSite([]).site, options)],
    pool.threads > 0 ? SharedArrayBuffer : ArrayBuffer,
  );
  return {
    town,
    counts: joinCounts(whole.map((one) => one.read)),
    issues: [...pieces.issues, ...joinIssues(whole)],
    reports: pieces.reports,
  };
}
