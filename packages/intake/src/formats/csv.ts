import Papa from 'papaparse';
import type { RawRecord, RawTable } from '../take/raw-table.js';
import { headOf, type TextPieces } from './text-pieces.js';

/** Beginning that delimiter and line ends are told from. */
const HEAD = 1 << 20;

interface Line {
  readonly cells: readonly string[];
  /** What is wrong with its quotes. */
  readonly wrong: string | undefined;
}

const isEmpty = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');

/** Lines of a table that are not empty. What a piece ends within is read with the next one: a quoted cell may hold line ends. */
function* linesOf(pieces: TextPieces, delimiter: string, newline: '\n' | '\r' | '\r\n'): Iterable<Line> {
  const parser = new Papa.Parser({ delimiter, newline });
  let text = '';
  const cut = function* (last: boolean): Iterable<Line> {
    const { data, errors, meta } = parser.parse(text, 0, !last) as Papa.ParseResult<string[]>;
    const wrong = new Map(errors.map(({ row, message }) => [row, message.toLowerCase()]));
    for (const [i, cells] of data.entries()) if (!isEmpty(cells)) yield { cells, wrong: wrong.get(i) };
    text = text.slice(meta.cursor);
  };
  let wanted = 0;
  for (const piece of pieces()) {
    text += piece;
    if (text.length < wanted) continue;
    yield* cut(false);
    // a cell that does not end is looked through again only when there is twice as much of it
    wanted = 2 * text.length;
  }
  yield* cut(true);
}

/** Names of the columns: no two the same, none that is no use as a key on a plain object. */
function namesOf(cells: readonly string[]): string[] {
  const taken = new Set<string>();
  return cells.map((cell) => {
    const given = cell.trim() === '__proto__' ? 'proto' : cell.trim();
    let name = given;
    for (let n = 1; taken.has(name); n++) name = `${given}_${n}`;
    taken.add(name);
    return name;
  });
}

function recordOf({ cells, wrong }: Line, names: readonly string[]): RawRecord {
  if (wrong !== undefined) return { broken: wrong };
  // cells behind the last column are harmless while empty; else a stray delimiter has moved all that follow it
  if (cells.length > names.length && !isEmpty(cells.slice(names.length))) {
    return { broken: `${cells.length} cells in ${names.length} columns` };
  }
  const properties: Record<string, string> = {};
  const count = Math.min(cells.length, names.length);
  for (let i = 0; i < count; i++) properties[names[i] as string] = cells[i] as string;
  return { properties, geometry: null };
}

/** Rows of a table with a header line; delimiter and quotes as found. */
export function csvTable(file: string, pieces: TextPieces): RawTable {
  const { delimiter, linebreak } = Papa.parse(headOf(pieces, HEAD), {
    preview: 10,
    skipEmptyLines: 'greedy',
  }).meta;
  const lines = () => linesOf(pieces, delimiter, linebreak as '\n');
  const [head] = lines();
  const names = namesOf(head?.cells ?? []);
  function* records(): Iterable<RawRecord> {
    let isHead = true;
    for (const line of lines()) {
      if (!isHead) yield recordOf(line, names);
      isHead = false;
    }
  }
  return {
    file,
    format: 'csv',
    columns: names.filter((name) => name !== ''),
    records: { [Symbol.iterator]: () => records()[Symbol.iterator]() },
    crs: null,
  };
}
