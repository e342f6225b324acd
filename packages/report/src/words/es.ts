import { crewEs } from './crew-es.js';
import { ownerEs } from './owner-es.js';
import { treeEs } from './trees-es.js';
import type { Words } from './words.js';

const bare = (name: string): string => name.replace(/^(?:el|la) /, '');

export const es: Words = {
  language: 'es',
  bands: {
    leave: 'dejar en paz',
    watch: 'mirar más adelante',
    inspect: 'meter la cámara',
    act: 'planear la obra',
    'cannot-say': 'se sabe muy poco',
  },
  fittings: {
    basin: 'caja',
    cleanout: 'registro',
    downspout: 'bajante',
    outlet: 'salida',
    wye: 'ye',
    tee: 'te',
    bend: 'codo',
    coupling: 'cople',
    reducer: 'reductor',
    cap: 'tapa',
  },
  ground: {
    building: 'edificio',
    paving: 'pavimento',
    pool: 'alberca',
    wall: 'muro',
    utility: 'servicio enterrado, según croquis',
    boundary: 'límite del lote',
  },
  seen: {
    clear: 'limpio',
    fine: 'raíces finas',
    mass: 'una masa de raíces',
    full: 'raíces que llenan el tubo',
    crushed: 'un tubo aplastado',
    sag: 'una parte hundida',
    offset: 'una junta corrida',
  },
  changes: {
    'seal-joints': () => 'Sellar las juntas',
    'basin-for-wye': () => 'Poner una caja sellada donde se unen las líneas',
    'stouter-pipe': () => 'Poner un tubo más fuerte',
    deeper: () => 'Ponerlo 30 cm (un pie) más hondo',
    'tree-absent': (tree) => `Sin el árbol (${tree})`,
    'root-barrier': (tree) => `Poner una barrera contra raíces (${tree})`,
    'dig-and-clear': () => 'Cavar y quitar las raíces',
  },
  tree: (_name, species) => bare(treeEs(species)),
  theTree: (_name, species) => treeEs(species),
  date: (year, month, day) => {
    const months =
      'enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre'.split(' ');
    return `${day} de ${months[month - 1]} de ${year}`;
  },
  invented: 'Ejemplo inventado',
  ends: { outlet: 'la salida', upper: 'el extremo alto' },
  direction: { upstream: 'tubo arriba', downstream: 'tubo abajo' },
  wayIn: (type, id) => `${type === 'registro' || type === 'codo' ? 'el' : 'la'} ${type} ${id}`,
  stretch: (span, direction, from) => `${span} ${direction}, contando desde ${from}`,
  first: (length) => `los primeros ${length}`,
  span: (from, to, unit) => `de ${from} a ${to} ${unit}`,
  picture: {
    lot: 'Plano del lote: árboles con sus raíces, líneas de drenaje y el lugar en cuestión',
    spot: 'aquí',
    north: 'N',
    curve: 'La probabilidad con los años: la línea más probable y una banda de baja a alta',
    profile: 'La línea vista de lado: suelo, tubo, juntas y árboles',
    years: 'años desde hoy',
    likely: 'lo más probable',
    low: 'si va bien',
    high: 'si va mal',
    station: (unit) => `a lo largo del tubo desde su extremo bajo, ${unit}`,
    key: {
      wash: 'raíces, menos al alejarse',
      canopy: 'borde de las ramas',
      protection: 'suelo que hay que proteger',
      barrier: 'barrera contra raíces',
    },
  },
  owner: ownerEs,
  crew: crewEs,
};
