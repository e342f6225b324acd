import type { FittingType } from '@rootreach/core';
import { grouped } from '../grouped.js';

/** Fittings, as several catalogues need them. */
export const fitting: Readonly<Record<FittingType, string>> = {
  wye: 'Y',
  tee: 'T',
  bend: 'codo',
  coupling: 'cople',
  reducer: 'reducción',
  basin: 'sumidero',
  cleanout: 'registro',
  downspout: 'bajante',
  outlet: 'salida',
  cap: 'tapón',
};

/** `1 línea`, `3 líneas`. */
export const many = (n: number, one: string, more = `${one}s`): string =>
  `${grouped(n)} ${n === 1 ? one : more}`;

const ENDS: Readonly<Record<string, string>> = {
  'the outlet': 'la salida',
  'the lower end': 'el extremo de abajo',
  'the upper end': 'el extremo de arriba',
};

/** `basin B1` comes in English from the model; its kind is put into Spanish. */
export function wayIn(name: string): string {
  const [type = '', ...id] = name.split(' ');
  const known = (fitting as Readonly<Record<string, string>>)[type];
  return ENDS[name] ?? (known === undefined ? name : `${known} ${id.join(' ')}`);
}
