import type { PriceUnit } from '@rootreach/core';
import type { Words } from '../en.js';
import { item } from './items.js';
import { wayIn } from './parts.js';

const dollars = (amount: number, currency: string): string =>
  new Intl.NumberFormat('es-US', { style: 'currency', currency, maximumFractionDigits: 0 }).format(amount);

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)}\u00a0%`;

const UNITS: Readonly<Partial<Record<PriceUnit, string>>> = {
  m2: 'm²',
  m3: 'm³',
  ft2: 'pie²',
  yd2: 'yd²',
  ft3: 'pie³',
  yd3: 'yd³',
  ft: 'pies',
  ton: 'ton. EE. UU.',
  piece: 'pza.',
  job: 'vez',
  hour: 'h',
};

/** Texts of choices, prices and pages to hand out. */
export const works: Words['works'] = {
  title: 'Qué hacer',
  none: 'Todavía no hay un tramo que decidir. Dibuje primero una línea y un árbol.',
  tooLarge: 'Este sitio es demasiado grande para decidir aquí. Use la línea de comandos.',
  about: 'Tramo',
  decide: 'Comparar las opciones',
  again: 'Compararlas otra vez',
  working: 'Calculando…',
  failed: (why) => `No se pudo: ${why}.`,
  stale: 'El dibujo o el tramo cambiaron: compárelas otra vez.',
  money: dollars,
  now: (amount, currency) => (amount === 0 ? 'Nada que pagar ahora' : `${dollars(amount, currency)} ahora`),
  over: (amount, years, currency) => `${dollars(amount, currency)} en ${years} años, en dinero de hoy`,
  unpriced: 'Falta un precio en su lista',
  chance: (years, { low, likely, high }) =>
    `Problemas en ${years} años: ${percent(likely)} (${percent(low)} a ${percent(high)})`,
  recurring: {
    'camera-look': (years) => `cámara cada ${years}`,
    'clear-by-jet': (years) => `lavado a presión cada ${years}`,
    'clear-by-cutter': (years) => `corte cada ${years}`,
  },
  years: (n) => (Math.round(n * 10) / 10 === 1 ? 'año' : `${Math.round(n * 10) / 10} años`),
  choices: 'Las opciones',
  exact: (amount, currency) =>
    new Intl.NumberFormat('es-US', { style: 'currency', currency }).format(Number(amount)),
  weighed: (line, span) =>
    `Comparadas para ${line}, ${span.replace(' to ', ' a ')} desde el extremo de abajo.`,
  basin: 'Con un sumidero donde se juntan las líneas: desde ahí se llega a todas.',
  pick: 'Hacer esto',
  picked: 'Elegido',
  notPossible: (n) => `Aquí no se puede: ${n}`,
  switches: 'Qué cambiaría la respuesta',
  switchRow: (what, at, becomes) => {
    switch (what) {
      case 'horizon-years':
        return `Mirando ${Math.round(at)} años adelante, gana «${becomes}».`;
      case 'discount-rate':
        return `Con ${percent(at)} de interés al año, gana «${becomes}».`;
      case 'price-now':
        return `Con ${at.toFixed(1)} veces el precio de la obra aconsejada, gana «${becomes}».`;
      case 'trouble-cost':
        return `Si un atasco costara ${at.toFixed(1)} veces lo supuesto, gana «${becomes}».`;
      case 'root-rate':
        return `Con raíces ${at.toFixed(1)} veces tan activas, gana «${becomes}».`;
    }
  },
  steady: 'Nada razonable de lo que probamos cambia la respuesta.',
  assumptions: 'En qué se basa',
  horizon: 'Años que se miran',
  rate: 'Interés, % al año',
  most: 'Lo más que se gasta ahora',
  margin: 'Margen, %',
  tax: 'Impuesto, %',
  prices: 'Sus precios',
  pricesDemo: 'Estos precios son inventados, para mostrar cómo funciona.',
  pricesChanged: 'Son los precios inventados, con sus cambios.',
  pricesOwn: (n, dated) => `Su lista: ${n} precios${dated === null ? '' : `, ${dated}`}.`,
  loadPrices: 'Abrir su lista (CSV)',
  savePrices: 'Guardar esta lista para editarla',
  dropPrices: 'Volver a la lista inventada',
  badPrices: 'No hay ningún precio útil en ese archivo.',
  badRows: (n) => `${n} ${n === 1 ? 'fila' : 'filas'} de la lista no se pudieron usar.`,
  quote: 'La oferta, lado a lado',
  quantity: 'Cantidad',
  price: 'Precio',
  total: 'Total',
  subtotal: 'Suma',
  itemName: item,
  unit: (unit) => UNITS[unit] ?? unit,
  priceOf: (item) => `Precio de ${item}`,
  saveQuote: 'Guardar la oferta (CSV)',
  missing: (n) => `${n} ${n === 1 ? 'partida no tiene' : 'partidas no tienen'} precio: el total queda corto.`,
  handOut: 'En papel',
  by: 'De quién es el cálculo',
  owner: 'Página para el dueño',
  crew: 'Hoja para la cuadrilla',
  handOutHint: 'Un archivo cada una. Se abre en cualquier parte, sin red, y se imprime en dos hojas.',
  season: 'Cuándo volver',
  seasonHint: 'Para todos los sitios guardados en este aparato.',
  until: 'Revisiones hasta',
  days: 'Primer día de trabajo',
  dayCount: 'Días de trabajo',
  makeSeason: 'Hacer la lista',
  noSites: 'Todavía no hay sitios guardados en este aparato.',
  look: (site, from, direction, to) => `${site}: desde ${wayIn(from)}, ${direction}, hasta ${to}`,
  expect: (from, to) => `espérelo de ${from} a ${to}`,
  due: (when) => `antes de ${when}`,
  direction: { upstream: 'aguas arriba', downstream: 'aguas abajo' },
  noLooks: 'Nada que mirar hasta entonces.',
  saveCalendar: 'Guardar para el calendario (.ics)',
  saveSeason: 'Guardar como tabla (CSV)',
  unplaced: (n) => `${n} no cupieron en esos días.`,
};
