import type { Band, Driver, FittingType, ObstacleType, Seen } from '@rootreach/core';
import { crewEn } from './crew-en.js';
import { ownerEn } from './owner-en.js';

const bands: Readonly<Record<Band, string>> = {
  leave: 'leave it be',
  watch: 'look again in time',
  inspect: 'push the camera',
  act: 'plan the work',
  'cannot-say': 'too little known',
};

const fittings: Readonly<Record<FittingType, string>> = {
  basin: 'basin',
  cleanout: 'cleanout',
  downspout: 'downspout',
  outlet: 'outlet',
  wye: 'wye',
  tee: 'tee',
  bend: 'bend',
  coupling: 'coupling',
  reducer: 'reducer',
  cap: 'cap',
};

const ground: Readonly<Record<ObstacleType, string>> = {
  building: 'building',
  paving: 'paving',
  pool: 'pool',
  wall: 'wall',
  utility: 'buried utility, as sketched',
  boundary: 'lot line',
};

const seen: Readonly<Record<Seen, string>> = {
  clear: 'clear',
  fine: 'fine roots',
  mass: 'a mass of roots',
  full: 'roots that fill the pipe',
  crushed: 'a crushed pipe',
  sag: 'a low spot',
  offset: 'a slipped joint',
};

/** What would lower the odds. */
const changes: Readonly<Record<Driver['code'], (tree: string) => string>> = {
  'seal-joints': () => 'Seal the joints',
  'basin-for-wye': () => 'Put a sealed basin where the lines meet',
  'stouter-pipe': () => 'Lay a stronger pipe',
  deeper: () => 'Lay it a foot deeper',
  'tree-absent': (tree) => `Without the ${tree}`,
  'root-barrier': (tree) => `Put a root barrier by the ${tree}`,
  'dig-and-clear': () => 'Dig it up and clear the roots',
};

const isUnknown = (species: string): boolean => species === '' || species.startsWith('unknown');

export const en = {
  language: 'en',
  bands,
  fittings,
  ground,
  seen,
  changes,
  /** Name of a tree on a plan. */
  tree: (name: string, species: string): string => (isUnknown(species) ? 'tree' : name),
  /** The same in a sentence. */
  theTree: (name: string, species: string): string => (isUnknown(species) ? 'the tree' : `the ${name}`),
  date: (year: number, month: number, day: number): string => {
    const months =
      'January February March April May June July August September October November December'.split(' ');
    return `${months[month - 1]} ${day}, ${year}`;
  },
  invented: 'Invented example',
  ends: { outlet: 'the outlet', upper: 'the upper end' },
  direction: { upstream: 'up the pipe', downstream: 'down the pipe' },
  wayIn: (type: string, id: string): string => `the ${type} ${id}`,
  stretch: (span: string, direction: string, from: string): string => `${span} ${direction} from ${from}`,
  first: (length: string): string => `the first ${length}`,
  span: (from: string, to: string, unit: string): string => `${from} to ${to} ${unit}`,
  picture: {
    lot: 'Plan of the lot: trees with their roots, drain lines, and the spot in question',
    spot: 'here',
    north: 'N',
    curve: 'The odds over the years: the likely line, and a band from low to high',
    profile: 'The line from the side: ground, pipe, joints and trees',
    years: 'years from now',
    likely: 'most likely',
    low: 'could be this low',
    high: 'could be this high',
    station: (unit: string): string => `along the pipe from its lower end, ${unit}`,
    key: {
      wash: 'roots, fading with distance',
      canopy: 'edge of the branches',
      protection: 'ground to protect',
      barrier: 'root barrier',
    },
  },
  owner: ownerEn,
  crew: crewEn,
};
