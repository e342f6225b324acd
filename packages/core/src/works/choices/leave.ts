import { asItIs, type Case, type Plan } from '../plan.js';

/** Nothing is done and nobody looks. */
export function leave(c: Case): Plan {
  const blocked = c.stretch.gravest !== null && ['full', 'crushed'].includes(c.stretch.gravest.trouble.seen);
  return {
    ...asItIs(c, 'leave'),
    reasons: blocked ? ['nothing-is-done', 'leaves-it-blocked'] : ['nothing-is-done'],
    visits: 'none',
  };
}
