import type { Words } from '../en.js';
import { many } from './parts.js';

/** Texts of the keeping, opening and sharing of sites. */
export const keep: Words['keep'] = {
  unnamed: 'Sitio sin nombre',
  newName: (n) => (n === 1 ? 'Sitio nuevo' : `Sitio nuevo ${n}`),
  copyName: (name) => `${name} (copia)`,
  otherTabName: (name) => `${name} (de la otra pestaña)`,
  foundName: (name) => `${name} (recuperado)`,
  tooDeep: 'está anidado demasiado hondo para ser un sitio',
  step: { copy: 'Guardar como copia', rename: 'Cambiar el nombre del sitio' },
  undo: (label) => (label === null ? 'Deshacer' : `Deshacer: ${label}`),
  redo: (label) => (label === null ? 'Rehacer' : `Rehacer: ${label}`),
  history: 'Cambios',
  picker: { kept: 'En este aparato', examples: 'Ejemplos' },
  saveState: {
    example: 'Ejemplo',
    'as-in-file': 'Como en el archivo',
    'view-only': 'Solo para ver',
    saving: 'Guardando…',
    saved: 'Guardado en este aparato',
    unsaved: 'Sin guardar',
    'stands-back': 'Aquí no se guarda',
  },
  unsaved: {
    title: (name) => `«${name}» no está guardado.`,
    why: {
      full: 'Este aparato no tiene más espacio para la página. Libere espacio, o guarde el sitio en un archivo.',
      blocked:
        'El navegador no deja que esta página guarde nada, como en una ventana privada. Guarde el sitio en un archivo antes de cerrarla.',
      broken: 'El navegador no pudo escribirlo. Guarde el sitio en un archivo para estar seguro.',
    },
    saveFile: 'Guardar en un archivo',
    again: 'Intentar otra vez',
  },
  standsBack: {
    'open-elsewhere':
      'Este sitio está abierto en otra pestaña. Lo que cambie aquí no se guarda hasta que elija.',
    'taken-over': 'Otra pestaña tomó este sitio. Lo que cambie aquí no se guarda hasta que elija.',
    'changed-elsewhere':
      'Este sitio cambió en otra pestaña. Lo que cambie aquí no se guarda hasta que elija.',
    takeOver: 'Trabajar aquí',
    asCopy: 'Guardar esto como copia',
  },
  older: (name) =>
    `No se pudo leer lo último guardado de «${name}». Este es lo anterior; nada más se perdió.`,
  close: 'Cerrar',
  newVersion: { ready: 'Hay una versión nueva de esta página.', use: 'Usarla ahora' },
  panel: {
    title: 'Sitios en este aparato',
    nothing:
      'Aquí no hay ningún sitio todavía. Empiece uno, abra un archivo o cambie un ejemplo: se guarda solo.',
    cannot: 'El navegador no deja que esta página guarde sitios, como en una ventana privada.',
    begin: 'Sitio nuevo',
    saveFile: 'Guardar en un archivo',
    saveHint: 'Guardar el sitio abierto como archivo GeoJSON',
    private:
      'Los sitios quedan en este aparato. Nada se envía a ninguna parte. Un archivo sirve para llevarlo a otro, o para estar seguro.',
    counts: (lines, trees) => `${many(lines, 'línea')}, ${many(trees, 'árbol', 'árboles')}`,
    changed: (moment) => moment.toLocaleString('es', { dateStyle: 'medium', timeStyle: 'short' }),
    copyOf: 'su copia de un ejemplo',
    isOpen: 'abierto ahora',
    more: (name) => `Más sobre ${name}`,
    moreShort: 'Más',
    rename: 'Cambiar nombre',
    name: 'Nombre',
    keepName: 'Guardar este nombre',
    cancel: 'Cancelar',
    copy: 'Copiar',
    remove: 'Borrar',
    removed: (name) => `«${name}» está borrado.`,
    restore: 'Recuperarlo',
    bin: (n) => `Borrados en los últimos 30 días: ${n}`,
    examples: 'Ejemplos',
    examplesHint: 'Lotes inventados para probar. El primer cambio hace una copia suya.',
    exampleText: {
      'corner-lot': 'Un olmo viejo junto a un drenaje de patio',
      'french-drain-plan': 'Un dren francés planeado junto a un roble',
      'small-campus': 'Muchas líneas y muchos árboles',
    },
  },
};
