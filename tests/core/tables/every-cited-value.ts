import type { Cited } from '../../../packages/core/src/sources/cited.js';

/** All cited values inside an object, with the path to each. */
export function everyCitedValue(from: unknown, path = ''): { path: string; cited: Cited<unknown> }[] {
  if (typeof from !== 'object' || from === null) return [];
  if ('source' in from && 'known' in from && 'value' in from)
    return [{ path, cited: from as Cited<unknown> }];
  return Object.entries(from).flatMap(([key, value]) => everyCitedValue(value, `${path}/${key}`));
}
