import { type Issue, joinTown, type SiteReading, type Town } from '@rootreach/core';
import type { IntakeReport, TakeInOptions } from '@rootreach/intake';
import type { Io } from '../io.js';
import { gather } from '../taking-in.js';
import { chunksOf } from './chunks.js';
import { isSiteHead } from './is-site-head.js';
import type { Pool } from './pool.js';
import type { PieceToRead, ReadPiece } from './read-piece.js';

/** A town read from its files, and what was found wrong with them. */
export interface GatheredTown {
  readonly town: Town;
  readonly counts: SiteReading['counts'];
  readonly issues: readonly Issue[];
  readonly reports: readonly IntakeReport[];
}

export interface TownReadOptions {
  readonly asOf: string;
  readonly horizonYears?: number;
  readonly intake: TakeInOptions;
  /** Says how much is done, 0 to 1. */
  readonly progress: (share: number) => void;
}

/** Issues of one kind that are kept one by one; the others are counted. */
const KEPT_OF_A_KIND = 20;

/** Pieces' issues as those of the files: numbers of features in the file, no kind listed without end. */
function joinIssues(pieces: readonly { readonly name: string; readonly read: ReadPiece }[]): Issue[] {
  const before = new Map<string, number>();
  const kept = new Map<string, Issue[]>();
  const more = new Map<string, { count: number; issue: Issue }>();
  const count = (code: string, n: number, issue: Issue): void => {
    const known = more.get(code);
    more.set(code, { count: (known?.count ?? 0) + n, issue: known?.issue ?? issue });
  };
  for (const { name, read } of pieces) {
    const first = before.get(name) ?? 0;
    before.set(name, first + read.features);
    for (const issue of read.issues) {
      if (issue.code === 'more-of-the-same') {
        count(issue.of, issue.count, issue);
        continue;
      }
      const list = kept.get(issue.code) ?? [];
      kept.set(issue.code, list);
      const { index } = issue.place;
      if (list.length >= KEPT_OF_A_KIND) count(issue.code, 1, issue);
      else list.push({ ...issue, place: { ...issue.place, index: index === null ? null : index + first } });
    }
  }
  const counted = [...more].map(
    ([of, { count: n, issue }]): Issue => ({
      code: 'more-of-the-same',
      of,
      count: n,
      severity: issue.severity,
      place: { file: issue.place.file, index: null, feature: null, path: '' },
    }),
  );
  return [...[...kept.values()].flat(), ...counted];
}

function joinCounts(pieces: readonly ReadPiece[]): SiteReading['counts'] {
  const sum = <T extends Readonly<Record<string, number>>>(pick: (piece: ReadPiece) => T): T => {
    const total: Record<string, number> = {};
    for (const piece of pieces) {
      for (const [name, n] of Object.entries(pick(piece))) total[name] = (total[name] ?? 0) + n;
    }
    return total as T;
  };
  return {
    features: sum(({ counts }) => counts.features),
    species: sum(({ counts }) => counts.species),
    materials: sum(({ counts }) => counts.materials),
  };
}

/** What the threads are to read: pieces of site files, and texts of files that were taken in. */
async function piecesOf(
  paths: readonly string[],
  options: TownReadOptions,
  io: Io,
): Promise<{ pieces: PieceToRead[]; issues: readonly Issue[]; reports: readonly IntakeReport[] }> {
  const { asOf, horizonYears, intake } = options;
  const growth = { asOf, ...(horizonYears === undefined ? {} : { horizonYears }) };
  const pieces: PieceToRead[] = [];
  const issues: Issue[] = [];
  const reports: IntakeReport[] = [];
  for (const path of paths) {
    if (intake.map === undefined && path !== '-' && isSiteHead(path)) {
      pieces.push(...chunksOf(path).map((source) => ({ name: path, source, ...growth })));
      continue;
    }
    const gathered = await gather([path], intake, io);
    pieces.push(...gathered.inputs.map(({ name, text }) => ({ name, source: { text }, ...growth })));
    issues.push(...gathered.issues);
    reports.push(...gathered.reports);
  }
  return { pieces, issues, reports };
}

/** Pieces that are no GeoJSON of their own: their file is read again, whole. */
async function mended(pieces: readonly PieceToRead[], read: readonly ReadPiece[], pool: Pool) {
  const broken = new Set(
    pieces
      .filter((piece, i) => read[i]?.broken && 'file' in piece.source && piece.source.head !== '')
      .map(({ name }) => name),
  );
  const kept = pieces.map((piece, i) => ({ name: piece.name, read: read[i] as ReadPiece }));
  if (broken.size === 0) return kept;
  const again = pieces.filter(
    ({ name }, i) => broken.has(name) && pieces.findIndex((p) => p.name === name) === i,
  );
  const whole = (await pool.run(
    again.map((piece) => ({
      do: 'read' as const,
      piece: { ...piece, source: chunksOf(piece.name, Number.POSITIVE_INFINITY)[0] as PieceToRead['source'] },
    })),
  )) as ReadPiece[];
  return [
    ...kept.filter(({ name }) => !broken.has(name)),
    ...again.map(({ name }, i) => ({ name, read: whole[i] as ReadPiece })),
  ];
}

/** Reads a town's files in pieces, several at once; the result does not depend on how many threads there are. */
export async function gatherTown(
  paths: readonly string[],
  options: TownReadOptions,
  pool: Pool,
  io: Io,
): Promise<GatheredTown> {
  const { pieces, issues, reports } = await piecesOf(paths, options, io);
  const tasks = pieces.map((piece) => ({ do: 'read' as const, piece }));
  const read = (await pool.run(tasks, (done) => options.progress(done / tasks.length))) as ReadPiece[];
  const whole = await mended(pieces, read, pool);
  const town = joinTown(
    whole.map((one) => one.read.piece),
    pool.threads > 0 ? SharedArrayBuffer : ArrayBuffer,
  );
  return {
    town,
    counts: joinCounts(whole.map((one) => one.read)),
    issues: [...issues, ...joinIssues(whole)],
    reports,
  };
}
