import { describe, expect, it } from 'vitest';
import { wordWaterGap, wordWaterWarning } from '../../../packages/core/src/explain/water-words.js';

const numbers = {
  cleansing: '2 ft/s',
  velocity: '1.6 ft/s (1.2 to 1.9)',
  slopeNeeded: '1.6 % (1.1 to 2.9)',
  headLoss: '3 in',
  withRoots: '12 gpm',
};

describe('warnings in words', () => {
  it.each([
    ['not-self-cleansing', ['1.6 ft/s', '2 ft/s', '1.6 %']],
    ['may-not-clean-itself', ['1.6 ft/s', '2 ft/s']],
    ['usual-slope-not-enough', ['usual 1 %', '1.6 %']],
    ['too-small-with-roots', ['12 gpm']],
    ['holds-water-back', ['3 in']],
    ['too-small', ['this rain']],
    ['may-be-too-small', ['this rain']],
    ['no-fall', ['levels']],
  ] as const)('%s gives the numbers that it rests on', (warning, parts) => {
    const text = wordWaterWarning(warning, numbers);
    for (const part of parts) expect(text).toContain(part);
    expect(text).not.toMatch(/undefined|\.$/);
  });
});

describe('gaps in words', () => {
  it('say what is missing', () => {
    expect(wordWaterGap('levels-not-given')).toBe('no ground level near both ends');
    expect(wordWaterGap('foul')).toContain('no rain');
  });
});
