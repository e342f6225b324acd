/** @throws RangeError unless the value is finite and above 0. */
export function checkPositive(value: number, name: string): void {
  if (!(value > 0 && Number.isFinite(value))) {
    throw new RangeError(`${name} must be a finite number above 0, got ${value}`);
  }
}
