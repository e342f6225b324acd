import { TextReader, type Texts, textsOf } from './texts.js';

/** Two halves of a 53-bit number made of a text: equal texts give equal numbers, others hardly ever. */
function hashOf(text: string): number {
  let a = 0x811c9dc5;
  let b = 0x9747b28c;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b) ^ (b >>> 13);
  }
  return (a >>> 0) * 0x200000 + (b >>> 11);
}

function hasTwins(columns: readonly Texts[]): boolean {
  const reader = new TextReader(columns);
  const count = columns.reduce((sum, column) => sum + column.count, 0);
  const hashes = Float64Array.from({ length: count }, (_, i) => hashOf(reader.at(i))).sort();
  for (let i = 1; i < count; i++) if (hashes[i] === hashes[i - 1]) return true;
  return false;
}

/** Ids of pieces that were read apart, each its own over all of them; the later one gets a number. */
export function uniqueIds(columns: readonly Texts[]): {
  readonly ids: readonly Texts[];
  readonly renamed: readonly string[];
} {
  if (columns.length < 2 || !hasTwins(columns)) return { ids: columns, renamed: [] };
  const reader = new TextReader(columns);
  const taken = new Set<string>();
  const renamed: string[] = [];
  let at = 0;
  const ids = columns.map(({ count }) =>
    textsOf(
      Array.from({ length: count }, () => {
        const given = reader.at(at++);
        let id = given;
        for (let n = 2; taken.has(id); n++) id = `${given}-${n}`;
        taken.add(id);
        if (id !== given) renamed.push(given);
        return id;
      }),
    ),
  );
  return { ids, renamed };
}
