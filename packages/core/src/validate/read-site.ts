import type { Issue } from '../model/issue.js';
import type { Site } from '../model/site.js';
import { IssueList } from '../read/issue-list.js';
import { parseJson, type TextInput } from '../read/parse-json.js';
import { boxHolds } from './box-holds.js';
import { type Gated, gate } from './gate.js';
import { positionsOf } from './positions.js';
import { SiteBuilder } from './site-builder.js';
import { siteInfoOf } from './site-info.js';

/** What was read: the site, what was found wrong, and counts of what was understood. */
export interface SiteReading {
  readonly site: Site;
  readonly issues: readonly Issue[];
  readonly counts: {
    readonly features: Readonly<Record<string, number>>;
    readonly species: { readonly named: number; readonly genus: number; readonly unknown: number };
    readonly materials: { readonly named: number; readonly unknown: number };
  };
}

export function countsOf(site: Site): SiteReading['counts'] {
  const species = { named: 0, genus: 0, unknown: 0 };
  for (const { species: match } of site.trees) {
    if (match.level === 'species') species.named++;
    else if (match.level === 'genus') species.genus++;
    else species.unknown++;
  }
  const named = site.drains.filter((d) => d.materialKnown).length;
  return {
    features: {
      tree: site.trees.length,
      drain: site.drains.length,
      fitting: site.fittings.length,
      finding: site.findings.length,
      obstacle: site.obstacles.length,
      barrier: site.barriers.length,
      level: site.levels.length,
    },
    species,
    materials: { named, unknown: site.drains.length - named },
  };
}

/** What is wrong with the collection itself: its members, not its features. */
export function collectionIssues(file: string, found: Gated): Issue[] {
  return [...crsIssue(file, found.root), ...collectionBoxIssue(file, found)];
}

/** Said of a site without trees or without lines. */
export function missingIssues(file: string, site: Site): Issue[] {
  const missing = (['trees', 'drains'] as const).filter((part) => site[part].length === 0);
  const place = { file, index: null, feature: null, path: '' };
  return missing.map((part) => ({ code: 'nothing-to-score', severity: 'notice', missing: part, place }));
}

function crsIssue(file: string, root: Readonly<Record<string, unknown>>): Issue[] {
  const crs = root['crs'];
  if (crs === undefined || crs === null) return [];
  const name = (crs as { properties?: { name?: unknown } }).properties?.name;
  const place = { file, index: null, feature: null, path: 'crs' };
  return [{ code: 'crs-member', severity: 'warning', name: typeof name === 'string' ? name : '', place }];
}

function collectionBoxIssue(file: string, { root, features }: Gated): Issue[] {
  const box = root['bbox'];
  if (root['type'] !== 'FeatureCollection' || !Array.isArray(box)) return [];
  if (box.length !== 4 && box.length !== 6) return [];
  const positions = features.flatMap(({ feature }) =>
    feature.geometry ? positionsOf(feature.geometry) : [],
  );
  if (boxHolds(box as number[], positions)) return [];
  const place = { file, index: null, feature: null, path: 'bbox' };
  return [{ code: 'bbox-order', severity: 'warning', place }];
}

/**
 * Texts of GeoJSON to one checked site. Several texts are read together: trees in one, lines in another.
 * Never throws for bad input: what is wrong is an issue, and the rest goes on.
 */
export function readSite(inputs: readonly TextInput[]): SiteReading {
  const issues = new IssueList();
  const gated: (Gated & { file: string })[] = [];
  for (const input of inputs) {
    const parsed = parseJson(input);
    if (!parsed.ok) {
      issues.add(parsed.issue);
      continue;
    }
    const found = gate(parsed.file, parsed.value);
    for (const issue of found.issues) issues.add(issue);
    for (const issue of collectionIssues(parsed.file, found)) issues.add(issue);
    gated.push({ ...found, file: parsed.file });
  }
  const builder = new SiteBuilder(issues, siteInfoOf(gated, issues));
  for (const { features, file } of gated) {
    for (const { feature, index } of features) builder.add(feature, file, index);
  }
  const site = builder.site();
  for (const issue of missingIssues(inputs[0]?.name ?? '', site)) issues.add(issue);
  return { site, issues: issues.all(), counts: countsOf(site) };
}
