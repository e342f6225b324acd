import type { Words } from '../en.js';

/** Texts of tables that were taken in. */
export const intake: Words['intake'] = {
  title: 'Cómo se leyó la tabla',
  counts: (file, rows, features, aside) => `${file}: ${rows} filas, ${features} tomadas, ${aside} aparte.`,
  columns: 'Columnas',
  none: 'no está',
  unit: (field) => `Unidad de ${field}`,
  again: 'Leerla otra vez así',
  rows: 'Qué pasó con las filas',
  save: 'Guardar las columnas en un archivo',
};
