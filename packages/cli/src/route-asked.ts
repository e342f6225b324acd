import {
  fromFeet,
  fromInches,
  type LonLat,
  type PriceList,
  type RoutePipe,
  type RoutePlace,
  type RouteRequest,
  resolveMaterial,
  type Site,
} from '@rootreach/core';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import { nearest } from './nearest.js';

/** Options of a route. */
export const routeOptions: OptionSpecs = {
  from: {
    value: 'ID|LON,LAT',
    many: true,
    text: 'where water comes from: a fitting, level or drain, or a position; again for more sources',
  },
  to: { value: 'ID|LON,LAT', many: true, text: 'where it may come out; again for more, the best is taken' },
  via: { value: 'LON,LAT', text: 'also show the way through this place' },
  pipe: { value: 'MATERIAL', text: 'pipe to lay, such as sdr35 or corrugated; sdr35 if not given' },
  'size-mm': { value: 'N', text: 'its nominal size; 4 in if not given' },
  'size-in': { value: 'N', text: 'the same in inches' },
  perforated: { value: null, text: 'perforated pipe, wrapped in fabric' },
  fall: { value: 'PERCENT', text: 'least fall; an eighth of an inch a foot (1.04 %) if not given' },
  cover: { value: 'LENGTH', text: 'least cover: 45cm, 18in, 1.5ft; 12 in if not given' },
  'max-depth': {
    value: 'LENGTH',
    text: 'deepest trench, to the inside bottom of the pipe; 4 ft if not given',
  },
};

const UNITS: Readonly<Record<string, (n: number) => number>> = {
  mm: (n) => n / 1000,
  cm: (n) => n / 100,
  m: (n) => n,
  in: fromInches,
  ft: fromFeet,
};

/** A length with its unit: `18in`, `0.4 m`. */
function lengthFrom(args: Args, name: string): number | undefined {
  const text = args.text(name);
  if (text === undefined) return undefined;
  const [, number = '', unit = ''] = /^\s*([\d.]+)\s*(mm|cm|m|in|ft)\s*$/.exec(text) ?? [];
  const metres = UNITS[unit]?.(Number(number));
  if (metres === undefined || !(metres > 0 && metres <= 10)) {
    throw new CannotDo(`--${name} takes a length such as 45cm, 18in or 1.5ft, got '${text}'`);
  }
  return metres;
}

/** Two numbers with a comma between, or null where the text is an id. */
function positionFrom(text: string): LonLat | null {
  const parts = text.split(',').map((part) => part.trim());
  const [lon, lat] = parts.map(Number);
  if (parts.length !== 2 || lon === undefined || lat === undefined) return null;
  if (!(Math.abs(lon) <= 180 && Math.abs(lat) <= 90)) return null;
  return [lon, lat];
}

function placeFrom(site: Site, name: string, text: string): RoutePlace {
  const position = positionFrom(text);
  if (position !== null) return { position };
  const ids = [...site.fittings, ...site.drains, ...site.levels].map(({ id }) => id);
  if (ids.includes(text)) return { id: text };
  const close = nearest(text, ids)[0];
  const hint = close === undefined ? '' : ` Did you mean ${close}?`;
  throw new CannotDo(`--${name}: there is no fitting, drain or level '${text}' and it is no LON,LAT.${hint}`);
}

function pipeFrom(args: Args): RoutePipe {
  const mm = args.number('size-mm', { least: 40, most: 600 });
  const inches = args.number('size-in', { least: 1.5, most: 24 });
  if (mm !== undefined && inches !== undefined) throw new CannotDo('choose one of --size-mm and --size-in');
  const text = args.text('pipe') ?? 'pvc-sdr35';
  const { key } = resolveMaterial(text);
  if (key === 'unknown') throw new CannotDo(`--pipe: there is no material '${text}'`);
  return {
    material: key,
    sizeM: mm === undefined ? fromInches(inches ?? 4) : mm / 1000,
    ...(args.flag('perforated') ? { perforated: true, wrapped: true } : {}),
  };
}

/** What was asked of a route, every source by itself. */
export interface RouteAsked {
  readonly request: RouteRequest;
  readonly sources: readonly RoutePlace[];
}

/** The request that the options make; the first source is its own. */
export function routeAsked(args: Args, site: Site, asOf: string, prices: PriceList | null): RouteAsked {
  const sources = args.texts('from').map((text) => placeFrom(site, 'from', text));
  const to = args.texts('to').map((text) => placeFrom(site, 'to', text));
  const [from] = sources;
  if (from === undefined || to.length === 0) throw new CannotDo('a route needs --from and --to');
  const viaText = args.text('via');
  const via = viaText === undefined ? undefined : positionFrom(viaText);
  if (via === null) throw new CannotDo(`--via takes LON,LAT, got '${viaText}'`);
  if (via !== undefined && sources.length > 1) throw new CannotDo('--via goes with one --from only');
  const fall = args.number('fall', { least: 0, most: 50 });
  const minCoverM = lengthFrom(args, 'cover');
  const maxDepthM = lengthFrom(args, 'max-depth');
  const horizonYears = args.number('years', { least: 0.5, most: 100 });
  return {
    sources,
    request: {
      asOf,
      from,
      to,
      pipe: pipeFrom(args),
      limits: {
        ...(fall === undefined ? {} : { minFall: fall / 100 }),
        ...(minCoverM === undefined ? {} : { minCoverM }),
        ...(maxDepthM === undefined ? {} : { maxDepthM }),
      },
      ...(via === undefined ? {} : { via }),
      ...(prices === null ? {} : { prices }),
      ...(horizonYears === undefined ? {} : { horizonYears }),
    },
  };
}
