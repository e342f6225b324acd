import { jointRow, pipeRow } from '@rootreach/core';

type JointKey = Parameters<typeof jointRow>[0];
type MaterialKey = Parameters<typeof pipeRow>[0];

/** Openings that are not joints. */
const OTHERS: Readonly<Record<string, string>> = {
  'slots-open': 'slots without fabric',
  'slots-wrapped': 'slots under fabric',
  crush: 'crushed walls',
  none: 'lines in one piece',
};

/** A group of openings in words: `mortar joints, clay tile`. */
export function groupName(group: string): string {
  const cut = group.indexOf('/');
  const kind = group.slice(0, cut);
  const openings = OTHERS[kind] ?? `${jointRow(kind as JointKey).name}s`;
  return `${openings}, ${pipeRow(group.slice(cut + 1) as MaterialKey).name}`;
}
