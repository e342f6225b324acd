/** Words by which inventories mark a place without a living tree. */
const NOT_LIVE = [
  /\b(?:dead|stumps?|snag|vacant|removed|felled|no tree|missing tree|tree gone)\b/,
  /\b(?:planting|plantable|available|empty|open) (?:site|space|spot|pit|place|location)s?\b/,
  /\bto be (?:planted|removed)\b/,
];

/**
 * Whether the text speaks of a stump, a dead tree or an empty planting place rather than of a living tree.
 * `Stump grinding site`, `Planting space - medium`, `DEAD Acer rubrum`: yes; `deadwood in crown`: no.
 */
export function isNotALiveTree(text: string): boolean {
  const plain = text.toLowerCase().replace(/[_\-/]+/g, ' ');
  return NOT_LIVE.some((pattern) => pattern.test(plain));
}
