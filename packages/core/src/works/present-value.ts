/**
 * What 1 a year for `years` whole years is worth now, paid at the end of each year: (1 - (1 + r)^-n) / r, as a
 * spreadsheet's PV has it.
 */
export const annuity = (rate: number, years: number): number =>
  rate === 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;

/** What an amount paid in some years is worth now. */
export const discounted = (amount: number, rate: number, yearsAhead: number): number =>
  amount / (1 + rate) ** yearsAhead;

/** Present value of visits at one interval; one that falls on the horizon itself is not paid any more. */
export function visitsValue(each: number, everyYears: number, rate: number, horizonYears: number): number {
  let sum = 0;
  for (let k = 1; k * everyYears < horizonYears - 1e-9; k++) sum += discounted(each, rate, k * everyYears);
  return sum;
}

/**
 * Present value of events that cost `each`, expected as `expectedBy` says at whole years: those of a year are taken
 * at its middle.
 */
export function troubleValue(
  each: number,
  expectedBy: (year: number) => number,
  rate: number,
  horizonYears: number,
): number {
  let sum = 0;
  for (let year = 0; year < horizonYears; year++) {
    const to = Math.min(year + 1, horizonYears);
    const events = expectedBy(to) - expectedBy(year);
    sum += discounted(each * events, rate, (year + to) / 2);
  }
  return sum;
}
