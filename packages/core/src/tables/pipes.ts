import type { MaterialKey, PipeRow } from './pipe-row.js';
import { plasticPipes } from './pipes/plastic.js';
import { rigidPipes } from './pipes/rigid.js';

/** Every material of the table; `unknown` last. */
export const pipeTable: readonly PipeRow[] = [...plasticPipes, ...rigidPipes];

const rows: ReadonlyMap<string, PipeRow> = new Map(pipeTable.map((row) => [row.key, row]));

/**
 * A pipe as the table has it: sizes, sticks, usual joint, stiffness, roughness, life, each with its source.
 * @throws RangeError when the key is not in the table.
 */
export function pipeRow(key: MaterialKey): PipeRow {
  const row = rows.get(key);
  if (row === undefined) throw new RangeError(`no pipe material '${key}'`);
  return row;
}
