import type { SourceKey } from '../sources/bibliography.js';

/** A caution that must stand beside any result that could lead to the act. */
export interface Caution {
  readonly code:
    | 'screening-only'
    | 'local-code'
    | 'locate-utilities'
    | 'trench-walls'
    | 'cutting-near-trunk'
    | 'protected-trees'
    | 'saws-in-soil'
    | 'water-to-others';
  readonly text: string;
  readonly source: SourceKey;
}
