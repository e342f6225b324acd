import { describe, expect, it } from 'vitest';
import { keptSize } from '../../../apps/map/src/enter/shrink-picture.js';

describe('the size of a kept photo', () => {
  it('is at most 1280 pixels on its longer side, in proportion, and never larger than it was', () => {
    expect(keptSize(4032, 3024)).toEqual({ width: 1280, height: 960 });
    expect(keptSize(3024, 4032)).toEqual({ width: 960, height: 1280 });
    expect(keptSize(640, 480)).toEqual({ width: 640, height: 480 });
    expect(keptSize(20_000, 3)).toEqual({ width: 1280, height: 1 });
  });
});
