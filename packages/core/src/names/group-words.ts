const CONIFER = /^(?:conifers?|coniferous|softwoods?|evergreens?|needle|needled)$/;
const BROADLEAF =
  /^(?:broadleafs?|broadleaves|broadleaved|deciduous|hardwoods?|leafy|fruit|fruiting|flowering|shade)$/;
const PALM = /^palms?$/;
const SMALL = /^(?:small|dwarf|little|young)$/;
const MEDIUM = /^(?:medium|mid|middling)$/;
const LARGE = /^(?:large|big|huge|tall|mature|old)$/;

/** Row of unknown trees by the form and size that the words speak of; undefined when they speak of none. */
export function groupKey(words: readonly string[]): string | undefined {
  const any = (pattern: RegExp): boolean => words.some((word) => pattern.test(word));
  const size = any(SMALL) ? '-small' : any(MEDIUM) ? '-medium' : any(LARGE) ? '-large' : '';
  if (any(PALM)) return `unknown-palm${size}`;
  if (any(BROADLEAF) || words.join(' ').includes('broad lea')) return `unknown-broadleaf${size}`;
  if (any(CONIFER)) return `unknown-conifer${size}`;
  // most street and garden trees are broadleaved
  return size !== '' && words.some((word) => /^trees?$/.test(word)) ? `unknown-broadleaf${size}` : undefined;
}
