import type { Seen } from '@rootreach/core';

/** What a camera saw, behind `seen`: `full of roots`, `a sag`. */
export const seenWords: Readonly<Record<Seen, string>> = {
  clear: 'clear',
  fine: 'fine roots',
  mass: 'a root mass',
  full: 'full of roots',
  crushed: 'crushed',
  sag: 'a sag',
  offset: 'an offset joint',
};
