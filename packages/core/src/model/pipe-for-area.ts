/** The pipe that an area asks for. */
export interface PipeForArea {
  /** Nominal size, metres: the smallest that is enough, else the largest of the pipe's table. */
  readonly sizeM: number;
  /** Peak of the water that comes. */
  readonly flowM3s: number;
  /** What one pipe of this size carries running full. */
  readonly carriesM3s: number;
  /** Pipes of this size side by side that carry it all: 1 where one is enough. */
  readonly sideBySide: number;
  /** Inside diameter of a single pipe that carries it all at this fall. */
  readonly boreM: number;
}
