import type { SegmentResult, Units } from '@rootreach/core';
import * as measure from '../../measure.js';
import type { Words } from '../en.js';
import { fitting, many, wayIn } from './parts.js';

type View = Omit<Words, 'answers' | 'draw' | 'forms' | 'intake' | 'keep' | 'model' | 'routes' | 'works'>;

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const span = (fromM: number, toM: number, units: Units) =>
  measure.span(fromM, toM, units).replace(' to ', ' a ');

function sure(share: number): string {
  const percent = Math.round(share * 100);
  if (percent >= 99) return 'más de 98 %';
  return percent <= 1 ? 'menos de 2 %' : `${percent} %`;
}

function whereOf({ reach }: SegmentResult, units: Units): string {
  const direction = reach.direction === 'upstream' ? 'aguas arriba' : 'aguas abajo';
  const stretch =
    reach.atM < 0.05
      ? `los primeros ${measure.length(reach.toM, units)}`
      : `de ${span(reach.atM, reach.toM, units)}`;
  return `desde ${wayIn(reach.fromName)}, ${direction}, ${stretch}`;
}

const ASSUMED_FIELDS: Readonly<Record<string, string>> = {
  canopyRadiusM: 'radio de la copa',
  stemDiameterM: 'tronco',
  species: 'especie',
  material: 'tubo',
  installed: 'edad',
  depthM: 'profundidad',
  joint: 'unión',
  pieceM: 'largo de un tubo',
  flow: 'sentido del agua',
};

function assumedValue(field: string, value: number | string, units: Units): string {
  if (typeof value === 'string') return value;
  if (field === 'stemDiameterM') return measure.girth(value, units);
  if (field === 'depthM') return measure.depth(value, units);
  if (field.endsWith('M')) return measure.length(value, units);
  return field === 'installed' ? many(Math.round(value), 'año') : String(value);
}

const band: Words['band'] = {
  act: 'Actuar',
  inspect: 'Inspeccionar',
  watch: 'Vigilar',
  leave: 'Dejar',
  'cannot-say': 'No se sabe',
};

const row = (segment: SegmentResult, units: Units) =>
  `${whereOf(segment, units)}, en ${segment.drainName ?? `la línea ${segment.drainId}`}`;

/** Texts of the plan, the list and the cards. */
export const view: View = {
  name: 'rootreach',
  title: (site) => (site ? `${site} · rootreach` : 'rootreach: el plano'),
  skip: 'Ir a la lista',
  header: {
    site: 'Sitio',
    open: 'Abrir archivo',
    openHint:
      'Abrir archivos de este aparato, o soltarlos en la página: GeoJSON, CSV, shapefile en zip, KML, GPX',
    language: 'Idioma',
    none: 'Ningún sitio',
    ownFile: (names) => (names.length === 1 ? `${names[0]}` : many(names.length, 'archivo')),
    units: 'Medidas en',
    us: 'ft',
    usLong: 'Pies y pulgadas',
    metric: 'm',
    metricLong: 'Metros',
    drop: 'Suelte para abrir. Varios archivos se leen juntos.',
    demos: {
      'corner-lot': 'Lote de esquina',
      'french-drain-plan': 'Plan de dren francés',
      'small-campus': 'Campus pequeño',
    },
  },
  band,
  bandMeaning: {
    act: 'atender ya',
    inspect: 'cámara pronto',
    watch: 'mirar de paso',
    leave: 'nada por ahora',
    'cannot-say': 'se sabe muy poco',
  },
  invented: 'Ejemplo inventado',
  loading: 'Leyendo el sitio…',
  nothingOpen: 'No hay ningún sitio abierto. Elija uno arriba, o abra un archivo suyo.',
  headline: {
    act: (n) => `${many(n, 'tramo')} para actuar.`,
    inspect: (n) => `${many(n, 'tramo')} para meter la cámara.`,
    watch: (n) => `${many(n, 'tramo')} para vigilar.`,
    leave: 'Nada aquí lo necesita ahora.',
    none: 'No hay ninguna línea que valorar.',
    cannotSay: (n) => `De ${many(n, 'tramo')} no podemos hablar: se sabe muy poco.`,
    start: (where) => `Empiece ${where}.`,
    extent: (totals, units) =>
      `${many(totals.drains, 'línea')}, ${measure.length(totals.lengthM, units)} en total, ${many(totals.trees, 'árbol', 'árboles')}.`,
  },
  list: {
    title: 'Primero lo peor',
    more: (n) => `Mostrar ${n} más`,
    onlyWorst: (n) => `Se listan los ${n} peores; toque una línea en el plano para ver otra.`,
    row,
    tree: (name, distanceM, units) => `${capital(name)}, a ${measure.length(distanceM, units)}`,
    ways: (tree, ways) => `${tree}; ${ways}`,
    noOdds: 'Sin probabilidad: se sabe muy poco',
    noTree: 'Ningún árbol al alcance',
    bar: 'Metros de línea según lo que hay que hacer',
  },
  card: {
    back: 'Todos los tramos',
    where: whereOf,
    station: (segment, units) =>
      `En ${segment.drainName ?? `la línea ${segment.drainId}`}, de ${span(segment.startM, segment.endM, units)} desde el extremo de salida`,
    reach: ({ reach }, units) =>
      reach.atM < 0.05
        ? `Son los primeros ${measure.length(reach.toM, units)} desde ahí.`
        : `Vaya despacio a los ${measure.length(reach.atM, units)}; a los ${measure.length(reach.toM, units)} ya pasó.`,
    todo: (advice) => `${capital(advice)}.`,
    known: (seen, year) => `Ya se vio${year === null ? '' : ` en ${Math.floor(year)}`}: ${seen}.`,
    chanceTitle: 'Probabilidad de que entren raíces',
    knownChanceTitle: 'Probabilidad de que las raíces tapen la línea',
    within: (chance, within) => {
      const [likely, ...range] = chance.split(', ');
      return { likely: `${likely} ${within}`, range: range.join(', ') };
    },
    scale: '0 a 10 de cada 10',
    score: (score) => `Valor ${Math.round(score)} de 100`,
    worstTenth: (share) => `Con ${sure(share)} de seguridad está entre la peor décima parte de este sitio.`,
    treesTitle: 'Qué árboles',
    treeShare: (share) => `${Math.round(share * 100)} % de la probabilidad`,
    factsTitle: 'El tramo',
    facts: {
      nextLook: 'Mirar antes de',
      material: 'Tubo',
      depth: 'Profundidad al lomo del tubo',
      joints: 'Uniones',
      fittings: 'Piezas',
      dripline: 'Bajo una copa',
      protection: 'Dentro de 12 diámetros de tronco',
      reach: 'Al alcance de raíces',
      entries: 'Entradas esperadas',
    },
    joints: (count) => String(count),
    entries: (joints, slots, crush) => `${joints} por uniones, ${slots} por ranuras, ${crush} por aplaste`,
    of: (partM, wholeM, units) => `${measure.length(partM, units)} de ${measure.length(wholeM, units)}`,
    down: 'Aguas abajo',
    up: 'Aguas arriba',
  },
  tree: {
    back: 'Todos los tramos',
    stem: 'Tronco',
    dripline: 'La copa llega a (línea de goteo)',
    structural: 'Raíces de sostén dentro de',
    protection: 'Círculo de protección',
    reach: 'Las raíces finas llegan a unos',
    threatens: 'Tramos que más alcanza',
    none: 'Aquí no alcanza ninguna línea.',
    share: (share, score) => `${Math.round(share * 100)} % de un valor de ${Math.round(score)}`,
    label: (name) => `${capital(name)}: abrir su ficha`,
  },
  profile: {
    title: 'Perfil de la línea',
    label: (line, units) =>
      `Perfil de ${line.name ?? line.drainId}: ${measure.length(line.lengthM, units)} desde el extremo de salida, ` +
      `tubo a ${measure.depth(line.depth.outletEndM, units)} de profundidad en la salida y ` +
      `${measure.depth(line.depth.upperEndM, units)} arriba.`,
    ground: 'suelo',
    depth: (depthM, units) => `a ${measure.depth(depthM, units)}`,
    odds: 'de cada 10',
    axis: (unit) => `${unit} desde el extremo de salida`,
    assumedDepth: 'No se dio la profundidad; se supone.',
    assumedFlow: 'El sentido del agua se dedujo o se tomó como está dibujado. Revise la salida.',
  },
  key: {
    title: 'Leyenda',
    lines: 'Líneas, según qué hacer',
    trees: 'Árboles',
    wash: 'raíces probables',
    dripline: 'borde de la copa (línea de goteo)',
    protection: 'círculo de protección',
    stem: 'tronco, a escala',
    ground: 'Suelo',
    building: 'edificio',
    paving: 'pavimento',
    utility: 'otro servicio enterrado',
    barrier: 'barrera de raíces',
    boundary: 'lindero',
    fittings: 'Piezas',
    rank: 'peores tramos, en orden',
    chosen: 'el tramo elegido',
    profile: 'En el perfil',
    joint: 'unión',
    band: 'de menor a mayor probabilidad; la línea es lo probable',
  },
  fitting,
  seen: {
    clear: 'limpio',
    fine: 'raíces finas',
    mass: 'una masa de raíces',
    full: 'lleno de raíces',
    crushed: 'tubo aplastado',
    sag: 'un hundimiento',
    offset: 'una unión desplazada',
  },
  plan: {
    label: 'Plano del sitio. Tabulador hasta un tramo; las flechas recorren las líneas; Intro lo abre.',
    stretch: (segment, chance, units) => `${band[segment.band]}: ${row(segment, units)}; ${chance}`,
    grid: (step) => `Cuadrícula ${step}`,
    north: 'El norte está arriba',
    closer: 'Más cerca',
    further: 'Más lejos',
    whole: 'Todo el sitio',
  },
  sheet: {
    label: 'Qué hacer',
    places: { find: 'Buscar', draw: 'Dibujar', route: 'Línea', work: 'Obra', sites: 'Sitios' },
    loading: 'Un momento…',
    handle: { low: 'Subir la hoja', half: 'Subir la hoja del todo', full: 'Bajar la hoja' },
  },
  assumed: {
    title: (n) => `Supuesto: ${many(n, 'valor', 'valores')}`,
    none: 'Aquí no hubo que suponer nada.',
    row: ({ path, value }, units) => {
      const [, id, field = ''] = path.split('/');
      return `${id}, ${ASSUMED_FIELDS[field] ?? field}: ${assumedValue(field, value, units)}`;
    },
  },
  issues: {
    title: (n) => `Sobre el archivo: ${many(n, 'nota')}`,
    severity: { error: 'Error', warning: 'Aviso', notice: 'Nota' },
    row: ({ place }, text) => {
      const feature = place.feature ?? (place.index === null ? null : `elemento ${place.index + 1}`);
      const where = [place.file, feature, place.path].filter((part) => part !== null && part !== '');
      return `${where.join(', ')}: ${text}`;
    },
    more: (n) => `y ${n} más`,
  },
  cautions: { title: 'Antes de que nadie cave' },
  problem: {
    close: 'Cerrar',
    nothingInIt: 'no se encontró ningún árbol ni ninguna línea',
    couldNotOpen: (names, why) => `No se pudo abrir ${names}: ${why.replace(/\.$/, '')}.`,
    stays: 'El sitio del plano queda como estaba.',
    notThere: 'no está ahí',
    tooLarge: (names) => `${names} es demasiado grande para esta página. Use la línea de comandos.`,
  },
};
