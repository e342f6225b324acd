/** What quantities are counted in: metres, square and cubic metres, pieces, hours, or once a job. */
export type QuantityUnit = 'm' | 'm2' | 'm3' | 'piece' | 'hour' | 'job';

/** So much of one thing that a job takes. */
export interface Quantity {
  /** Own plain word, the key of a price: `trench-shallow`, `pipe-pvc-sdr35-4in`. */
  readonly code: string;
  /** For people, in English. */
  readonly text: string;
  readonly quantity: number;
  readonly unit: QuantityUnit;
  /** How it was worked out. */
  readonly basis: string;
  /** Bought and built in, as against work and hire. */
  readonly isMaterial: boolean;
}
