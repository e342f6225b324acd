import type { Chance } from './chance.js';
import { NOT_NUMBERS, NUMBERS, TEXTS, WORDS } from './hostile.js';

type Rows = string[][];

function anyCell(chance: Chance): string {
  if (chance.happens(0.05)) return chance.pick(NOT_NUMBERS);
  return chance.pick(chance.pick([NUMBERS, TEXTS, WORDS]));
}

type Change = (rows: Rows, chance: Chance) => void;

const changes: readonly Change[] = [
  (rows, chance) => {
    const row = chance.pick(rows.slice(1));
    if (row !== undefined) row[chance.below(row.length)] = anyCell(chance);
  },
  (rows, chance) => {
    const column = chance.below(rows[0]?.length ?? 0);
    const cell = anyCell(chance);
    for (const row of rows.slice(1)) row[column] = cell;
  },
  (rows, chance) => {
    const [head] = rows;
    if (head === undefined) return;
    head[chance.below(head.length)] = chance.happens(0.5) ? chance.pick(head) : anyCell(chance);
  },
  (rows, chance) => {
    const row = chance.pick(rows);
    row.splice(
      chance.below(row.length),
      chance.happens(0.5) ? 1 : 0,
      ...(chance.happens(0.5) ? [anyCell(chance)] : []),
    );
  },
  (rows, chance) => rows.splice(chance.below(rows.length), 1),
  (rows, chance) => {
    const row = [...chance.pick(rows)];
    for (let n = chance.few(5); n > 0; n--) rows.push(row);
  },
  (rows, chance) => {
    const from = chance.below(rows[0]?.length ?? 0);
    for (const row of rows) row.unshift(...row.splice(from, 1));
  },
];

function written(cell: string, delimiter: string, chance: Chance): string {
  if (chance.happens(0.02)) return cell;
  return cell.includes(delimiter) || /["\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A table, first row its heading, changed in a few places and written with some delimiter. */
export function mutatedTable(table: readonly (readonly string[])[], chance: Chance): string {
  const rows: Rows = table.map((row) => [...row]);
  for (let left = chance.few(5); left > 0 && rows.length > 0; left--) chance.pick(changes)(rows, chance);
  const delimiter = chance.happens(0.8) ? ',' : chance.pick([';', '\t', '|']);
  const end = chance.happens(0.8) ? '\n' : chance.pick(['\r\n', '\r']);
  return rows.map((row) => row.map((cell) => written(cell, delimiter, chance)).join(delimiter)).join(end);
}
