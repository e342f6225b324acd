import type { Drain, LonLat } from '../model/site.js';
import { joinStreets, type Streets, streetAt, streetsOf } from './streets.js';
import { TextReader, type Texts, textsOf } from './texts.js';

/** The numbers that a line may have, NaN where not given. */
const NUMBERS = [
  'sizeM',
  'pieceM',
  'sealMPa',
  'depthStartM',
  'depthEndM',
  'installedYear',
  'dugYear',
  'cutYear',
  'servesM2',
] as const;

/** Where each of them stands among the numbers of a line. */
const PLACE = Object.fromEntries(NUMBERS.map((name, k) => [name, k])) as Readonly<
  Record<(typeof NUMBERS)[number], number>
>;

/** Words and switches of a line: towns have few different sets of them. */
type Kind = Pick<
  Drain,
  'material' | 'materialKnown' | 'perforated' | 'wrapped' | 'joint' | 'sealed' | 'flow' | 'carries' | 'wet'
> & { readonly file: string };

/** The lines of one piece of a town, as columns. */
export interface PackedDrains {
  readonly count: number;
  /** Longitude and latitude in turn, the lines one after the other, and the number of points up to each line's end. */
  readonly points: Float64Array;
  readonly ends: Uint32Array;
  /** Number of the feature in its file. */
  readonly feature: Uint32Array;
  readonly kind: Uint32Array;
  readonly kinds: readonly Kind[];
  /** `NUMBERS` of line after line. */
  readonly numbers: Float64Array;
  readonly ids: Texts;
  /** Names; empty for none. */
  readonly names: Texts;
  readonly streets: Streets;
}

export function packDrains(drains: readonly Drain[]): PackedDrains {
  const ends = new Uint32Array(drains.length);
  let total = 0;
  drains.forEach(({ path }, i) => {
    total += path.length;
    ends[i] = total;
  });
  const points = new Float64Array(2 * total);
  let at = 0;
  for (const { path } of drains) {
    for (const [lon, lat] of path) {
      points[at++] = lon;
      points[at++] = lat;
    }
  }
  const numberOf = new Map<string, number>();
  const kinds: Kind[] = [];
  const kind = Uint32Array.from(drains, (drain) => {
    const { material, materialKnown, perforated, wrapped, joint, sealed, flow, carries, wet, origin } = drain;
    const made: Kind = {
      material,
      materialKnown,
      perforated,
      wrapped,
      joint,
      sealed,
      flow,
      carries,
      wet,
      file: origin.file,
    };
    const text = Object.values(made).join('|');
    let number = numberOf.get(text);
    if (number === undefined) {
      number = kinds.length;
      numberOf.set(text, number);
      kinds.push(made);
    }
    return number;
  });
  const numbers = new Float64Array(NUMBERS.length * drains.length);
  drains.forEach((drain, i) => {
    NUMBERS.forEach((name, k) => {
      numbers[NUMBERS.length * i + k] = drain[name] ?? Number.NaN;
    });
  });
  return {
    count: drains.length,
    points,
    ends,
    feature: Uint32Array.from(drains, ({ origin }) => origin.index),
    kind,
    kinds,
    numbers,
    ids: textsOf(drains.map(({ id }) => id)),
    names: textsOf(drains.map(({ name }) => name ?? '')),
    streets: streetsOf(drains),
  };
}

/** The lines of a whole town as columns; ids and names stay in the pieces that they came in. */
export interface TownDrains extends Omit<PackedDrains, 'ids' | 'names'> {
  readonly ids: readonly Texts[];
  readonly names: readonly Texts[];
}

/** @param room makes a buffer of so many bytes. */
export function joinDrains(
  pieces: readonly PackedDrains[],
  room: (bytes: number) => ArrayBufferLike,
): TownDrains {
  const sum = (size: (piece: PackedDrains) => number): number =>
    pieces.reduce((n, piece) => n + size(piece), 0);
  const count = sum((piece) => piece.count);
  const points = new Float64Array(room(8 * sum((piece) => piece.points.length)));
  const numbers = new Float64Array(room(8 * NUMBERS.length * count));
  const ends = new Uint32Array(room(4 * count));
  const feature = new Uint32Array(room(4 * count));
  const kind = new Uint32Array(room(4 * count));
  const kinds: Kind[] = [];
  let line = 0;
  let point = 0;
  for (const piece of pieces) {
    points.set(piece.points, 2 * point);
    numbers.set(piece.numbers, NUMBERS.length * line);
    feature.set(piece.feature, line);
    for (let i = 0; i < piece.count; i++) {
      ends[line + i] = point + (piece.ends[i] as number);
      kind[line + i] = kinds.length + (piece.kind[i] as number);
    }
    kinds.push(...piece.kinds);
    line += piece.count;
    point += piece.points.length / 2;
  }
  return {
    count,
    points,
    ends,
    feature,
    kind,
    kinds,
    numbers,
    ids: pieces.map((piece) => piece.ids),
    names: pieces.map((piece) => piece.names),
    streets: joinStreets(
      pieces.map((piece) => piece.streets),
      room,
    ),
  };
}

/**
 * Places of one line, degrees, as drawn.
 * @param drains columns of a town or of a piece of it.
 * @param i number of the line in them.
 */
export function pathIn({ points, ends }: Pick<TownDrains, 'points' | 'ends'>, i: number): LonLat[] {
  const from = i === 0 ? 0 : (ends[i - 1] as number);
  const to = ends[i] as number;
  return Array.from({ length: to - from }, (_, k) => [
    points[2 * (from + k)] as number,
    points[2 * (from + k) + 1] as number,
  ]);
}

/** The middle one of the points of a line. */
export function middleIn({ points, ends }: Pick<TownDrains, 'points' | 'ends'>, i: number): LonLat {
  const from = i === 0 ? 0 : (ends[i - 1] as number);
  const middle = from + Math.floor(((ends[i] as number) - from) / 2);
  return [points[2 * middle] as number, points[2 * middle + 1] as number];
}

/** Reads the ids of lines alone. */
export function drainIds({ ids }: TownDrains): (index: number) => string {
  const reader = new TextReader(ids);
  return (i) => reader.at(i);
}

/** Makes one line from the columns. */
export function drainReader(drains: TownDrains): (index: number) => Drain {
  const ids = new TextReader(drains.ids);
  const names = new TextReader(drains.names);
  return (i) => {
    const { file, ...kind } = drains.kinds[drains.kind[i] as number] as Kind;
    const first = NUMBERS.length * i;
    const number = (name: (typeof NUMBERS)[number]): number | null => {
      const value = drains.numbers[first + PLACE[name]] as number;
      return Number.isNaN(value) ? null : value;
    };
    const name = names.at(i);
    const street = streetAt(drains.streets, i);
    return {
      id: ids.at(i),
      origin: { file, index: drains.feature[i] as number },
      name: name === '' ? null : name,
      path: pathIn(drains, i),
      ...kind,
      sizeM: number('sizeM'),
      pieceM: number('pieceM'),
      sealMPa: number('sealMPa'),
      depthStartM: number('depthStartM'),
      depthEndM: number('depthEndM'),
      installedYear: number('installedYear'),
      dugYear: number('dugYear'),
      cutYear: number('cutYear'),
      servesM2: number('servesM2'),
      ...(street === undefined ? {} : { street }),
    };
  };
}
