import { speciesNames } from '@rootreach/core';

let codes: ReadonlyMap<string, readonly string[]> | undefined;

/** First letters of genus and epithet: the way field crews shorten names (common practice). */
function codesOf(): ReadonlyMap<string, readonly string[]> {
  if (codes) return codes;
  const made = new Map<string, string[]>();
  for (const { botanical } of speciesNames()) {
    const [genus = '', epithet = ''] = botanical.toLowerCase().split(' ');
    if (epithet === '' || epithet.startsWith('sp')) continue;
    const code = genus.slice(0, 2) + epithet.slice(0, 2);
    const listed = made.get(code) ?? [];
    if (!listed.includes(botanical)) made.set(code, [...listed, botanical]);
  }
  codes = made;
  return made;
}

/**
 * Species of a code such as `ACPL` or `ACPL2`: two letters of the genus, two of the species. Where several species
 * share it, the genus if they have one; null where it says nothing.
 */
export function speciesOfCode(code: string): string | null {
  const letters = /^([A-Za-z]{4})\d?$/.exec(code.trim())?.[1]?.toLowerCase();
  const found = letters === undefined ? undefined : codesOf().get(letters);
  if (found === undefined) return null;
  if (found.length === 1) return found[0] ?? null;
  const genera = new Set(found.map((name) => name.split(' ')[0] ?? ''));
  return genera.size === 1 ? `${[...genera][0]} sp.` : null;
}
