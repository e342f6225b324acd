import { cite } from '../sources/cited.js';
import { fromFeet } from '../units/length.js';

/** How far perforated drains should keep from trees. */
export const drainClearance = {
  /** Trees whose roots fill drains soonest. */
  eagerM: cite(fromFeet(100), 'tile-drain-guidance', 'read', 'willow, soft maple, elm and poplar'),
  otherM: cite(fromFeet(50), 'tile-drain-guidance', 'read', 'all other trees'),
  /** Within this of any tree: pipe without holes. */
  solidWithinM: cite(fromFeet(50), 'tile-drain-guidance', 'read', 'non-perforated pipe'),
  eagerGenera: cite(['salix', 'populus', 'ulmus'] as const, 'tile-drain-guidance', 'read'),
  /** Soft maples are silver and red maple there; their cross and the boxelder are ours. */
  eagerSpecies: cite(
    ['acer-saccharinum', 'acer-rubrum'] as const,
    'tile-drain-guidance',
    'read',
    'soft maple',
  ),
  eagerByKin: cite(
    ['acer-x-freemanii', 'acer-negundo'] as const,
    'our-judgement',
    'judgement',
    'cross of the two soft maples; as soft and as fond of wet ground',
  ),
} as const;
