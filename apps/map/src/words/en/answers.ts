import type { Driver, MissingInput, Seen } from '@rootreach/core';

/** Texts of the year slider, what-if and profile. */
export const answers = {
  time: {
    title: 'Look ahead: other years, and what if',
    slider: 'Years from today',
    today: 'Today',
    inYear: (year: number) => `In ${year}`,
    valueText: (year: number, ahead: number) =>
      ahead === 0 ? 'Today' : `In ${year}, ${ahead} ${ahead === 1 ? 'year' : 'years'} from today`,
    back: 'Back to today',
    cleared: 'What if every line were dug up and cleared of roots this year?',
    stop: 'Back to how it is',
    /** Said above everything that speaks for another time or another case. */
    speaks: (year: number | null, cleared: boolean) => {
      const when = year === null ? 'As it would be today' : `As it would be in ${year}`;
      const grown = year === null ? '' : ': trees have grown, joints have aged';
      return cleared
        ? `${when} if every line were dug up and cleared of roots this year${grown}.`
        : `${when} if nobody did anything${grown}.`;
    },
    within: (years: number, from: number | null) =>
      from === null ? `within ${years} years` : `within the ${years} years from ${from}`,
  },

  drivers: {
    title: 'What would change it',
    change: (driver: Driver) => driver.change,
    fall: (from: number, to: number) => `${Math.round(from)} → ${Math.round(to)}`,
    said: (from: number, to: number) => `score falls from ${Math.round(from)} to ${Math.round(to)}`,
    none: 'Nothing that we can work out would move it much.',
    basis: 'Each worked out anew with that one thing changed; scores of 100.',
  },

  missing: {
    title: 'What would make it surer',
    noTrees: (within: string) =>
      `No tree is on the sketch. Put in every tree within about ${within}, next door’s too.`,
    first: 'Most would help:',
    next: 'Then:',
    field: {
      material: 'say what the pipe is made of',
      installed: 'say about when it was laid',
      depthM: 'measure how deep it lies at both ends',
      stemDiameterM: 'measure the trunk',
      species: 'find out what kind of tree it is',
      canopyRadiusM: 'pace from trunk to edge of leaves',
    } satisfies Record<MissingInput['field'], string>,
    ofTree: (what: string, name: string, id: string) => `${what}: ${name} (${id})`,
    fill: 'Fill in',
  },

  profile: {
    seen: {
      clear: 'clear',
      fine: 'fine roots',
      mass: 'root mass',
      full: 'full of roots',
      crushed: 'crushed',
      sag: 'sag',
      offset: 'offset joint',
    } satisfies Record<Seen, string>,
    seenIn: (what: string, year: number | null) => (year === null ? what : `${what} ${Math.floor(year)}`),
    findings: (list: readonly string[]) => ` Seen by camera: ${list.join('; ')}.`,
    findingAt: (what: string, span: string) => `${what} at ${span}`,
  },
};
