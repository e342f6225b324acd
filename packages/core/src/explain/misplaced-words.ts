import type { Misplaced } from '../model/issue.js';

/** A length as the reader measures. */
type LengthWords = (lengthM: number) => string;

/** Why a finding has no place on the lines. */
export function wordMisplaced(reason: Misplaced, length: LengthWords): string {
  switch (reason.kind) {
    case 'no-line':
      return `there is no line '${reason.line}'`;
    case 'no-fitting':
      return `there is no fitting '${reason.fitting}'`;
    case 'fitting-on-no-line':
      return `fitting '${reason.fitting}' lies on no line`;
    case 'no-way':
      return (
        `there is no way along the pipes from fitting '${reason.fitting}' to line '${reason.line}' ` +
        `within ${length(reason.withinM)} and without turning back`
      );
    case 'past-end': {
      const where = reason.parts ? ', where several pipes go on and nothing tells which' : '';
      return `the reel ran ${length(reason.byM)} past the end of line '${reason.line}'${where}`;
    }
    case 'before-line':
      return `the counter points at line '${reason.pointsAt}', ${length(reason.byM)} before line '${reason.line}' is reached`;
    case 'past-line':
      return `the counter points at line '${reason.pointsAt}', ${length(reason.byM)} past the end of line '${reason.line}'`;
  }
}
