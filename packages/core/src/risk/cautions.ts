import type { Caution } from '../model/caution.js';

/** Cautions that stand beside every ranking: what it says may lead somebody to dig, cut or saw. */
export const cautions: readonly Caution[] = [
  {
    code: 'screening-only',
    text: 'These are screening estimates for planning an inspection: not a survey and not engineering.',
    source: 'our-judgement',
  },
  {
    code: 'locate-utilities',
    text: 'Before any digging have buried utilities located and wait for the marks; private lines are not marked. Hand-dig near marks.',
    source: 'common-practice',
  },
  {
    code: 'trench-walls',
    text: 'A trench 5 ft (1.5 m) or deeper, or in ground that may cave in, needs a protective system and a competent person; a ladder from 4 ft (1.2 m); spoil 2 ft (0.6 m) back.',
    source: 'osha-1926-p',
  },
  {
    code: 'cutting-near-trunk',
    text: 'Cutting roots within three trunk diameters of a stem can bring the tree down. Ask a certified arborist before cutting roots thicker than a thumb.',
    source: 'smiley-2008',
  },
  {
    code: 'protected-trees',
    text: 'Trees may be protected and work near them may need a permit.',
    source: 'ansi-a300-part5',
  },
  {
    code: 'saws-in-soil',
    text: 'Saws kick back and throw stones in soil: guards, goggles, chaps, and nobody in the line of the blade.',
    source: 'common-practice',
  },
  {
    code: 'local-code',
    text: 'Local code and licensed people decide.',
    source: 'common-practice',
  },
];
