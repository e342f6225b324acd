import type { KnownTrouble } from '../model/result.js';
import { bandOf } from './band.js';
import type { RiskContext } from './context.js';
import { type KnownByLine, knownIn } from './known.js';
import type { ScoreColumns } from './score-all.js';

/** Trouble known on each row that has any, and the rows of it that only digging can mend. */
export interface Troubles {
  readonly byRow: ReadonlyMap<number, KnownTrouble>;
  readonly severe: ReadonlySet<number>;
}

/** Lays what is known of the lines on the rows of the scores. */
export function troublesOf(context: RiskContext, columns: ScoreColumns, known: KnownByLine): Troubles {
  const byRow = new Map<number, KnownTrouble>();
  const severe = new Set<number>();
  if (known.size === 0) return { byRow, severe };
  for (let row = 0; row < columns.count; row++) {
    const number = columns.line[row] as number;
    const findings = known.get(number);
    if (!findings) continue;
    const line = context.lines.at(number);
    const { fromM, toM } = line.segments[columns.segment[row] as number] as { fromM: number; toM: number };
    const trouble = knownIn(line, findings, fromM, toM);
    if (trouble === null) continue;
    byRow.set(row, trouble);
    if (bandOf(0, trouble, false) === 'act') severe.add(row);
  }
  return { byRow, severe };
}
