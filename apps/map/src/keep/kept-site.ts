/** What the list of sites on this device says of one. */
export interface KeptSite {
  readonly id: string;
  readonly name: string;
  /** Key of the demo that this began as, else null. */
  readonly copyOf: string | null;
  /** Moments as ISO 8601. */
  readonly created: string;
  readonly changed: string;
  readonly deleted: string | null;
  /** Goes up by one with everything that is done to the site: whoever writes must have seen the last one. */
  readonly revision: number;
  readonly lines: number;
  readonly trees: number;
  /** The tab that wrote it last. */
  readonly writer: string;
  /** Length of the newest text. */
  readonly characters: number;
}

/** What a document says of itself for the list. */
export type Described = Pick<KeptSite, 'name' | 'copyOf' | 'lines' | 'trees' | 'writer'>;
