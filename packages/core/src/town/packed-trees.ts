import type { Tree } from '../model/site.js';
import type { SpeciesMatch } from '../model/species-match.js';
import { TextReader, type Texts, textsOf } from './texts.js';

/** What is known of the trees of one piece of a town, as columns; NaN stands for not given. */
export interface PackedTrees {
  readonly count: number;
  readonly lon: Float64Array;
  readonly lat: Float64Array;
  readonly stemM: Float64Array;
  readonly canopyM: Float64Array;
  readonly heightM: Float64Array;
  readonly planted: Float64Array;
  readonly felled: Float64Array;
  /** Number of each tree's name in the list of names. */
  readonly species: Uint32Array;
  readonly names: readonly SpeciesMatch[];
  readonly ids: Texts;
}

const NUMBERS = ['lon', 'lat', 'stemM', 'canopyM', 'heightM', 'planted', 'felled'] as const;

/** Buffers of the columns, to be handed over without copying. */
export const buffersOfTrees = (trees: PackedTrees): ArrayBufferLike[] => [
  ...NUMBERS.map((name) => trees[name].buffer),
  trees.species.buffer,
];

const orNaN = (value: number | null): number => value ?? Number.NaN;
const orNull = (value: number | undefined): number | null =>
  value === undefined || Number.isNaN(value) ? null : value;

/** Packs trees; their conditions and notes are left behind. */
export function packTrees(trees: readonly Tree[]): PackedTrees {
  const column = (value: (tree: Tree) => number): Float64Array => {
    const filled = new Float64Array(trees.length);
    for (let i = 0; i < filled.length; i++) filled[i] = value(trees[i] as Tree);
    return filled;
  };
  const numberOf = new Map<string, number>();
  const names: SpeciesMatch[] = [];
  const species = Uint32Array.from(trees, ({ species: match }) => {
    const name = `${match.key}/${match.certainty}/${match.text}`;
    let number = numberOf.get(name);
    if (number === undefined) {
      number = names.length;
      numberOf.set(name, number);
      names.push(match);
    }
    return number;
  });
  return {
    count: trees.length,
    lon: column(({ position }) => position[0]),
    lat: column(({ position }) => position[1]),
    stemM: column(({ stemDiameterM }) => orNaN(stemDiameterM)),
    canopyM: column(({ canopyRadiusM }) => orNaN(canopyRadiusM)),
    heightM: column(({ heightM }) => orNaN(heightM)),
    planted: column(({ plantedYear }) => orNaN(plantedYear)),
    felled: column(({ felledYear }) => orNaN(felledYear)),
    species,
    names,
    ids: textsOf(trees.map(({ id }) => id)),
  };
}

/** Pieces of a town put one after the other; ids stay as they came. */
export interface TownTrees extends Omit<PackedTrees, 'ids'> {
  readonly ids: readonly Texts[];
}

/** @param room makes a buffer of so many bytes: a shared one where several threads are to read it. */
export function joinTrees(
  pieces: readonly PackedTrees[],
  room: (bytes: number) => ArrayBufferLike,
): TownTrees {
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const column = (name: (typeof NUMBERS)[number]): Float64Array => {
    const whole = new Float64Array(room(8 * count));
    let at = 0;
    for (const piece of pieces) {
      whole.set(piece[name], at);
      at += piece.count;
    }
    return whole;
  };
  const species = new Uint32Array(room(4 * count));
  const names: SpeciesMatch[] = [];
  let at = 0;
  for (const piece of pieces) {
    for (let i = 0; i < piece.count; i++) species[at + i] = (piece.species[i] as number) + names.length;
    names.push(...piece.names);
    at += piece.count;
  }
  return {
    count,
    lon: column('lon'),
    lat: column('lat'),
    stemM: column('stemM'),
    canopyM: column('canopyM'),
    heightM: column('heightM'),
    planted: column('planted'),
    felled: column('felled'),
    species,
    names,
    ids: pieces.map((piece) => piece.ids),
  };
}

/** Makes one tree from the columns. */
export function treeReader(trees: TownTrees): (index: number) => Tree {
  const ids = new TextReader(trees.ids);
  return (i) => ({
    id: ids.at(i),
    position: [trees.lon[i] as number, trees.lat[i] as number],
    species: trees.names[trees.species[i] as number] as SpeciesMatch,
    stemDiameterM: orNull(trees.stemM[i]),
    canopyRadiusM: orNull(trees.canopyM[i]),
    heightM: orNull(trees.heightM[i]),
    plantedYear: orNull(trees.planted[i]),
    felledYear: orNull(trees.felled[i]),
    condition: null,
    note: null,
  });
}
