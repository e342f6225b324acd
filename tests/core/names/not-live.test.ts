import { describe, expect, it } from 'vitest';
import { isNotALiveTree } from '../../../packages/core/src/names/not-live.js';

describe('places without a living tree', () => {
  it.each([
    'stump',
    'Stump',
    'STUMPS',
    'Dead',
    'dead Acer rubrum',
    'Norway maple - dead',
    'vacant site',
    'Vacant planting site',
    'Planting Site - small',
    'planting_space',
    'empty pit',
    'open space',
    'removed 2019',
    'felled',
    'no tree',
    'to be planted',
  ])('%s', (text) => {
    expect(isNotALiveTree(text)).toBe(true);
  });

  it.each([
    'Acer rubrum',
    'deadwood in crown',
    'Deadnettle',
    'unknown',
    '',
    'planted 2019',
    'site tree',
    'Alive',
  ])('not: %s', (text) => {
    expect(isNotALiveTree(text)).toBe(false);
  });
});
