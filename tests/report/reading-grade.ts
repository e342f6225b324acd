/** Syllables of an English word by its groups of vowels, a silent e at the end not counted. */
export function syllables(word: string): number {
  const bare = word.toLowerCase().replace(/[^a-z]/g, '');
  if (bare.length <= 3) return 1;
  const spoken = bare.replace(/(?:[^laeiouy]es|[^td]ed|[^laeiouy]e)$/, '').replace(/^y/, '');
  return Math.max(1, (spoken.match(/[aeiouy]{1,2}/g) ?? []).length);
}

/**
 * School grade of a text: 0.39 words a sentence + 11.8 syllables a word - 15.59
 * (Kincaid, Fishburne, Rogers & Chissom 1975, Navy readability formulas). A reader of 12 is in grade 6 or 7.
 * @param lines each ends a sentence, whether a full stop stands there or not
 */
export function readingGrade(lines: readonly string[]): number {
  const sentences = lines
    .flatMap((line) => line.split(/(?<=[.!?:])\s+/))
    .filter((part) => /[a-z]/i.test(part));
  const words = sentences.flatMap((sentence) =>
    sentence.split(/\s+/).filter((word) => /[a-z0-9]/i.test(word)),
  );
  const spoken = words.reduce((sum, word) => sum + syllables(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (spoken / words.length) - 15.59;
}
