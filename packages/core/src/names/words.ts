/** Lower-case words of a name, without accents, apostrophes and the sign of hybrids. */
export function wordsOf(text: string): string[] {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[×✕]/g, ' x ')
    .replace(/['’‘`´]/g, '')
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '' && word !== 'x');
}

/** One string for all ways of writing a name: `Honey Locust`, `honey-locust` and `honeylocust` are one. */
export const squash = (words: readonly string[]): string => words.join('');

/** `cherries` -> `cherry`, `oaks` -> `oak`; words that end in `s` by themselves stay. */
export function singular(word: string): string {
  if (word.length < 4 || /(?:ss|us|is|as|os)$/.test(word)) return word;
  if (/...ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(?:ch|sh|x)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith('s') ? word.slice(0, -1) : word;
}
