import { choicesEs } from './choices-es.js';
import type { Words } from './words.js';

/** `de` melts with the article that follows. */
const of = (tree: string): string => (tree.startsWith('el ') ? `del ${tree.slice(3)}` : `de ${tree}`);

/** The page for the owner in Spanish. */
export const ownerEs: Words['owner'] = {
  title: 'Su drenaje y sus árboles',
  headlines: {
    leave: 'Este tubo parece a salvo de raíces por ahora.',
    watch: 'Hay poca probabilidad de raíces aquí.',
    inspect: 'Bien pueden entrar raíces en este tubo.',
    act: 'Es probable que entren raíces en este tubo.',
    'cannot-say': 'Todavía no sabemos lo bastante para decir.',
  },
  seenHeadlines: {
    fine: 'Las raíces ya entraron en este tubo.',
    mass: 'Hay muchas raíces en este tubo.',
    full: 'Las raíces han llenado este tubo.',
    crushed: 'Este tubo está aplastado.',
    sag: 'Este tubo tiene una parte hundida que guarda agua.',
    offset: 'Dos piezas de este tubo se han corrido.',
  },
  nextSteps: {
    leave: (year) => `No hay que hacer nada ahora. Vuelva a mirar en ${year}.`,
    watch: (year) => `No hay prisa. Pida una cámara antes de ${year}.`,
    inspect: () => 'Pida una cámara esta temporada. La cámara muestra lo que hay de verdad.',
    act: () => 'Pida una cámara ahora, y planee la obra.',
    'cannot-say': () => 'Una cámara en el tubo dirá más que cualquier cálculo.',
  },
  seenNext: {
    fine: (year) => `Corte las raíces, o vuelva a mirar en ${year}. Van a crecer.`,
    mass: () => 'Límpielo ahora. Después decida cómo no dejar entrar raíces.',
    full: () => 'Planee la obra ahora.',
    crushed: () => 'Planee la obra ahora.',
    sag: (year) => `Vuelva a mirar en ${year}, y planee el arreglo.`,
    offset: (year) => `Vuelva a mirar en ${year}, y planee el arreglo.`,
  },
  blocked: {
    short: 'No se puede limpiar.',
    means: 'Pasa poca agua o nada. Un tubo así hay que cambiarlo, o poner otro en otro lugar.',
    wait: 'No va a mejorar. Cuando llueve fuerte, el agua se regresa y queda en el patio o junto a la casa. Las raíces siguen creciendo en el tubo.',
  },
  materials: {
    'hdpe-corrugated': 'de plástico corrugado delgado',
    'hdpe-corrugated-heavy': 'de plástico corrugado',
    'hdpe-dual-wall': 'de plástico de doble pared',
    'hdpe-welded': 'de plástico soldado',
    'pvc-sdr35': 'de PVC para drenaje',
    'pvc-sch40': 'de PVC grueso',
    'pvc-thin-wall': 'de PVC delgado',
    abs: 'de plástico negro',
    clay: 'de barro',
    concrete: 'de concreto',
    'cast-iron': 'de hierro fundido',
    'asbestos-cement': 'de asbesto cemento',
    'bituminous-fibre': 'de fibra con brea',
    brick: 'de ladrillo',
    unknown: 'de una clase que no conocemos',
  },
  odds: {
    about: (tens) => `Unos ${tens} de 10`,
    fewer: 'Menos de 1 de 10',
    nearly: 'Casi 10 de 10',
    within: (years) => `En ${years} años.`,
    range: (low, high) => `Podrían ser de ${low} a ${high}.`,
    narrow: 'El margen es estrecho.',
    lowest: 'menos de 1',
    highest: 'casi 10',
    think: (tens, year) =>
      `Piense en diez tubos como este, con árboles como estos. Para ${year} esperamos raíces en ${tens} de ellos.`,
    thinkAgain: (tens, year) =>
      `Piense en diez tubos como este. Si no se hace nada, esperamos problemas en ${tens} de ellos para ${year}.`,
    thinkFew: 'menos de uno',
    thinkAll: 'casi todos',
    thinkSome: (tens) => `unos ${tens}`,
    sayNot: 'No damos una probabilidad: un número bajo sonaría seguro sin serlo.',
    marks: (likely, low, high) =>
      `Diez tubos: ${likely} con raíces, lo más probable; podrían ser de ${low} a ${high}`,
  },
  where: {
    title: 'Dónde está',
    on: (where, line) => `El lugar está ${where}. La línea es “${line}”.`,
    ring: 'El anillo en el plano lo muestra.',
  },
  saw: (what, year) => `La cámara vio ${what}${year === '' ? '' : ` en ${year}`}.`,
  why: {
    title: 'Por qué aquí',
    tree: (tree, distance, part) => `${tree} está a ${distance} del tubo. Trae ${part} del riesgo.`,
    onTop: (tree, part) => `${tree} está encima del tubo. Trae ${part} del riesgo.`,
    parts: {
      most: 'la mayor parte',
      half: 'como la mitad',
      third: 'como un tercio',
      some: 'una parte pequeña',
      all: 'casi todo',
    },
    joints: (count) =>
      count === 1
        ? 'Este tramo tiene una junta. Las raíces entran donde se unen dos piezas.'
        : `Este tramo tiene ${count} juntas. Las raíces entran donde se unen dos piezas.`,
    slots: 'El tubo tiene ranuras. Las raíces pueden entrar por todo su largo.',
    crush: 'La pared del tubo es delgada. Una raíz grande puede aplastarlo.',
    pipe: (material, depth) => `El tubo es ${material}. Está a unos ${depth} de hondo.`,
    pipeSince: (material, year, depth) =>
      `El tubo es ${material}, puesto en ${year}. Está a unos ${depth} de hondo.`,
    noTree: 'Ningún árbol que conozcamos llega a este tramo.',
  },
  help: {
    title: 'Qué bajaría la probabilidad',
    to: (tens) => `baja a ${tens}`,
    note: 'Calculado de nuevo para cada cambio, en los mismos años.',
  },
  wait: {
    title: 'Si esperamos',
    rise: (first, firstYears, last, lastYears) =>
      `Si no se hace nada, la probabilidad va de ${first} en ${firstYears} años a ${last} en ${lastYears}. Los árboles crecen y las juntas envejecen.`,
    level: (tens, years) =>
      `Si no se hace nada, la probabilidad sigue en ${tens} aun después de ${years} años.`,
    inTen: (tens) => `${tens} de 10`,
  },
  choices: choicesEs,
  photos: {
    title: 'Lo que vio la cámara',
    caption: (what, at, year) => `${what}, ${at}${year === '' ? '' : `, ${year}`}`,
    at: (span, from) => `${span} desde ${from}`,
    alt: (what) => `Foto de dentro del tubo: ${what}`,
  },
  unknowns: {
    title: 'Lo que no sabemos',
    model: 'Nadie ha cavado aquí. La probabilidad sale de lo que se sabe de raíces y tubos.',
    fields: {
      species: () => 'No sabemos qué clase de árbol está cerca.',
      stemDiameterM: (tree) => `No hemos medido el tronco ${of(tree)}.`,
      canopyRadiusM: (tree) => `No hemos medido el ancho de la copa ${of(tree)}.`,
      material: () => 'No sabemos de qué es el tubo.',
      installed: () => 'No sabemos cuándo se puso el tubo.',
      depthM: () => 'No sabemos qué tan hondo está el tubo.',
      joint: () => 'No sabemos cómo se unen las piezas.',
      pieceM: () => 'No sabemos qué largo tienen las piezas.',
      flow: () => 'No sabemos hacia dónde corre el agua.',
    },
    taken: (value) => `Tomamos ${value}.`,
    usual: 'Tomamos lo usual.',
    years: (years) => `una edad de ${years} años`,
    more: (count) => (count === 1 ? 'Se supuso una cosa más.' : `Se supusieron ${count} cosas más.`),
    unsure: 'Cada suposición hace más ancho el margen.',
  },
  cautions: { title: 'Antes de que alguien cave' },
  sign: {
    on: (date) => `Calculado el ${date}`,
    by: (who) => `por ${who}`,
    blank: 'Estimación de',
    model: (version) => `Modelo ${version}.`,
  },
};
