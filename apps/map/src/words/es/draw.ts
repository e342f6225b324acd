import * as measure from '../../measure.js';
import type { Words } from '../en.js';
import { fitting, many } from './parts.js';

const obstacle: Readonly<Record<string, string>> = {
  building: 'edificio',
  paving: 'pavimento',
  pool: 'piscina',
  wall: 'muro',
  utility: 'otro servicio',
  boundary: 'lindero',
};

const kinds: Readonly<Record<string, string>> = {
  tree: 'árbol',
  drain: 'línea de drenaje',
  barrier: 'barrera de raíces',
  level: 'punto de nivel',
};

const fittings: Readonly<Record<string, string>> = fitting;

function word(properties: Readonly<Record<string, unknown>>): string {
  const { kind, type } = properties as { readonly kind?: string; readonly type?: string };
  if (kind === 'obstacle') return obstacle[type ?? ''] ?? 'cosa en el suelo';
  if (kind === 'fitting') return fittings[type ?? ''] ?? 'pieza';
  return kinds[kind ?? ''] ?? 'cosa';
}

function slope(ratio: number): string {
  const run = 1 / Math.abs(ratio);
  return run > 2000 ? 'casi sin pendiente' : `1 en ${run < 10 ? run.toFixed(1) : Math.round(run)}`;
}

/** Texts of drawing on the plan. */
export const draw: Words['draw'] = {
  title: 'Dibujar el lote',
  bar: 'Herramientas de dibujo',
  pick: 'Elegir',
  tools: {
    tree: 'Árbol',
    drain: 'Drenaje',
    fitting: 'Pieza',
    building: 'Edificio',
    paving: 'Pavimento',
    pool: 'Piscina',
    wall: 'Muro',
    utility: 'Servicio',
    boundary: 'Lindero',
    barrier: 'Barrera',
    level: 'Nivel',
  },
  hint: {
    pick: 'Toque una cosa para cambiarla, o tome una herramienta.',
    point: {
      tree: 'Toque donde está el tronco.',
      fitting: 'Toque donde va. Se pega a una línea cercana.',
      level: 'Ponga la altura, luego toque donde se midió.',
    },
    first: {
      drain: 'Empiece donde entra el agua, termine donde sale.',
      area: 'Toque cada esquina.',
      line: 'Toque a lo largo, de un extremo al otro.',
    },
    next: 'Toque el lugar siguiente. Toque otra vez el último para terminar.',
    closing: 'Toque la esquina siguiente. Toque otra vez la primera para terminar.',
    scaleFirst: 'Toque un extremo de algo cuyo largo conozca.',
    scaleSecond: 'Toque su otro extremo.',
    scaleDone: 'Diga cuánto mide, en la hoja.',
    aim: 'Mueva el plano bajo la cruz. Las flechas también lo mueven; Intro pone un lugar, Escape lo deja.',
  },
  actions: {
    aim: 'Apuntar',
    aimHint: 'Apuntar con una cruz fija en vez de tocar',
    put: 'Poner aquí',
    back: 'Atrás',
    backHint: 'Quitar el último lugar',
    finish: 'Terminar',
    cancel: 'Dejarlo',
    done: 'Listo',
    undo: 'Deshacer',
    close: 'Cerrar',
  },
  cross: 'Cruz para apuntar',
  drew: (tool) => `Dibujado: ${tool.toLowerCase()}`,
  deleted: (name) => `Se borró ${name}.`,
  moved: (name) => `Se movió ${name}`,
  bendMoved: (name) => `Se movió un lugar de ${name}`,
  bendAdded: (name) => `Se añadió un lugar a ${name}`,
  bendDropped: (name) => `Se quitó un lugar de ${name}`,
  turned: (name) => `Se invirtió el agua de ${name}`,
  squaredUp: (name) => `Se escuadró ${name}`,
  feature: (properties) => {
    const { name, species, id } = properties;
    const own = [name, species].find((one) => typeof one === 'string' && one !== '');
    return `${word(properties)} ${own ?? (typeof id === 'object' ? '' : id)}`;
  },
  fittings,
  stop: (name) => `${name}. Intro para cambiarlo, flechas para moverlo, Suprimir para borrarlo.`,
  handle: (index, of) => `Lugar ${index + 1} de ${of}. Las flechas lo mueven, Suprimir lo quita.`,
  between: (index) => `Lugar nuevo después del lugar ${index + 1}`,
  onto: {
    fitting: 'sobre una pieza',
    end: 'en el extremo de una línea',
    bend: 'en un quiebre',
    line: 'sobre una línea',
    corner: 'en una esquina',
  },
  legs: (leg, whole, units) =>
    `esta parte ${measure.length(leg, units)}, ${measure.length(whole, units)} en total`,
  whole: (lengthM, units) => `${measure.length(lengthM, units)} de largo`,
  area: (areaM2, units) =>
    units === 'us' ? `${Math.round(areaM2 / 0.3048 ** 2)}\u00a0ft²` : `${areaM2.toFixed(1)}\u00a0m²`,
  fall: (fallM, ratio, units, of) => {
    const what = { pipe: 'El tubo', 'pipe-on-level-ground': 'El tubo, en suelo parejo,', ground: 'El suelo' }[
      of
    ];
    if (Math.abs(fallM) < 0.0005) return `${what} no cae nada.`;
    const way = fallM > 0 ? 'cae' : 'sube';
    return `${what} ${way} ${measure.depth(Math.abs(fallM), units)} hacia la salida, ${slope(ratio)}.`;
  },
  fallUnknown: 'Caída: ponga profundidades en la línea o puntos de nivel cerca de sus extremos.',
  chosen: {
    back: 'Todo lo dibujado',
    turn: 'Invertir el agua',
    flow: (reversed) =>
      reversed
        ? 'El agua corre al revés de como se dibujó: el primer lugar es la salida.'
        : 'El agua corre como se dibujó: el último lugar es la salida.',
    square: 'Escuadrar las esquinas',
    drop: 'Quitar este lugar',
    remove: 'Borrar',
  },
  squared: 'Esquinas rectas',
  fittingType: 'Clase de pieza',
  elevation: (unit) => `Altura, ${unit}`,
  drawn: (n) => `Todo lo dibujado: ${many(n, 'cosa')}`,
  tooLarge: 'Este archivo es demasiado grande para cambiarlo aquí. Se puede ver y valorar.',
  start: {
    title: 'Empezar un plano nuevo',
    text: 'El plano abierto queda en este aparato si lo cambió.',
    feet: 'Lote vacío en pies',
    metres: 'Lote vacío en metros',
    here: 'Donde estoy parado',
    hereHint: 'Pide la posición a este aparato. Se escribe en el plano y no va a ninguna otra parte.',
    picture: 'De una imagen',
    pictureHint: 'Un plano, un dibujo en papel o una foto aérea. Se guarda en el archivo del sitio.',
    name: 'Lote nuevo',
    failed: 'No se pudo empezar el plano nuevo.',
  },
  position: {
    asking: 'Preguntando al aparato…',
    off: 'El aparato no dio su posición.',
  },
  picture: {
    title: 'Imagen bajo el plano',
    lay: 'Poner una imagen bajo el plano',
    unreadable: 'Este archivo no es una imagen que el navegador pueda leer.',
    laid: 'Se puso una imagen bajo el plano',
    notScaled:
      'Ahora dele escala: toque los dos extremos de algo cuyo largo conozca, como un muro o un lindero.',
    scale: 'Dar escala con dos lugares',
    length: (unit) => `Distancia entre los dos lugares, ${unit}`,
    apply: 'Dar escala a la imagen',
    scaled: 'Se dio escala a la imagen',
    wide: (widthM, units) => `La imagen mide ${measure.length(widthM, units)} de ancho.`,
    opacity: 'Qué tan fuerte',
    opacityChanged: 'Cambió lo fuerte de la imagen',
    turn: 'Girada a la derecha, grados',
    turnChanged: 'Se giró la imagen',
    moveHint: 'Arrastre el cuadro del centro para moverla; las flechas también la mueven.',
    handle: 'Centro de la imagen. Las flechas la mueven.',
    moved: 'Se movió la imagen',
    remove: 'Quitar la imagen',
    removed: 'Se quitó la imagen',
  },
  tiles: {
    title: 'Mapa de una dirección suya',
    text:
      'No se pide nada si usted no da una dirección. Entonces cada imagen se pide a ese servidor, que ve ' +
      'qué parte del mapa mira. La página se carga de nuevo para permitir solo ese servidor.',
    address: 'Dirección con {z}, {x} y {y}',
    attribution: 'Quién hizo el mapa (se muestra en el plano)',
    use: 'Usar esta dirección',
    stop: 'Dejar de usarla',
    wrong: 'La dirección necesita https:// al principio, y {z}, {x} y {y}.',
    unnamed: 'Diga quién hizo el mapa: su licencia lo pide.',
    unkept: 'Este navegador no guarda nada de esta página, así que no puede recordar la dirección.',
  },
};
