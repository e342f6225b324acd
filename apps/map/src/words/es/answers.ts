import type { Words } from '../en.js';
import { model } from './model.js';

/** Texts of the year slider, what-if and profile. */
export const answers: Words['answers'] = {
  time: {
    title: 'Mirar adelante: otros años, y si…',
    slider: 'Años desde hoy',
    today: 'Hoy',
    inYear: (year) => `En ${year}`,
    valueText: (year, ahead) =>
      ahead === 0 ? 'Hoy' : `En ${year}, dentro de ${ahead} ${ahead === 1 ? 'año' : 'años'}`,
    back: 'Volver a hoy',
    cleared: '¿Y si este año se abrieran todas las líneas y se limpiaran de raíces?',
    stop: 'Volver a como está',
    speaks: (year, cleared) => {
      const when = year === null ? 'Como estaría hoy' : `Como estaría en ${year}`;
      const grown = year === null ? '' : ': los árboles han crecido, las uniones han envejecido';
      return cleared
        ? `${when} si este año se abrieran todas las líneas y se limpiaran de raíces${grown}.`
        : `${when} si nadie hiciera nada${grown}.`;
    },
    within: (years, from) => (from === null ? `en ${years} años` : `en los ${years} años desde ${from}`),
  },
  drivers: {
    title: 'Qué lo cambiaría',
    change: model.change,
    fall: (from, to) => `${Math.round(from)} → ${Math.round(to)}`,
    said: (from, to) => `el valor baja de ${Math.round(from)} a ${Math.round(to)}`,
    none: 'Nada de lo que podemos calcular lo cambiaría mucho.',
    basis: 'Cada uno calculado de nuevo con esa sola cosa cambiada; valores de 100.',
  },
  missing: {
    title: 'Qué daría más seguridad',
    noTrees: (within) =>
      `No hay ningún árbol en el dibujo. Ponga todos los que estén a menos de unos ${within}, también los del vecino.`,
    first: 'Lo que más ayudaría:',
    next: 'Luego:',
    field: {
      material: 'diga de qué es el tubo',
      installed: 'diga más o menos cuándo se colocó',
      depthM: 'mida a qué profundidad está en los dos extremos',
      stemDiameterM: 'mida el tronco',
      species: 'averigüe qué clase de árbol es',
      canopyRadiusM: 'mida a pasos del tronco al borde de las hojas',
    },
    ofTree: (what, name, id) => `${what}: ${model.tree(name)} (${id})`,
    fill: 'Llenar',
  },
  profile: {
    seen: {
      clear: 'limpio',
      fine: 'raíces finas',
      mass: 'masa de raíces',
      full: 'lleno de raíces',
      crushed: 'aplastado',
      sag: 'hundimiento',
      offset: 'unión desplazada',
    },
    seenIn: (what, year) => (year === null ? what : `${what} ${Math.floor(year)}`),
    findings: (list) => ` Visto con cámara: ${list.join('; ')}.`,
    findingAt: (what, span) => `${what} en ${span.replace(' to ', ' a ')}`,
  },
};
