import type { ElevationGrid, LonLat, RoutePlace, Site } from '@rootreach/core';
import { type ElevationReading, readElevation, wordElevationFault } from '@rootreach/intake';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { OptionSpecs } from './command.js';
import type { Io } from './io.js';
import { printable } from './print/printable.js';
import { bytesOf } from './read-inputs.js';

/** Options that give ground heights. */
export const groundOptions: OptionSpecs = {
  ground: {
    value: 'FILE',
    text: 'ground heights on a grid, GeoTIFF or ASCII grid, instead of the spot levels; --crs says its grid',
  },
  'ground-unit': { value: 'm|ft|us-ft', text: 'unit of its heights; what the file says, else m' },
};

/** A grid of heights with what it was taken for. */
export interface GivenGround {
  readonly grid: ElevationGrid;
  readonly file: string;
  readonly heightUnit: 'm' | 'ft' | 'us-ft';
  /** True where neither file nor call gave the unit. */
  readonly unitAssumed: boolean;
}

/** Kept about the site, degrees: some 100 m, as far as a way about a lot may swing out. */
const ABOUT_DEGREES = 0.001;

/** Box about everything of a site and the ends asked for. */
function boxAbout(site: Site, places: readonly RoutePlace[]) {
  const all: LonLat[] = [
    ...site.trees.map(({ position }) => position),
    ...site.fittings.map(({ position }) => position),
    ...site.levels.map(({ position }) => position),
    ...site.drains.flatMap(({ path }) => path),
    ...site.obstacles.flatMap(({ shape }) => (shape.type === 'path' ? shape.path : shape.rings.flat())),
    ...places.flatMap((place) => ('position' in place ? [place.position] : [])),
  ];
  const box = { west: 180, south: 90, east: -180, north: -90 };
  for (const [lon, lat] of all) {
    box.west = Math.min(box.west, lon - ABOUT_DEGREES);
    box.east = Math.max(box.east, lon + ABOUT_DEGREES);
    box.south = Math.min(box.south, lat - ABOUT_DEGREES);
    box.north = Math.max(box.north, lat + ABOUT_DEGREES);
  }
  return box;
}

/** Reads the file of heights asked for; null where none was. What is wrong with it is one line. */
export async function groundFrom(
  args: Args,
  site: Site,
  places: readonly RoutePlace[],
  io: Io,
): Promise<GivenGround | null> {
  const file = args.text('ground');
  const heightUnit = args.choice('ground-unit', ['m', 'ft', 'us-ft']);
  if (file === undefined) {
    if (heightUnit !== undefined) throw new CannotDo('--ground-unit goes with --ground FILE');
    return null;
  }
  const reference = args.text('crs');
  const bytes = await bytesOf(file, io);
  let reading: ElevationReading;
  try {
    reading = await readElevation(bytes, {
      around: boxAbout(site, places),
      ...(reference === undefined ? {} : { reference }),
      ...(heightUnit === undefined ? {} : { heightUnit }),
    });
  } catch {
    throw new CannotDo(`cannot read ground heights from ${file}: the file is damaged`);
  }
  if (reading.kind === 'fault') {
    throw new CannotDo(`cannot read ground heights from ${file}: ${printable(wordElevationFault(reading))}`);
  }
  return {
    grid: reading.grid,
    file,
    heightUnit: reading.heightUnit,
    unitAssumed: reading.heightUnitFrom === 'assumed',
  };
}
