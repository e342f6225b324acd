import type { Words } from './words.js';

export const crewEs: Words['crew'] = {
  title: 'Hoja para la cuadrilla',
  whole: (id) => `Tramo ${id}`,
  dig: {
    title: 'Dónde cavar',
    line: 'Línea',
    pipe: 'Tubo',
    from: 'Desde la entrada',
    stations: 'A lo largo de la línea',
    stationsFrom: (span) => `${span} desde el extremo bajo`,
    length: 'Largo',
    cover: 'Profundidad hasta el lomo del tubo',
    coverFromTo: (from, to) => `${from} en un extremo, ${to} en el otro`,
    assumed: 'sin medir: sondee antes de cavar',
    joints: 'Juntas en él',
    fittings: 'Piezas en él',
    none: 'ninguna',
    seen: 'Cámara',
    notSeen: 'nada registrado: primero la cámara',
  },
  utilities: {
    title: 'Servicios cercanos',
    name: 'Qué',
    nearest: 'Lo más cerca',
    crosses: (at) => `cruza en ${at}`,
    none: 'Ninguno en el croquis. Eso no quiere decir que no haya: primero pida las marcas.',
    note: 'Según croquis, sin localizar. Solo valen las marcas en el suelo.',
    unnamed: 'servicio enterrado',
  },
  trees: {
    title: 'Límites junto al árbol',
    tree: 'Árbol',
    trunk: 'Tronco',
    away: 'Lo más cerca',
    three: 'No cavar (3 troncos)',
    six: 'Arborista (6 troncos)',
    twelve: 'A mano (12 troncos)',
    hand: 'A mano en la línea',
    assumedTrunk: 'tronco sin medir',
    circles: 'En el plano: círculo entero 3, a rayas 6, a puntos 12 anchos de tronco.',
    none: 'Ningún árbol a menos de doce troncos.',
    crosses: 'El tramo entra en el círculo donde no se cava: pare y pregunte a un arborista.',
  },
  quantities: { title: 'Cantidades', none: 'Nada que llevar.' },
  checks: {
    title: 'Antes de tapar',
    list: [
      'Pendiente revisada con nivel: anótela en los dos extremos.',
      'El agua que entra arriba sale abajo, y no queda nada.',
      'Cámara por cada junta nueva, grabada.',
      'Juntas hechas como dice el fabricante; ningún empaque torcido, ninguna tela rota.',
      'Raíces cortadas limpio, húmedas y tapadas el mismo día.',
      'Tubo asentado en todo su largo, con cinta de aviso encima.',
      'Foto y medidas desde dos esquinas fijas, antes de tapar.',
    ],
  },
  cautions: { title: 'Antes de cavar y al cavar' },
  counted: (amount, unit) =>
    unit === 'hour'
      ? `${amount} h`
      : unit === 'job'
        ? amount === '1'
          ? 'una vez'
          : `${amount} veces`
        : amount,
  written: { fall: 'Pendiente', water: 'Agua', camera: 'Cámara', name: 'Nombre', date: 'Fecha' },
};
