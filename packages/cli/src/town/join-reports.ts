import type { Issue, SiteReading } from '@rootreach/core';
import type { ReadPiece } from './read-piece.js';

/** Issues of one kind that are kept one by one; the others are counted. */
const KEPT_OF_A_KIND = 20;

/** Pieces' issues as those of the files: numbers of features in the file, no kind listed without end. */
export function joinIssues(pieces: readonly { readonly name: string; readonly read: ReadPiece }[]): Issue[] {
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

export function joinCounts(pieces: readonly ReadPiece[]): SiteReading['counts'] {
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
