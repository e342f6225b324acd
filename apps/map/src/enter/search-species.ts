import type { SpeciesName } from '@rootreach/core';

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9 ]+/g, ' ')
    .trim();

/** How well a name fits what was typed: lower is better; null where it does not fit. */
function fit(name: string, typed: string): number | null {
  const text = plain(name);
  if (text === typed) return 0;
  if (text.startsWith(typed)) return 1;
  if (text.includes(` ${typed}`)) return 2;
  const words = typed.split(' ');
  return words.length > 1 && words.every((word) => ` ${text}`.includes(` ${word}`)) ? 3 : null;
}

/** The usual name and the botanical one before the other common ones. */
function bestFit(species: SpeciesName, typed: string): number | null {
  const fits = [species.botanical, ...species.common].flatMap((name, i) => {
    const found = fit(name, typed);
    return found === null ? [] : [found + (i > 1 ? 0.5 : 0)];
  });
  return fits.length === 0 ? null : Math.min(...fits);
}

/** Names that fit a few letters of either name: whole names, then beginnings, then beginnings of later words. */
export function searchSpecies(
  names: readonly SpeciesName[],
  typed: string,
  most = 8,
): readonly SpeciesName[] {
  const text = plain(typed);
  if (text === '') return [];
  return names
    .flatMap((species) => {
      const rank = bestFit(species, text);
      return rank === null ? [] : [{ species, rank }];
    })
    .sort(
      (a, b) =>
        a.rank - b.rank ||
        (a.species.common[0] ?? '').length - (b.species.common[0] ?? '').length ||
        a.species.botanical.localeCompare(b.species.botanical),
    )
    .slice(0, most)
    .map(({ species }) => species);
}
