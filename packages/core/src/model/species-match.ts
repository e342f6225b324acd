/** How a name as written was understood. */
export interface SpeciesMatch {
  /** The text as it stood in the input; null when there was none. */
  readonly text: string | null;
  /** Key into the species table; an `unknown-...` row when nothing fitted. */
  readonly key: string;
  readonly level: 'species' | 'genus' | 'group' | 'unknown';
  /** `exact`: the name is in the table. `likely`: spelling or synonym mended. `guess`: only the genus or form is sure. */
  readonly certainty: 'exact' | 'likely' | 'guess' | 'none';
}

/** How a pipe material as written was understood. */
export interface MaterialMatch {
  readonly text: string | null;
  readonly key: import('../tables/pipe-row.js').MaterialKey;
  readonly certainty: 'exact' | 'likely' | 'guess' | 'none';
  /** What else the text says. */
  readonly perforated: boolean | null;
}
