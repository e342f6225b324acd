import type { Issue } from '@rootreach/core';
import { type IntakeReport, type TakeInOptions, type TakenInPieces, takeInPieces } from '@rootreach/intake';
import type { Io } from '../io.js';
import { gather, nothingTaken } from '../taking-in.js';
import { type Chunk, chunksOf } from './chunks.js';
import { isSiteHead } from './is-site-head.js';
import { type FileInPieces, piecesOfFile } from './pieces-of-file.js';
import type { PieceToRead } from './read-piece.js';
import type { Task } from './tasks.js';

export interface TownReadOptions {
  readonly asOf: string;
  readonly horizonYears?: number;
  readonly intake: TakeInOptions;
  /** Says how much is done, 0 to 1. */
  readonly progress: (share: number) => void;
}

/** Where a piece came from, its text left out. */
type Asked = Pick<PieceToRead, 'name'> & { readonly chunk: Chunk | null };

/** What the threads are to read, and what is found while it is put together. */
export class TownPieces {
  /** Of every piece handed out, in their order. */
  readonly asked: Asked[] = [];
  readonly issues: Issue[] = [];
  readonly reports: IntakeReport[] = [];
  /** How much of the files was handed out, 0 to 1. */
  share = 0;

  constructor(
    private readonly paths: readonly string[],
    private readonly options: TownReadOptions,
    private readonly io: Io,
  ) {}

  private task(name: string, source: PieceToRead['source']): Task {
    const { asOf, horizonYears } = this.options;
    this.asked.push({ name, chunk: 'text' in source ? null : source });
    const growth = { asOf, ...(horizonYears === undefined ? {} : { horizonYears }) };
    return { do: 'read', piece: { name, source, ...growth } };
  }

  /** A site file as one piece. */
  whole(path: string): Task {
    return this.task(path, chunksOf(path, Number.POSITIVE_INFINITY)[0] as Chunk);
  }

  private *siteFile(path: string, come: (share: number) => void): Iterable<Task> {
    const chunks = chunksOf(path);
    for (const [i, chunk] of chunks.entries()) {
      come((i + 1) / chunks.length);
      yield this.task(path, chunk);
    }
  }

  private *foreignFile(
    file: FileInPieces,
    { texts, report }: TakenInPieces,
    come: (share: number) => void,
  ): Iterable<Task> {
    for (const text of texts) {
      come(file.share());
      yield this.task(file.name, { text });
    }
    this.reports.push(report());
    if (report().features === 0) this.issues.push(nothingTaken(file.name));
  }

  /** A file of a format that is read whole, or standard input. */
  private async *wholeFile(path: string): AsyncIterable<Task> {
    const { inputs, issues, reports } = await gather([path], this.options.intake, this.io);
    this.issues.push(...issues);
    this.reports.push(...reports);
    for (const { name, text } of inputs) yield this.task(name, { text });
  }

  /** Tasks for the threads; each is made when it is asked for. */
  async *tasks(): AsyncIterable<Task> {
    const { intake } = this.options;
    for (const [i, path] of this.paths.entries()) {
      const come = (share: number): void => {
        this.share = (i + share) / this.paths.length;
      };
      if (path === '-') {
        yield* this.wholeFile(path);
      } else if (intake.map === undefined && isSiteHead(path)) {
        yield* this.siteFile(path, come);
      } else {
        const file = piecesOfFile(path);
        const taken = takenInPieces(file, intake);
        if (taken === null) yield* this.wholeFile(path);
        else yield* this.foreignFile(file, taken, come);
      }
    }
  }
}

/** Null where the file must be read whole, be it only to say what is wrong with it. */
function takenInPieces(file: FileInPieces, intake: TakeInOptions): TakenInPieces | null {
  try {
    return takeInPieces(file, intake);
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
