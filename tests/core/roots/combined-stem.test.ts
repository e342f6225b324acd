import { expect, it } from 'vitest';
import { combinedStemDiameter } from '../../../packages/core/src/roots/combined-stem.js';

it('a tree has at least one stem', () => {
  expect(() => combinedStemDiameter([])).toThrow(RangeError);
});
