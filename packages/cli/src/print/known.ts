import type { Factor } from '@rootreach/core';

/** How a number is known, said plainly. */
export const wordKnown: Readonly<Record<Factor['known'], string>> = {
  read: 'read',
  quoted: 'quoted in other works',
  calculated: 'worked out from data',
  memory: 'from memory',
  judgement: 'our judgement',
};
