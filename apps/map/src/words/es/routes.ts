import * as measure from '../../measure.js';
import type { Words } from '../en.js';
import { forms } from './forms.js';

const percent = (share: number): string =>
  share > 0 && share < 0.0005 ? '<\u00a00.1\u00a0%' : `${(100 * share).toFixed(share < 0.1 ? 1 : 0)}\u00a0%`;

/** Texts of new lines. */
export const routes: Words['routes'] = {
  title: 'Planear una línea nueva',
  intro: 'Diga dónde entra el agua y dónde puede salir. El plano muestra caminos alrededor de los árboles.',
  tooLarge: 'Este sitio es demasiado grande para planear aquí.',
  noTrees: 'Todavía no hay árboles en el dibujo: dibújelos primero, o el camino no los evitará.',
  placeLabel: (end, at, of) => {
    const name = end === 'from' ? 'Dónde entra el agua' : 'Dónde sale';
    return of > 1 ? `${name}, ${at + 1}` : name;
  },
  another: { from: 'Otro comienzo', to: 'Otra salida' },
  remove: 'Quitar',
  removePlace: (label) => `Quitar: ${label}`,
  drains: (units) => `Techo o suelo que drena ahí, ${units === 'us' ? 'pies²' : 'm²'} (si se sabe)`,
  rain: (units) => `La lluvia más fuerte, ${units === 'us' ? 'pulgadas' : 'mm'} por hora`,
  sizing: 'Con lluvia y áreas el tubo se mide por su agua; sin ellas queda el tamaño de abajo.',
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
    outlet: 'Sale en',
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
  shared: {
    shapes: { shared: 'Línea principal común', separate: 'Una línea para cada uno' },
    saves: (money) => `Línea principal común: ${money} menos que una línea para cada uno.`,
    noneShared: 'Una línea para cada comienzo: compartir zanja no sería mejor aquí.',
    onlyShared: 'Aquí solo las líneas que comparten la principal bajan todo el camino.',
    start: (n, fitting) => (fitting === null ? `comienzo ${n}` : `comienzo ${n} (${fitting})`),
    meeting: (letter) => `encuentro ${letter}`,
    outlet: (n, fitting) => {
      if (n === null) return fitting === null ? 'salida' : `salida ${fitting}`;
      return fitting === null ? `salida ${n}` : `salida ${n} (${fitting})`;
    },
    line: (isMain, from, to) => `${isMain ? 'Principal' : 'Ramal'}: de ${from} a ${to}`,
    pipe: (length, size) => `${length} de tubo de ${size}`,
    carries: (flow) => `para ${flow}`,
    laid: (least, most, fall) =>
      `${least === most ? least : `de ${least} a ${most}`} de profundidad, ${fall < 0.25 ? `cae ${percent(fall)} o más` : 'baja a la principal'}`,
    tooMuch: (pipes, flow, bore) =>
      `El tubo más grande conocido lleva ${flow}: ponga ${pipes} lado a lado, o uno de ${bore} por dentro, o reparta el agua. El precio es el de un tubo.`,
    unsized: 'El tubo no se midió por su agua: falta la lluvia, o lo que drena a un comienzo.',
    crew: 'Para la cuadrilla: cómo cavar cerca de los árboles',
    ways: {
      'do-not-dig': 'no cavar',
      arborist: 'solo con un arborista, a mano o con aire',
      bore: 'perforar bajo las raíces',
      'hand-or-air': 'a mano o con aire',
    },
    askBefore: (root) => `No corte una raíz de ${root} o más: cave por debajo y pregunte a un arborista.`,
    cannotFall: 'Estas líneas no pueden bajar todo el camino. Elija las otras.',
    tooHard: 'Esto le quitaría demasiado a un árbol. Mueva un comienzo o la salida.',
  },
  legend: (name) => `Trazo de «${name}»`,
};
