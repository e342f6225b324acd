/** Each way has a pattern of its own, so that they can be told apart without colour. */
const PATTERNS = ['', '14 7', '2 7', '14 6 2 6', '6 5'] as const;

/** Dashes of the way with this number. */
export const patternOf = (index: number): string => PATTERNS[index % PATTERNS.length] ?? '';
