/** A seeded lot for routes as a site file. */
export function routeLot(shape: {
  readonly seed: number;
  readonly sizeM?: number;
  readonly trees?: number;
  readonly levels?: boolean;
}): unknown;
