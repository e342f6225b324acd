import { describe, expect, it } from 'vitest';
import { editDistance } from '../../../packages/core/src/names/edit-distance.js';
import { resolveSpecies } from '../../../packages/core/src/names/resolve-species.js';
import { speciesRow, speciesTable } from '../../../packages/core/src/tables/species.js';

describe('small slips', () => {
  it.each([
    ['Qercus rubra', 'quercus-rubra'],
    ['Quercus rubar', 'quercus-rubra'],
    ['Querqus alba', 'quercus-alba'],
    ['Acer platinoides', 'acer-platanoides'],
    ['Acer rubrun', 'acer-rubrum'],
    ['Liquidamber styraciflua', 'liquidambar-styraciflua'],
    ['Chamaecypris lawsoniana', 'chamaecyparis-lawsoniana'],
    ['Allianthus altissima', 'ailanthus-altissima'],
    ['Caragana arboresense', 'caragana-arborescens'],
    ['Magnolia x soulngeana', 'magnolia-x-soulangeana'],
    ['Picea omorica', 'picea-omorika'],
    ['Gymnocladus dioica', 'gymnocladus-dioicus'],
    ['norwya maple', 'acer-platanoides'],
    ['sliver maple', 'acer-saccharinum'],
    ['weeping wilow', 'salix-babylonica'],
    ['Lombardy popular', 'unknown-tree'],
    ['Elm, Chinees', 'ulmus-parvifolia'],
    ['Gleditsia tricanthos', 'gleditsia-triacanthos'],
    ['Liriodendron tulipfera', 'liriodendron-tulipifera'],
    ['Acer sacharinum', 'acer-saccharinum'],
    ['Acer sacharum', 'acer-saccharum'],
    ['Ulnus americana', 'ulmus-americana'],
  ] as const)('%s is %s', (text, key) => {
    expect(resolveSpecies(text).key).toBe(key);
  });

  it('are never answered as exact', () => {
    for (const text of ['Qercus rubra', 'Acer rubrun', 'norwya maple', 'Liquidamber']) {
      expect(resolveSpecies(text).certainty).toBe('likely');
    }
  });

  it.each(['Sorus', 'Ulnus', 'Prinus', 'Celcis', 'beach', 'Pnus', 'older tree with holes'])(
    '%s lies as near to one genus as to another, or to none, and is left alone',
    (text) => {
      const { level } = resolveSpecies(text);
      expect(['unknown', 'group']).toContain(level);
    },
  );
});

/** The word with one letter lost, doubled, replaced or swapped with the next. */
function slips(word: string): string[] {
  return [...word].flatMap((letter, i) => [
    word.slice(0, i) + word.slice(i + 1),
    word.slice(0, i) + letter + word.slice(i),
    `${word.slice(0, i)}e${word.slice(i + 1)}`,
    word.slice(0, i) + (word[i + 1] ?? '') + letter + word.slice(i + 2),
  ]);
}

const genusOf = (key: string): string => speciesRow(key).botanical.replace('×', '').split(' ')[0] ?? '';

describe('every slip of one letter', () => {
  const genera = [...speciesTable.values()].filter(
    (row) => row.rank === 'genus' && row.botanical.length >= 5,
  );

  it('in a genus leads to that genus or to none', () => {
    const wrong = genera.flatMap((row) =>
      slips(row.botanical)
        .map((text) => ({ text, match: resolveSpecies(text) }))
        .filter(({ match }) => match.level === 'species' || match.level === 'genus')
        // a slip may spell another name outright: `Aacia`, `Carya`
        .filter(({ match }) => match.certainty !== 'exact' && genusOf(match.key) !== row.botanical)
        .map(({ text, match }) => `${text} -> ${match.key}`),
    );
    expect(wrong).toEqual([]);
  }, 30_000);

  it('in a genus is mended more often than not', () => {
    const all = genera.flatMap((row) => slips(row.botanical).map((text) => ({ text, genus: row.botanical })));
    const mended = all.filter(({ text, genus }) => genusOf(resolveSpecies(text).key) === genus);
    expect(mended.length / all.length).toBeGreaterThan(0.8);
  }, 30_000);
});

describe('edit distance', () => {
  it.each([
    ['maple', 'maple', 0],
    ['mapel', 'maple', 1],
    ['maple', 'maples', 1],
    ['silver', 'sliver', 1],
    ['kitten', 'sitting', 3],
    ['ca', 'abc', 3], // the usual example where optimal string alignment differs from the full Damerau distance
  ] as const)('from %s to %s is %d', (a, b, distance) => {
    expect(editDistance(a, b, 5)).toBe(distance);
    expect(editDistance(b, a, 5)).toBe(distance);
  });

  it('stops past the most that is asked for', () => {
    expect(editDistance('kitten', 'sitting', 2)).toBe(3);
    expect(editDistance('oak', 'liquidambar', 2)).toBe(3);
  });
});
