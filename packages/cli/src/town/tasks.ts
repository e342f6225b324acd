import { type RankOptions, type Town, type TownBlock, townScorer } from '@rootreach/core';
import { type PieceToRead, type ReadPiece, readPiece } from './read-piece.js';

/** What a thread can be asked. */
export type Task =
  | { readonly do: 'read'; readonly piece: PieceToRead }
  | { readonly do: 'take-town'; readonly town: Town; readonly options: RankOptions }
  | { readonly do: 'score'; readonly from: number; readonly to: number };

export type Answer = ReadPiece | TownBlock | null;

/** A thread's side of the work: it keeps the town that it was given. */
export function taskRunner(): (task: Task) => Answer {
  let score: ((from: number, to: number) => TownBlock) | null = null;
  return (task) => {
    switch (task.do) {
      case 'read':
        return readPiece(task.piece);
      case 'take-town':
        score = townScorer(task.town, task.options);
        return null;
      case 'score':
        if (score === null) throw new Error('no town was given');
        return score(task.from, task.to);
    }
  };
}

/** Buffers of an answer that are handed over rather than copied. */
export function buffersOf(answer: Answer): ArrayBufferLike[] {
  if (answer === null) return [];
  const parts =
    'piece' in answer
      ? [
          answer.piece.trees,
          answer.piece.trees.streets,
          answer.piece.drains,
          answer.piece.drains.streets,
          answer.piece.grown,
        ]
      : [answer];
  const columns = parts.flatMap((part): unknown[] => Object.values(part)).filter(ArrayBuffer.isView);
  return [...new Set(columns.map(({ buffer }) => buffer))];
}
