import type { Issue, Site, Units } from '@rootreach/core';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { reportIssues } from './print/issues.js';

/** Stops where there is no line to score, and says what stood in the way. */
export function needLines(site: Site, issues: readonly Issue[], io: Io, units: Units): void {
  if (site.drains.length > 0) return;
  reportIssues(issues, io, units);
  throw new CannotDo('there is no drain line to score in what was read');
}
