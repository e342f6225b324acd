import { TextReader, type Texts, textsOf } from './texts.js';

/** Number of each text, 53 bits made in two halves: equal texts give equal numbers, others hardly ever. */
function hashesOf(columns: readonly Texts[]): Float64Array {
  const hashes = new Float64Array(columns.reduce((sum, { count }) => sum + count, 0));
  let at = 0;
  for (const { joined, count } of columns) {
    let [a, b] = [0x811c9dc5, 0x9747b28c];
    for (let i = 0; count > 0 && i <= joined.length; i++) {
      // the mark between two texts is 0, and no letter of an id
      const code = i < joined.length ? joined.charCodeAt(i) : 0;
      if (code === 0) {
        hashes[at++] = (a >>> 0) * 0x200000 + (b >>> 11);
        [a, b] = [0x811c9dc5, 0x9747b28c];
      } else {
        a = Math.imul(a ^ code, 0x01000193);
        b = Math.imul(b ^ code, 0x85ebca6b) ^ (b >>> 13);
      }
    }
  }
  return hashes;
}

function hasTwins(columns: readonly Texts[]): boolean {
  const hashes = hashesOf(columns).sort();
  return hashes.some((hash, i) => i > 0 && hash === hashes[i - 1]);
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
