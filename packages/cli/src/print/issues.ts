import { type Issue, type Severity, type Units, wordIssue } from '@rootreach/core';
import type { Io } from '../io.js';
import { count } from './count.js';
import { printable } from './printable.js';

const ORDER: readonly Severity[] = ['error', 'warning', 'notice'];
/** Lines on stderr before the rest are left to `check`. */
const MOST_LINES = 10;

/** Issues that a script reads: flat, with the sentence, lengths in metres. */
export function plainIssues(issues: readonly Issue[]) {
  return issues.map((issue) => ({
    code: issue.code,
    severity: issue.severity,
    file: issue.place.file,
    index: issue.place.index,
    feature: issue.place.feature,
    path: issue.place.path,
    message: wordIssue(issue),
  }));
}

/** Worst first; otherwise in the order found. */
export const bySeverity = (issues: readonly Issue[]): Issue[] =>
  ORDER.flatMap((severity) => issues.filter((issue) => issue.severity === severity));

/** `site.geojson, t2, properties.dbh_cm`. */
function placeWords({ place }: Issue): string {
  const feature = place.feature ?? (place.index === null ? null : `feature ${place.index + 1}`);
  return [place.file, feature, place.path].filter((part) => part !== null && part !== '').join(', ');
}

/** One line: severity, where, what is wrong and what was done about it. */
export const issueLine = (issue: Issue, units: Units): string =>
  printable(`${issue.severity.padEnd(8)} ${placeWords(issue)}: ${wordIssue(issue, units)}`);

/** `1 error, 2 warnings`. */
export function severityCounts(issues: readonly Issue[]): string {
  return ORDER.flatMap((severity) => {
    const n = issues.filter((issue) => issue.severity === severity).length;
    return n === 0 ? [] : [count(n, severity)];
  }).join(', ');
}

/** A short account on stderr of what was found wrong in the input. @param most lines before the rest are counted. */
export function reportIssues(issues: readonly Issue[], io: Io, units: Units, most = MOST_LINES): void {
  if (issues.length === 0) return;
  const shown = bySeverity(issues).slice(0, most);
  const lines = [
    `In the input: ${severityCounts(issues)}.`,
    ...shown.map((issue) => `  ${issueLine(issue, units)}`),
  ];
  if (issues.length > shown.length) {
    lines.push(`  and ${issues.length - shown.length} more: 'rootreach check' lists them all.`);
  }
  io.stderr.write(`${lines.join('\n')}\n`);
}
