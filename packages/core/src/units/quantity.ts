/** Branded SI quantities: a number that says what it measures. Made only in `units/`. */
declare const unit: unique symbol;
type Quantity<U extends string> = number & { readonly [unit]: U };

/** Length in metres, as `fromFeet`, `fromMillimetres` and their like give it. */
export type Metres = Quantity<'m'>;
export type SquareMetres = Quantity<'m2'>;
/** A point in time as a fractional calendar year (2026.5 is the middle of 2026), or a span in years. */
export type Years = Quantity<'year'>;
/** Pressure or pipe stiffness in pascal. */
export type Pascals = Quantity<'Pa'>;

function finite(value: number, name: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
  return value;
}

/** @throws RangeError when the value is not finite. */
export const metres = (value: number): Metres => finite(value, 'metres') as Metres;
/** @throws RangeError when the value is not finite. */
export const squareMetres = (value: number): SquareMetres => finite(value, 'squareMetres') as SquareMetres;
/** @throws RangeError when the value is not finite. */
export const years = (value: number): Years => finite(value, 'years') as Years;
/** @throws RangeError when the value is not finite. */
export const pascals = (value: number): Pascals => finite(value, 'pascals') as Pascals;
