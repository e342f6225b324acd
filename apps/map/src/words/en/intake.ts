import type { ColumnMap, Field, Guess, ReportEntry } from '@rootreach/intake';

/** Texts of tables that were taken in. */
export const intake = {
  title: 'How the table was read',
  see: 'See how the table was read',
  counts: (file: string, rows: number, features: number, aside: number) =>
    `${file}: ${rows} ${rows === 1 ? 'row' : 'rows'}, ${features} taken, ${aside} set aside.`,
  columns: 'Columns',
  none: 'not there',
  unit: (field: string) => `Unit of ${field}`,
  again: 'Read it again like this',
  rows: 'What became of the rows',
  save: 'Save the columns as a file',
  fields: {
    id: 'Id',
    genus: 'Genus',
    species: 'Species',
    common: 'Common name',
    code: 'Species code',
    trunk: 'Through the trunk',
    girth: 'Round the trunk',
    canopyDiameter: 'Crown width',
    canopyRadius: 'Crown radius',
    height: 'Height',
    condition: 'Condition',
    planted: 'Planted',
    name: 'Name',
    material: 'Material',
    size: 'Pipe size',
    installed: 'Laid',
    depth: 'Depth',
    carries: 'Carries',
    street: 'Street',
  } satisfies Record<Field, string> as Readonly<Record<Field, string>>,
  /** The reader of tables says these in English by itself. */
  guess: null as ((guess: Guess, map: ColumnMap) => string) | null,
  entry: null as ((entry: ReportEntry) => string) | null,
};
