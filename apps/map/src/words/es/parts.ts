import type { FittingType } from '@rootreach/core';

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
  `${n.toLocaleString('es')} ${n === 1 ? one : more}`;
