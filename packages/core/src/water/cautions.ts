import type { Caution } from '../model/caution.js';
import { cautions } from '../risk/cautions.js';

const SHARED: readonly Caution['code'][] = ['screening-only', 'local-code'];

/** Cautions that stand beside what a line carries: it may lead somebody to send more water down it. */
export const waterCautions: readonly Caution[] = [
  {
    code: 'water-to-others',
    text: "Water sent onto a neighbour's land, a public street or into a foul sewer may be against local rules: ask before a line is made bigger or moved.",
    source: 'common-practice',
  },
  ...cautions.filter(({ code }) => SHARED.includes(code)),
];
