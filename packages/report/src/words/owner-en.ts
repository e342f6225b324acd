import type { Band, MaterialKey, Seen } from '@rootreach/core';
import { choicesEn } from './choices-en.js';

const headlines: Readonly<Record<Band, string>> = {
  leave: 'This pipe looks safe from roots for now.',
  watch: 'There is a small chance of roots here.',
  inspect: 'Roots may well get into this pipe.',
  act: 'Roots are likely to get into this pipe.',
  'cannot-say': 'We do not know enough to say yet.',
};

const seenHeadlines: Readonly<Record<Exclude<Seen, 'clear'>, string>> = {
  fine: 'Roots have found their way into this pipe.',
  mass: 'Roots are growing thick in this pipe.',
  full: 'Roots have filled this pipe.',
  crushed: 'This pipe is crushed.',
  sag: 'This pipe has a low spot that holds water.',
  offset: 'Two pieces of this pipe have slipped apart.',
};

const nextSteps: Readonly<Record<Band, (year: string) => string>> = {
  leave: (year) => `Nothing needs to be done now. Look again by ${year}.`,
  watch: (year) => `No rush. Have a camera put in by ${year}.`,
  inspect: () => 'Have a camera put in this season. It shows what is really there.',
  act: () => 'Have a camera put in now, and plan the work.',
  'cannot-say': () => 'A camera in the pipe will tell more than any sum.',
};

const seenNext: Readonly<Record<Exclude<Seen, 'clear'>, (year: string) => string>> = {
  fine: (year) => `Cut the roots, or look again by ${year}. They will grow.`,
  mass: () => 'Clear it now. Then decide how to keep roots out.',
  full: () => 'Plan the work now.',
  crushed: () => 'Plan the work now.',
  sag: (year) => `Look again by ${year}, and plan to mend it.`,
  offset: (year) => `Look again by ${year}, and plan to mend it.`,
};

const materials: Readonly<Record<MaterialKey, string>> = {
  'hdpe-corrugated': 'thin ribbed plastic',
  'hdpe-corrugated-heavy': 'ribbed plastic',
  'hdpe-dual-wall': 'double-wall plastic',
  'hdpe-welded': 'welded plastic',
  'pvc-sdr35': 'plastic sewer pipe',
  'pvc-sch40': 'thick-wall plastic',
  'pvc-thin-wall': 'thin-wall plastic',
  abs: 'black plastic',
  clay: 'clay',
  concrete: 'concrete',
  'cast-iron': 'cast iron',
  'asbestos-cement': 'asbestos cement',
  'bituminous-fibre': 'tar-soaked fiber',
  brick: 'brick',
  unknown: 'a kind we do not know',
};

/** The page for the owner: short words, short sentences. */
export const ownerEn = {
  title: 'Your drain and your trees',
  headlines,
  seenHeadlines,
  nextSteps,
  seenNext,
  blocked: {
    short: 'It cannot be cleared.',
    means:
      'Little or no water gets through. A pipe like that has to be replaced, or a new one laid elsewhere.',
    wait: 'It will not get better. When it rains hard, water backs up and stands in the yard or by the house. Roots go on growing in the pipe.',
  },
  materials,
  odds: {
    about: (tens: string): string => `About ${tens} in 10`,
    fewer: 'Fewer than 1 in 10',
    nearly: 'Nearly 10 in 10',
    within: (years: number): string => `Within ${years} years.`,
    range: (low: string, high: string): string => `It could be ${low} to ${high}.`,
    narrow: 'The range is narrow.',
    lowest: 'fewer than 1',
    highest: 'nearly 10',
    think: (tens: string, year: string): string =>
      `Think of ten pipes like this one, by trees like these. By ${year} we would expect roots in ${tens} of them.`,
    thinkAgain: (tens: string, year: string): string =>
      `Think of ten pipes like this one. If nothing is done, we would expect trouble in ${tens} of them by ${year}.`,
    thinkFew: 'fewer than one',
    thinkAll: 'nearly all',
    thinkSome: (tens: string): string => `about ${tens}`,
    sayNot: 'We give no odds here: a low number could sound safe when it is not.',
    marks: (likely: string, low: string, high: string): string =>
      `Ten pipes: ${likely} likely to have roots, could be ${low} to ${high}`,
  },
  where: {
    title: 'Where it is',
    on: (where: string, line: string): string => `The spot is ${where}. The line is the “${line}”.`,
    ring: 'The ring on the plan shows it.',
  },
  saw: (what: string, year: string): string => `The camera saw ${what}${year === '' ? '' : ` in ${year}`}.`,
  why: {
    title: 'Why here',
    tree: (tree: string, distance: string, part: string): string =>
      `${tree} stands ${distance} from the pipe. It brings ${part} of the risk.`,
    onTop: (tree: string, part: string): string =>
      `${tree} stands right over the pipe. It brings ${part} of the risk.`,
    parts: {
      most: 'most',
      half: 'about half',
      third: 'about a third',
      some: 'a small part',
      all: 'nearly all',
    },
    joints: (count: number): string =>
      count === 1
        ? 'This stretch has one joint. Roots slip in where two pieces meet.'
        : `This stretch has ${count} joints. Roots slip in where two pieces meet.`,
    slots: 'The pipe has open slots. Roots can slip in all along it.',
    crush: 'The wall of the pipe is thin. A big root can squeeze it.',
    pipe: (material: string, depth: string): string =>
      `The pipe is ${material}. It lies about ${depth} deep.`,
    pipeSince: (material: string, year: string, depth: string): string =>
      `The pipe is ${material}, laid in ${year}. It lies about ${depth} deep.`,
    noTree: 'No tree that we know of reaches this stretch.',
  },
  help: {
    title: 'What would lower the odds',
    to: (tens: string): string => `down to ${tens}`,
    note: 'Worked out again for each change, within the same years.',
  },
  wait: {
    title: 'If we wait',
    rise: (first: string, firstYears: number, last: string, lastYears: number): string =>
      `If nothing is done, the odds go from ${first} within ${firstYears} years to ${last} within ${lastYears}. Trees grow, and joints get old.`,
    level: (tens: string, years: number): string =>
      `If nothing is done, the odds stay at ${tens} even after ${years} years.`,
    inTen: (tens: string): string => `${tens} in 10`,
  },
  choices: choicesEn,
  photos: {
    title: 'What the camera saw',
    caption: (what: string, at: string, year: string): string =>
      `${what}, ${at}${year === '' ? '' : `, ${year}`}`,
    at: (span: string, from: string): string => `${span} from ${from}`,
    alt: (what: string): string => `Photo from inside the pipe: ${what}`,
  },
  unknowns: {
    title: 'What we do not know',
    model: 'Nobody has dug here. The odds come from what is known of roots and pipes.',
    fields: {
      species: (tree: string): string => `We do not know what kind of tree ${tree} is.`,
      stemDiameterM: (tree: string): string => `We have not measured the trunk of ${tree}.`,
      canopyRadiusM: (tree: string): string => `We have not measured how wide ${tree} is.`,
      material: () => 'We do not know what the pipe is made of.',
      installed: () => 'We do not know when the pipe was laid.',
      depthM: () => 'We do not know how deep the pipe lies.',
      joint: () => 'We do not know how the pieces are joined.',
      pieceM: () => 'We do not know how long the pieces of pipe are.',
      flow: () => 'We do not know which way the water runs.',
    },
    taken: (value: string): string => `We took ${value}.`,
    usual: 'We took what is usual.',
    years: (years: string): string => `an age of ${years} years`,
    more: (count: number): string =>
      count === 1 ? 'One more thing was guessed.' : `${count} more things were guessed.`,
    unsure: 'Each guess makes the range wider.',
  },
  cautions: { title: 'Before anybody digs' },
  sign: {
    on: (date: string): string => `Worked out on ${date}`,
    by: (who: string): string => `by ${who}`,
    blank: 'Estimate by',
    model: (version: string): string => `Model ${version}.`,
  },
};
