import type { Assumption, Issue, SiteReading } from '@rootreach/core';
import type { FilesReading } from '../read-files.js';
import { assumptionLines } from './assumptions.js';
import { count } from './count.js';
import { intakeLines } from './intake-lines.js';
import { bySeverity, issueLine, severityCounts } from './issues.js';
import { printable } from './printable.js';
import type { Page } from './rank-table.js';
import { siteTitle } from './site-title.js';
import { wrap } from './wrap.js';

const KINDS: readonly (readonly [kind: string, one: string, many?: string])[] = [
  ['tree', 'tree'],
  ['drain', 'line'],
  ['fitting', 'fitting'],
  ['finding', 'finding'],
  ['obstacle', 'obstacle'],
  ['barrier', 'barrier'],
  ['level', 'spot level'],
];

/** What was understood: features by kind, names of trees, materials of lines. */
function countLines({ counts }: SiteReading): string[] {
  const { features, species, materials } = counts;
  const kinds = KINDS.filter(([kind]) => (features[kind] ?? 0) > 0).map(([kind, one, many]) =>
    count(features[kind] ?? 0, one, many),
  );
  const lines = [`Read: ${kinds.length === 0 ? 'nothing that can be used' : kinds.join(', ')}.`];
  if ((features['tree'] ?? 0) > 0) {
    lines.push(
      `Trees: ${species.named} known to the species, ${species.genus} to the genus, ${species.unknown} of unknown kind.`,
    );
  }
  if ((features['drain'] ?? 0) > 0) {
    lines.push(`Lines: ${materials.named} of known material, ${materials.unknown} of unknown.`);
  }
  return lines;
}

/** What was read, what is wrong with it, and what has to be assumed to score it. */
export function checkReport(
  reading: FilesReading,
  issues: readonly Issue[],
  assumed: readonly Assumption[],
  { units, width, style }: Page,
): string {
  const found =
    issues.length === 0
      ? ['Nothing wrong was found.']
      : [
          style.strong(`Found: ${severityCounts(issues)}.`),
          ...bySeverity(issues).map((issue) => issueLine(issue, units)),
        ];
  const groups = assumptionLines(printable(assumed), units);
  const taken =
    groups.length === 0
      ? ['Nothing has to be assumed.']
      : [
          style.strong('To be assumed, since it was not given:'),
          ...groups.map((line) => `  ${wrap(line, width - 2, 4)}`),
        ];
  const { site } = reading;
  const lines = [
    style.strong(wrap(printable(siteTitle(site)), width)),
    ...reading.reports.flatMap((report) => [...intakeLines(report, width), '']),
    ...countLines(reading).map((line) => wrap(line, width)),
    '',
    ...found,
    '',
    ...taken,
  ];
  return `${lines.join('\n')}\n`;
}
