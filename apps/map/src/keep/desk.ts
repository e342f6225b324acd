import type { Opener } from '../open.js';
import type { Keeper } from './keeper.js';
import type { SiteActions } from './site-actions.js';

/** What panels need to open, keep and save sites. */
export interface Desk {
  readonly opener: Opener;
  readonly keeper: Keeper;
  readonly sites: SiteActions;
}

let held: Desk | null = null;

export const setDesk = (desk: Desk): void => {
  held = desk;
};

/** @throws before the page has started. */
export function desk(): Desk {
  if (!held) throw new Error('the page has not started yet');
  return held;
}
