import { describe, expect, it } from 'vitest';
import { MOST_EDITABLE } from '../../apps/map/src/keep/file-limits.js';
import { isTown } from '../../apps/map/src/keep/is-town.js';

const feature = '{"type":"Feature","properties":{"kind":"tree"},"geometry":null},';
const features = (characters: number) => feature.repeat(Math.ceil(characters / feature.length));
const photo = (characters: number) => `{"photo":"data:image/jpeg;base64,${'A'.repeat(characters)}"},`;

describe('telling a town from a site with pictures', () => {
  it('counts features, of all files together', async () => {
    expect(await isTown([new Blob([features(MOST_EDITABLE / 2)])])).toBe(false);
    expect(await isTown([new Blob([features(MOST_EDITABLE * 1.1)])])).toBe(true);
    const half = new Blob([features(MOST_EDITABLE * 0.6)]);
    expect(await isTown([half, half])).toBe(true);
  });

  it('does not count pictures, wherever the pieces of the file are cut', async () => {
    const pictures = Array.from({ length: 30 }, (_, i) => photo(300_000 + 7919 * i) + features(900 * i));
    expect(await isTown([new Blob(pictures)])).toBe(false);
    expect(await isTown([new Blob([...pictures, features(MOST_EDITABLE)])])).toBe(true);
  });

  it('takes a picture that never ends for one', async () => {
    expect(await isTown([new Blob([photo(MOST_EDITABLE * 2).slice(0, -3)])])).toBe(false);
  });
});
