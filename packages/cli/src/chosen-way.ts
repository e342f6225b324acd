import type { RouteAlternative } from '@rootreach/core';
import { CannotDo } from './cannot-do.js';

/** The way of this letter; the one that costs least over the years where no letter is given. */
export function chosenWay(
  alternatives: readonly RouteAlternative[],
  id: string | undefined,
): RouteAlternative {
  if (id === undefined) {
    const [best] = [...alternatives].sort((a, b) => a.cost.presentValue - b.cost.presentValue);
    if (best === undefined) throw new CannotDo('there is no way to choose');
    return best;
  }
  const found = alternatives.find((route) => route.id === id);
  if (found !== undefined) return found;
  const ids = alternatives.map((route) => route.id);
  throw new CannotDo(`--choose: there is no way '${id}'; there is ${ids.join(', ')}`);
}
