import { speciesTable } from '../tables/species.js';
import type { SpeciesRow, TreeForm } from '../tables/species-row.js';

/** What a tree may be called, for choosing from a list. */
export interface SpeciesName {
  readonly key: string;
  /** `Acer rubrum`; `Acer` for a genus. */
  readonly botanical: string;
  /** Usual name first. */
  readonly common: SpeciesRow['common'];
  readonly rank: 'species' | 'genus';
  readonly form: TreeForm;
}

/** Names of every species and genus of the table; trees of unknown kind are not among them. */
export function speciesNames(): readonly SpeciesName[] {
  return [...speciesTable.values()].flatMap(({ key, botanical, common, rank, form }) =>
    rank === 'unknown' ? [] : [{ key, botanical, common, rank, form }],
  );
}
