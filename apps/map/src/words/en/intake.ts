/** Texts of tables that were taken in. */
export const intake = {
  title: 'How the table was read',
  counts: (file: string, rows: number, features: number, aside: number) =>
    `${file}: ${rows} rows, ${features} taken, ${aside} set aside.`,
  columns: 'Columns',
  none: 'not there',
  unit: (field: string) => `Unit of ${field}`,
  again: 'Read it again like this',
  rows: 'What became of the rows',
  save: 'Save the columns as a file',
};
