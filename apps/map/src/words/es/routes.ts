import * as measure from '../../measure.js';
import type { Words } from '../en.js';
import { forms } from './forms.js';

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)}\u00a0%`;

/** Texts of new lines. */
export const routes: Words['routes'] = {
  title: 'Planear una línea nueva',
  intro: 'Diga dónde entra el agua y dónde puede salir. El plano muestra caminos alrededor de los árboles.',
  tooLarge: 'Este sitio es demasiado grande para planear aquí.',
  noTrees: 'Todavía no hay árboles en el dibujo: dibújelos primero, o el camino no los evitará.',
  from: 'Dónde entra el agua',
  to: 'Dónde sale',
  via: 'Un punto por donde pasar',
  chooseFitting: 'elija, o toque el plano',
  aPlace: 'el lugar tocado en el plano',
  tapPlan: 'Tocar el plano',
  tapping: {
    from: 'Toque donde entra el agua.',
    to: 'Toque donde sale.',
    via: 'Toque un punto por donde deba pasar la línea.',
  },
  midPlan: 'Ponerlo en medio y moverlo',
  found: (n) =>
    n === 1
      ? 'Un camino: ningún otro es mejor en nada.'
      : `${n} caminos, cada uno mejor que los otros en algo.`,
  drop: 'Sin él',
  pipe: 'Tubo',
  size: 'Tamaño',
  perforated: 'Perforado (toma agua por el camino)',
  fall: 'Caída mínima',
  falls: { '0.005': '0.5 %', '0.01': '1 % (1/8 por pie)', '0.02': '2 % (1/4 por pie)' },
  go: 'Mostrar los caminos',
  again: 'Calcular otra vez',
  working: (share) => `Buscando caminos: ${Math.round(100 * share)} %`,
  cancel: 'Parar',
  forget: 'Empezar de nuevo',
  failed: (why) => `No se pudo: ${why}.`,
  ways: 'Los caminos, uno junto a otro',
  aims: {
    cheapest: 'El más barato de cavar',
    'fewest-roots': 'Menos raíces',
    'spares-trees': 'Cuida los árboles',
    balanced: 'Equilibrado',
    via: 'Por su punto',
    drawn: 'Como lo dibujó',
  },
  figures: {
    length: 'Largo',
    bends: 'Codos',
    joints: 'Uniones cerca de raíces',
    ten: 'Raíces en 10 años',
    twentyFive: 'Raíces en 25 años',
    depth: 'Profundidad de zanja',
    now: 'Precio de colocarla',
    present: 'Con los problemas de raíces por venir',
    worst: 'Árbol más dañado',
  },
  chance: ({ low, likely, high }) => `${percent(likely)} (${percent(low)} a ${percent(high)})`,
  unknownDepth: 'suelo desconocido',
  severed: (share) => `${percent(share)} de su círculo`,
  noHarm: 'ninguno',
  trees: 'Los árboles de este camino',
  tree: (name, nearest, share) =>
    share > 0
      ? `${name}: a ${nearest} del tronco, se corta ${percent(share)} de su círculo de raíces`
      : `${name}: a ${nearest} del tronco`,
  rules: {
    clear: 'sin daño que contar',
    caution: 'cavar con cuidado',
    arborist: 'antes lo mira un arborista',
    'no-dig': 'aquí no va zanja',
  },
  breaks: 'Este camino pasa un límite. Mueva el codo a otra parte, o cambie el límite.',
  crossings: (n) =>
    `Cruza ${n === 1 ? 'un servicio enterrado' : `${n} servicios enterrados`}: pida que lo ubiquen y destápelo a mano.`,
  bored: (length) => `${length} se perforan, no se cavan.`,
  handDug: (length) => `${length} se cavan a mano, cerca de un tronco.`,
  pullHint: 'Mueva un codo en el plano, con el dedo o con las flechas: todas las cifras lo siguen.',
  pipes: 'Otros tubos por el camino más barato con los años',
  pipeName: ({ material, joint, perforatedM, solidBy }) => {
    const { materials, joints } = forms.drain;
    const holes = perforatedM > 0 ? ', perforado y envuelto' : '';
    const solid = solidBy === null ? '' : ', sólido junto a los árboles';
    return `${material === 'unknown' ? 'Tubo' : materials[material]}${holes}${solid}. Uniones: ${joints[joint].toLowerCase()}`;
  },
  pipeRow: (name, chance, price) => `${name}: ${chance} en 25 años, ${price}`,
  adopt: 'Ponerla en el dibujo',
  adopted: 'Línea nueva',
  newLine: 'Línea nueva',
  invented: 'Los precios son inventados para este ejemplo. Ponga los suyos en Obra.',
  money: (amount, currency) =>
    new Intl.NumberFormat('es-US', { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount),
  bend: (n) => `Codo ${n}: arrástrelo, o muévalo con las flechas`,
  none: (none, units) =>
    none.shortfallM === null
      ? 'No hay camino: hay edificios, árboles o el lindero en medio.'
      : `El agua no correrá sola hasta ahí: faltan ${measure.depth(none.shortfallM, units)} de caída.`,
  remedy: (one, units) => {
    switch (one.kind) {
      case 'raise-source':
        return `dejar entrar el agua ${measure.depth(one.byM, units)} más arriba`;
      case 'lower-outlet':
        return `sacarla ${measure.depth(one.byM, units)} más abajo`;
      case 'dig-deeper':
        return `cavar hasta ${measure.depth(one.maxDepthM, units)}`;
      case 'less-cover':
        return `colocarla con ${measure.depth(one.minCoverM, units)} de tierra encima`;
      case 'flatter':
        return `colocarla más plana, a ${percent(one.fall)}`;
      case 'pump':
        return `bombearla ${measure.depth(one.liftM, units)}`;
      case 'dry-well':
        return `dejar que se filtre después de ${measure.length(one.atM, units)}`;
    }
  },
  remedies: 'Qué ayudaría, cada cosa por sí sola:',
  legend: (name) => `Trazo de «${name}»`,
};
