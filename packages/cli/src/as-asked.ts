import { CannotDo } from './cannot-do.js';

/** Does what was asked for; the core says with a range error that it makes no sense, which is told as such. */
export function asAsked<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) throw new CannotDo(error.message);
    throw error;
  }
}
