import type { Band } from '../model/result.js';
import type { ScoredSite } from '../risk/scored-site.js';

/** Lines, metres and expected entries of one part of a town. */
export interface TownPart {
  readonly key: string;
  readonly name: string;
  readonly lines: number;
  readonly lengthM: number;
  /** Likely entries within the horizon, and those in a kilometre. */
  readonly expected: number;
  readonly perKm: number;
  readonly byBandM: Readonly<Record<Band, number>>;
}

/** Grows row by row. */
class Sum {
  lines = 0;
  lengthM = 0;
  expected = 0;
  readonly byBandM: Record<Band, number> = { leave: 0, watch: 0, inspect: 0, act: 0, 'cannot-say': 0 };

  add(lengthM: number, expected: number, band: Band): void {
    this.lengthM += lengthM;
    this.expected += expected;
    this.byBandM[band] += lengthM;
  }

  part(key: string, name: string): TownPart {
    const { lines, lengthM, expected, byBandM } = this;
    return {
      key,
      name,
      lines,
      lengthM,
      expected,
      perKm: lengthM > 0 ? (1000 * expected) / lengthM : 0,
      byBandM,
    };
  }
}

export const byExpected = (a: TownPart, b: TownPart): number =>
  b.expected - a.expected || (a.key < b.key ? -1 : 1);

/** Sums the segments by a key of their line, which is asked for once a line. */
export function sumBy(scored: ScoredSite, keyOf: (line: number) => string): Map<string, Sum> {
  const { columns } = scored;
  const sums = new Map<string, Sum>();
  let last = -1;
  let sum = new Sum();
  for (let row = 0; row < columns.count; row++) {
    const line = columns.line[row] as number;
    if (line !== last) {
      const key = keyOf(line);
      sum = sums.get(key) ?? new Sum();
      sums.set(key, sum);
      sum.lines += 1;
      last = line;
    }
    sum.add(columns.lengthM[row] as number, columns.expected[row] as number, scored.bandOf(row));
  }
  return sums;
}
