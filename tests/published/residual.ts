import { expect } from 'vitest';

/** One check against a published value. */
export interface Check {
  readonly what: string;
  readonly got: number;
  readonly published: number;
  /** Greatest absolute difference allowed; the test that sets it says why. */
  readonly tolerance: number;
}

/** Asserts a value against its published one with the residual in the message, and returns the residual. */
export function residual({ what, got, published, tolerance }: Check): number {
  const difference = got - published;
  expect(
    Math.abs(difference),
    `${what}: got ${got}, published ${published}, residual ${difference}, tolerance ${tolerance}`,
  ).toBeLessThanOrEqual(tolerance);
  return difference;
}
