/** Stands between the texts of a column; no id holds it. */
const END = '\u0000';

/** A column of texts, whole in one string: a million small ones would each cost more than they say. */
export interface Texts {
  readonly joined: string;
  readonly count: number;
}

/** @throws never: what holds the mark itself loses it. */
export const textsOf = (texts: readonly string[]): Texts => ({
  joined: texts.map((text) => (text.includes(END) ? text.replaceAll(END, '') : text)).join(END),
  count: texts.length,
});

/** Reads texts out of columns that lie one after the other; the columns looked at last are kept apart. */
export class TextReader {
  private readonly first: number[] = [];
  private readonly split = new Map<number, readonly string[]>();

  constructor(private readonly parts: readonly Texts[]) {
    let from = 0;
    for (const { count } of parts) {
      this.first.push(from);
      from += count;
    }
  }

  at(index: number): string {
    let low = 0;
    let high = this.first.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.first[middle] as number) <= index) low = middle;
      else high = middle - 1;
    }
    let texts = this.split.get(low);
    if (texts === undefined) {
      texts = this.parts[low]?.joined.split(END) ?? [];
      this.split.set(low, texts);
    }
    return texts[index - (this.first[low] ?? 0)] ?? '';
  }
}
