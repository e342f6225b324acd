import { signal } from '@preact/signals';
import type { SiteDocument } from '../sketch/document.js';
import type { KeptSite } from './kept-site.js';

/** Where the open document came from. */
export type Origin =
  | { readonly from: 'demo'; readonly demo: string }
  /** Handed over by a local server: the file stays the site until something is changed here. */
  | { readonly from: 'served' }
  /** Opened from a file by the user, or begun here: kept from the start. */
  | { readonly from: 'file' }
  | { readonly from: 'begun' }
  | { readonly from: 'kept'; readonly site: KeptSite };

export type SaveState =
  | 'example'
  | 'as-in-file'
  | 'view-only'
  | 'saving'
  | 'saved'
  | 'unsaved'
  /** Another tab has the site. */
  | 'stands-back';

/** Why nothing can be saved: no room, not allowed, or something else that the browser said. */
export type WhyUnsaved = 'full' | 'blocked' | 'broken';

/** Why this tab does not save: the site is open in another, was taken over by another, or was changed there. */
export type StandsBack = 'open-elsewhere' | 'taken-over' | 'changed-elsewhere';

export const origin = signal<Origin>({ from: 'begun' });
export const saveState = signal<SaveState>('example');
/** What could not be saved, until it is. */
export const unsaved = signal<{ readonly why: WhyUnsaved; readonly site: SiteDocument } | null>(null);
export const standsBack = signal<StandsBack | null>(null);
/** Id on this device of the open site; null for one that is not kept. */
export const keptId = signal<string | null>(null);
/** Sites on this device, the last changed first; null until they are read or where they cannot be. */
export const keptSites = signal<readonly KeptSite[] | null>(null);
/** Name of a site whose newest text could not be read, so that the one before it was opened. */
export const openedOlder = signal<string | null>(null);
/** A newer version of the page waits to be used. */
export const newVersion = signal(false);
