import type { Field, Reason } from '@rootreach/intake';
import type { Words } from '../en.js';

const fields: Readonly<Record<Field, string>> = {
  id: 'Número',
  genus: 'Género',
  species: 'Especie',
  common: 'Nombre común',
  code: 'Código de especie',
  trunk: 'Ancho del tronco',
  girth: 'Vuelta del tronco',
  canopyDiameter: 'Ancho de copa',
  canopyRadius: 'Radio de copa',
  height: 'Altura',
  condition: 'Estado',
  planted: 'Plantado',
  name: 'Nombre',
  material: 'Material',
  size: 'Tamaño del tubo',
  installed: 'Colocado',
  depth: 'Profundidad',
  carries: 'Qué lleva',
  street: 'Calle',
};

const reasons: Readonly<Record<Reason, string>> = {
  'broken-row': 'aparte: no se pudo leer como fila',
  'no-position': 'aparte: sin posición',
  'off-the-globe': 'aparte: la posición no está en el globo',
  'grid-unknown': 'aparte: la posición está en una cuadrícula que el archivo no nombra',
  'wrong-geometry': 'aparte: otra clase de geometría que las demás',
  'not-alive': 'aparte: un tocón, un árbol muerto o un lugar vacío',
  'not-in-use': 'aparte: fuera de uso o solo planeado',
  'same-twice': 'aparte: el mismo número otra vez en el mismo lugar',
  'trunk-missing': 'supuesto: sin medida del tronco, tomada de la copa o de lo usual de su clase',
  'trunk-class': 'supuesto: una clase de tamaño, se tomó la mitad',
  'trunk-unreadable': 'supuesto: la medida del tronco no es un número, se toma como no medida',
  'trunk-odd': 'revise: un tronco de más de 2 m',
  'species-missing': 'supuesto: sin especie, se toma como árbol de clase desconocida',
  'species-from-code': 'supuesto: un código, leído como las primeras letras del nombre botánico',
  'material-missing': 'supuesto: sin material, se toma como un tubo mediano',
  'size-missing': 'supuesto: sin tamaño de tubo, solo falta el cálculo del agua',
  'size-unreadable': 'supuesto: el tamaño del tubo no es un número, se toma como no dado',
  'size-box': 'supuesto: una caja o un óvalo, se tomó el tubo redondo de la misma área',
  'date-unreadable': 'supuesto: la fecha no se entiende, se toma como no dada',
  'parts-split': 'aviso: varias partes en una línea, leídas como otras tantas líneas',
  'id-renewed': 'aviso: un número que otro ya tiene, recibió uno nuevo',
  'position-shared': 'aviso: están uno sobre otro, la posición es de una dirección y no del árbol',
};

/** Texts of tables that were taken in. */
export const intake: Words['intake'] = {
  title: 'Cómo se leyó la tabla',
  see: 'Ver cómo se leyó la tabla',
  counts: (file, rows, features, aside) =>
    `${file}: ${rows} ${rows === 1 ? 'fila' : 'filas'}, ${features} tomadas, ${aside} aparte.`,
  columns: 'Columnas',
  none: 'no está',
  unit: (field) => `Unidad de ${field}`,
  again: 'Leerla otra vez así',
  rows: 'Qué pasó con las filas',
  save: 'Guardar las columnas en un archivo',
  fields,
  guess: ({ what, taken, sure }, map) => {
    const unsure = sure ? '' : '; no es seguro, revíselo';
    if (what === 'kind') return `Qué son: ${map.what === 'tree' ? 'árboles' : 'líneas'}${unsure}`;
    if (what === 'position') {
      const { position } = map;
      const from = position.from === 'columns' ? `${position.x} y ${position.y}` : 'el archivo';
      return `Posición: ${position.from === 'none' ? 'ninguna' : from}${unsure}`;
    }
    const use = map.columns[what];
    if (use === undefined) return `${fields[what]}: ${taken}${unsure}`;
    return `${fields[what]}: ${use.column}${use.unit === undefined ? '' : ` en ${use.unit}`}${unsure}`;
  },
  entry: ({ reason, count, examples }) => {
    const such = examples.map((one) => one.replace(/^row /, 'fila ')).join('; ');
    return `${count} ${count === 1 ? 'fila' : 'filas'}, ${reasons[reason]}${such === '' ? '' : ` (${such})`}`;
  },
};
