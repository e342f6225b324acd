import { describe, expect, it } from 'vitest';
import { homeownerPage } from '../../packages/report/src/index.js';
import { DEMOS, ownerInput, siteOf, TAIL_FULL } from './inputs.js';
import { readText } from './page-text.js';
import { readingGrade, syllables } from './reading-grade.js';

describe('the measure of reading age', () => {
  it.each([
    ['pipe', 1],
    ['roots', 1],
    ['camera', 3],
    ['inspection', 3],
    ['table', 2],
    ['cleared', 1],
  ])('counts the syllables of %s', (word, count) => {
    expect(syllables(word)).toBe(count);
  });

  it('follows its formula: six words of one syllable are below grade 0', () => {
    // 0.39 x 6 + 11.8 x 1 - 15.59
    expect(readingGrade(['The cat sat on the mat.'])).toBeCloseTo(-1.45, 2);
  });

  it('puts the language of offices far above a child', () => {
    const office =
      'Remediation of infrastructure deterioration necessitates comprehensive engineering evaluation.';
    expect(readingGrade([office])).toBeGreaterThan(15);
  });
});

describe('the English page for the owner', () => {
  it.each(DEMOS)('can be read at twelve: %s', (name) => {
    expect(readingGrade(readText(homeownerPage(ownerInput(siteOf(name)))))).toBeLessThanOrEqual(7);
  });

  it('can be read at twelve where the camera has found roots, and without choices', () => {
    const site = siteOf('corner-lot', TAIL_FULL);
    for (const choices of [true, false]) {
      expect(readingGrade(readText(homeownerPage(ownerInput(site, { choices }))))).toBeLessThanOrEqual(7);
    }
  });

  it('has no sentence of more than 25 words but in the cautions', () => {
    const page = homeownerPage(ownerInput(siteOf('corner-lot', TAIL_FULL)));
    const long = readText(page)
      .flatMap((line) => line.split(/(?<=[.!?])\s+/))
      .filter((sentence) => sentence.split(/\s+/).length > 25);
    expect(long.filter((sentence) => !/^(?:Not possible|"Over)/.test(sentence))).toEqual([]);
  });
});
