import type { Issue, RankResult, Site } from '@rootreach/core';
import type { Large } from './large.js';

/** A file whose text the page has read: small enough to be edited here. */
export interface InputFile {
  readonly name: string;
  readonly text: string;
}

/** A file too large to edit: it goes to the worker unread, so that its text never passes through the page. */
export interface UnreadFile {
  readonly name: string;
  readonly file: Blob;
}

/** What `Engine.open` takes; both kinds may be mixed. */
export type Input = InputFile | UnreadFile;

/** A site as read, and what the model says of it. */
export interface Opened {
  readonly site: Site;
  readonly issues: readonly Issue[];
  readonly result: RankResult;
  /**
   * Where the site is a town: then `site` holds no features, `result` the worst stretches only, and the rest is
   * asked for as it comes into view.
   */
  readonly large: Large | null;
  /** Answers to edits since the site was opened; 0 for a site just opened. */
  readonly edits: number;
}
