import type { Tree } from '../model/site.js';
import type { SpeciesMatch } from '../model/species-match.js';
import type { TreePatterns } from '../risk/tree-patterns.js';
import { joinColumns } from './columns.js';
import { joinStreets, type Streets, streetAt, streetsOf } from './streets.js';
import { TextReader, type Texts, textsOf } from './texts.js';

/** What is known of the trees of one piece of a town, as columns; NaN stands for not given. */
export interface PackedTrees {
  readonly count: number;
  readonly lon: Float64Array;
  readonly lat: Float64Array;
  /** Number of each tree's pattern, by which all columns below go. */
  readonly pattern: Uint32Array;
  readonly stemM: Float64Array;
  readonly canopyM: Float64Array;
  readonly heightM: Float64Array;
  readonly planted: Float64Array;
  readonly felled: Float64Array;
  /** Number of the name in the list of names. */
  readonly species: Uint32Array;
  readonly names: readonly SpeciesMatch[];
  readonly ids: Texts;
  readonly streets: Streets;
}

const orNaN = (value: number | null): number => value ?? Number.NaN;
const orNull = (value: number | undefined): number | null =>
  value === undefined || Number.isNaN(value) ? null : value;

/**
 * Packs trees; their conditions and notes are left behind.
 * @param patterns Of the same trees.
 */
export function packTrees(
  trees: readonly Tree[],
  patterns: TreePatterns,
  { lon, lat }: Pick<PackedTrees, 'lon' | 'lat'>,
): PackedTrees {
  const { first, of } = patterns;
  const numberOf = new Map<SpeciesMatch, number>();
  const species = Uint32Array.from(first, ({ species: match }) => {
    const number = numberOf.get(match) ?? numberOf.size;
    numberOf.set(match, number);
    return number;
  });
  return {
    count: trees.length,
    lon,
    lat,
    pattern: of,
    stemM: Float64Array.from(first, ({ stemDiameterM }) => orNaN(stemDiameterM)),
    canopyM: Float64Array.from(first, ({ canopyRadiusM }) => orNaN(canopyRadiusM)),
    heightM: Float64Array.from(first, ({ heightM }) => orNaN(heightM)),
    planted: Float64Array.from(first, ({ plantedYear }) => orNaN(plantedYear)),
    felled: Float64Array.from(first, ({ felledYear }) => orNaN(felledYear)),
    species,
    names: [...numberOf.keys()],
    ids: textsOf(trees.map(({ id }) => id)),
    streets: streetsOf(trees),
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
  const floats = (name: 'lon' | 'lat' | 'stemM' | 'canopyM' | 'heightM' | 'planted' | 'felled') =>
    joinColumns(
      pieces,
      (piece) => piece[name],
      (length) => new Float64Array(room(8 * length)),
    );
  const numbers = (name: 'pattern' | 'species', more: (piece: PackedTrees) => number) =>
    joinColumns(
      pieces,
      (piece) => piece[name],
      (length) => new Uint32Array(room(4 * length)),
      more,
    );
  return {
    count: pieces.reduce((sum, piece) => sum + piece.count, 0),
    lon: floats('lon'),
    lat: floats('lat'),
    pattern: numbers('pattern', (piece) => piece.stemM.length),
    stemM: floats('stemM'),
    canopyM: floats('canopyM'),
    heightM: floats('heightM'),
    planted: floats('planted'),
    felled: floats('felled'),
    species: numbers('species', (piece) => piece.names.length),
    names: pieces.flatMap((piece) => piece.names),
    ids: pieces.map((piece) => piece.ids),
    streets: joinStreets(
      pieces.map((piece) => piece.streets),
      room,
    ),
  };
}

/** Makes one tree from the columns. */
export function treeReader(trees: TownTrees): (index: number) => Tree {
  const ids = new TextReader(trees.ids);
  return (i) => {
    const p = trees.pattern[i] as number;
    const street = streetAt(trees.streets, i);
    return {
      id: ids.at(i),
      position: [trees.lon[i] as number, trees.lat[i] as number],
      species: trees.names[trees.species[p] as number] as SpeciesMatch,
      stemDiameterM: orNull(trees.stemM[p]),
      canopyRadiusM: orNull(trees.canopyM[p]),
      heightM: orNull(trees.heightM[p]),
      plantedYear: orNull(trees.planted[p]),
      felledYear: orNull(trees.felled[p]),
      condition: null,
      note: null,
      ...(street === undefined ? {} : { street }),
    };
  };
}
