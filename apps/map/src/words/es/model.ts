import {
  type Caution,
  type Chance,
  type Driver,
  type Issue,
  type SegmentResult,
  speciesNames,
  tensOf,
  wordCaution,
} from '@rootreach/core';
import { wordsFor } from '@rootreach/report';
import type { Words } from '../en.js';
import { forms } from './forms.js';
import { fitting } from './parts.js';

const report = wordsFor('es');

function inTen(tens: number): string {
  if (tens === 0) return 'menos de 1';
  return tens === 10 ? 'casi 10' : String(tens);
}

function chance(given: Chance): string {
  const tens = tensOf(given);
  const [low, likely, high] = [inTen(tens.low), inTen(tens.likely), inTen(tens.high)];
  const about = tens.likely === 0 || tens.likely === 10 ? likely : `unas ${likely}`;
  if (low === high) return `${about} de cada 10`;
  if (low === likely) return `${about} de cada 10, podrían ser hasta ${high}`;
  if (high === likely) return `${about} de cada 10, podrían ser solo ${low}`;
  return `${about} de cada 10, podrían ser de ${low} a ${high}`;
}

function advice({ band, known, nextLook }: SegmentResult): string {
  if (known?.seen === 'full' || known?.seen === 'crushed')
    return 'reemplazar o mover este tramo: no se puede limpiar';
  if (known?.seen === 'mass') return 'limpiarlo ya, y luego decidir qué hacer con la entrada';
  if (known) return `se vieron raíces o un daño: mirar otra vez antes de ${nextLook}`;
  switch (band) {
    case 'act':
      return 'cámara ya, y planear la obra';
    case 'inspect':
      return 'cámara esta temporada';
    case 'watch':
      return `mirar antes de ${nextLook}`;
    case 'cannot-say':
      return 'averiguar material, edad y árboles, o meter la cámara';
    case 'leave':
      return `nada por ahora; mirar antes de ${nextLook}`;
  }
}

function reason({ expectedEntries, joints, fittings }: SegmentResult): string {
  const all = expectedEntries.joints + expectedEntries.slots + expectedEntries.crush;
  if (all <= 0) return 'ningún árbol lo alcanza';
  const at = fittings.find(({ type }) => type !== 'outlet');
  const ways: string[] = [];
  if (expectedEntries.joints >= 0.25 * all) {
    const count = `${joints.count} ${joints.count === 1 ? 'unión' : 'uniones'}`;
    ways.push(at ? `${count} en ${fitting[at.type]} ${at.id}` : count);
  }
  if (expectedEntries.slots >= 0.25 * all) ways.push('ranuras abiertas');
  if (expectedEntries.crush >= 0.25 * all) ways.push('pared delgada junto al tronco');
  return ways.join(', ');
}

let keys: ReadonlyMap<string, string> | undefined;

/** By the key of its species, for which the handed-out pages have a Spanish name. */
function tree(name: string): string {
  keys ??= new Map(speciesNames().map(({ key, common }) => [common[0], key]));
  const key = keys.get(name);
  return key === undefined ? 'árbol' : report.theTree(name, key).replace(/^(?:el|la) /, '');
}

const material: Words['model']['material'] = ({ key }) =>
  key === 'unknown' ? 'tubo no identificado' : forms.drain.materials[key];

const change = (driver: Driver): string =>
  report.changes[driver.code](driver.tree === null ? '' : `árbol ${driver.tree}`);

const m = (metres: number, units: 'us' | 'metric'): string =>
  units === 'us' ? `${(metres / 0.3048).toFixed(1)} ft` : `${metres.toFixed(1)} m`;

/** What is wrong and what was done about it. */
function issue(one: Issue, units: 'us' | 'metric' = 'metric'): string {
  switch (one.code) {
    case 'not-json':
      return 'no se pudo leer; no se tomó nada de este archivo';
    case 'not-geojson':
      return `no es GeoJSON (RFC 7946): ${one.rule}; se dejó aparte`;
    case 'ring-orientation':
      return 'el contorno gira al revés de lo que pide RFC 7946; se usa tal cual';
    case 'ring-too-small':
      return 'un contorno tiene menos de tres puntos distintos; se dejó aparte';
    case 'bare-geometry':
      return `una geometría ${one.type} sin propiedades: no dice qué es`;
    case 'nested-collection':
      return 'una colección de geometrías dentro de otra; no se usa';
    case 'single-member':
      return `${one.type} con una sola parte; se lee como esa parte`;
    case 'null-geometry':
      return 'sin geometría; no se usa';
    case 'crs-member':
      return 'un miembro "crs" antiguo: RFC 7946 solo conoce WGS 84, no se aplicó';
    case 'extra-dimensions':
      return `posiciones con ${one.dimensions} números; solo se usan longitud y latitud`;
    case 'excess-precision':
      return `${one.decimals} decimales de grado: nueve ya son una décima de milímetro`;
    case 'excess-vertices':
      return `${one.count} puntos en un solo elemento; se usa, pero tarda en dibujarse`;
    case 'holes':
      return 'un polígono con huecos; solo se usa el contorno exterior';
    case 'duplicate-nodes':
      return 'el mismo punto dos veces seguidas; se usa uno';
    case 'self-intersection':
      return 'el contorno se cruza a sí mismo; se usa tal cual';
    case 'antimeridian':
      return 'abarca más de medio mundo; se dejó aparte';
    case 'bbox-order':
      return 'la caja "bbox" no contiene las coordenadas; no se usa';
    case 'not-finite':
      return 'una coordenada no es un número; se dejó aparte';
    case 'out-of-range':
      return `longitud ${one.lon}, latitud ${one.lat} no está en el globo; se dejó aparte`;
    case 'projected-coordinates':
      return `${one.x}, ${one.y} parecen metros o pies, no grados; se dejó aparte`;
    case 'too-long':
      return `una línea de ${Math.round(one.lengthKm)} km, como por un error al escribir; se omitió`;
    case 'zero-length':
      return 'la línea no tiene longitud; se omitió';
    case 'bad-value':
      return `se esperaba ${one.expected}, hay ${one.got}; se dejó aparte`;
    case 'misspelt-property':
      return `no se conoce la propiedad "${one.name}": ¿será "${one.meant}"?`;
    case 'odd-depth':
      return `un tubo a ${m(one.depthM, units)} de profundidad: revise la unidad; se usa tal cual`;
    case 'missing-value':
      return `falta: ${one.expected}; se dejó aparte`;
    case 'wrong-geometry':
      return `se esperaba ${one.expected}, hay ${one.got}; se dejó aparte`;
    case 'units-disagree':
      return `${one.first} y ${one.second} difieren en más de 1 %; se usó el primero`;
    case 'unit-guessed':
      return `la columna "${one.column}" no dice la unidad; se leyó como ${one.unit === 'inches' ? 'pulgadas' : 'centímetros'}`;
    case 'odd-diameter':
      return one.diameterM > 4
        ? `un tronco de ${m(one.diameterM, units)} no puede ser; se toma como no medido`
        : `un tronco de ${m(one.diameterM, units)} es raro: revise la unidad; se usa tal cual`;
    case 'duplicate-id':
      return `el nombre "${one.id}" ya existe; aquí se llama "${one.renamed}"`;
    case 'kind-guessed':
      return `no dice "kind"; se leyó como ${forms.kind[one.kind as keyof typeof forms.kind] ?? one.kind}`;
    case 'kind-unknown':
      return one.kind === ''
        ? 'no dice "kind" y nada lo indica; no se usa'
        : `"kind" desconocido "${one.kind}"; no se usa`;
    case 'species-unknown':
      return `no se conoce la especie "${one.text}"; se toma como árbol de clase desconocida`;
    case 'species-uncertain':
      return `la especie "${one.text}" se tomó como ${one.taken}`;
    case 'material-unknown':
      return `no se conoce el material "${one.text}"; se toma como un tubo mediano`;
    case 'material-uncertain':
      return `el material "${one.text}" se tomó como ${one.taken}`;
    case 'not-a-live-tree':
      return `"${one.text}": no es un árbol vivo; se omitió`;
    case 'fitting-off-line':
      return one.distanceM === null
        ? 'no hay línea a menos de un metro de esta pieza; se omitió'
        : `está a ${m(one.distanceM, units)} de su línea; se omitió (debe estar a menos de un metro)`;
    case 'finding-misplaced':
      return 'el contador no encaja con la línea; se omitió';
    case 'flow-assumed':
      return 'nada dice hacia dónde corre el agua; se toma como está dibujado';
    case 'nothing-to-score':
      return one.missing === 'trees'
        ? 'no hay árboles: no se puede decir el riesgo'
        : 'no hay ninguna línea de drenaje';
    case 'more-of-the-same':
      return `y ${one.count} más de "${one.of}"`;
  }
}

const caution = ({ code }: Caution): string => wordCaution(code, 'es');

export const model: Words['model'] = { caution, chance, advice, reason, issue, tree, material, change };
