import type { ElevationGrid, LonLat } from '@rootreach/core';

/** What is not in the file, or wanted otherwise than it says. */
export interface ElevationOptions {
  /** Grid of its coordinates: `EPSG:32615` or a PROJ string. */
  readonly reference?: string;
  /** Unit of its heights; what the file says, else metres, where not given. */
  readonly heightUnit?: HeightUnit;
  /** For a grid laid out in metres from a corner of its own: where its (0, 0) is. */
  readonly originAt?: LonLat;
  /** Cells about this box alone; all where not given. Degrees. */
  readonly around?: {
    readonly west: number;
    readonly south: number;
    readonly east: number;
    readonly north: number;
  };
}

/** Unit of heights in a file: metre, international foot, or U.S. survey foot. */
export type HeightUnit = 'm' | 'ft' | 'us-ft';

/** Why a file gives no grid. */
export type ElevationFault =
  /** It is no grid of the kinds that are read. */
  | 'not-a-grid'
  /** The header lacks something, or says what cannot be. */
  | 'odd-header'
  | 'too-few-heights'
  /** Nothing tells where on earth it lies. */
  | 'no-reference'
  | 'unknown-reference'
  /** More cells than can be held; give a box. */
  | 'too-many-cells'
  /** None of its cells lie about the box. */
  | 'elsewhere'
  /** No cell has a height. */
  | 'no-heights';

/** A grid of ground heights with how it was read, or what is wrong with the file. */
export type ElevationReading =
  | {
      readonly kind: 'grid';
      readonly grid: ElevationGrid;
      readonly format: 'ascii-grid' | 'geotiff';
      /** Name of the grid of its coordinates. */
      readonly reference: string;
      readonly heightUnit: HeightUnit;
      /** Where the unit of heights comes from. */
      readonly heightUnitFrom: 'given' | 'file' | 'assumed';
      readonly unknownCells: number;
    }
  | {
      readonly kind: 'fault';
      readonly fault: ElevationFault;
      /** What was found: a word of the header, a count. */
      readonly found: string;
    };

export const faulty = (fault: ElevationFault, found: string): ElevationReading => ({
  kind: 'fault',
  fault,
  found,
});
