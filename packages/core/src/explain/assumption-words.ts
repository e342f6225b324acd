import type { Assumption } from '../model/issue.js';

/** `canopyRadiusM 4.82: canopy not given ...` as a sentence without the path. */
export function wordAssumption({ path, value, why }: Assumption): string {
  const [, id, field] = path.split('/');
  return `${id} ${field} = ${value}: ${why}`;
}
