import { readSite, ScoredSite, type Site } from '@rootreach/core';
import type { InputFile, Opened } from './tasks.js';
import { Town } from './town.js';

/** More than this is a town: not held by the page and not edited here. */
const TOWN = { segments: 3000, trees: 5000 };
/** Stretches that the page is given of a town. */
const WORST = 300;

/** A site as opened, with what stays behind in the worker. */
export interface OpenSite {
  readonly opened: Opened;
  readonly site: Site;
  readonly issues: Opened['issues'];
  readonly town: Town | null;
}

const withoutFeatures = (site: Site): Site => ({
  ...site,
  trees: [],
  drains: [],
  fittings: [],
  findings: [],
  obstacles: [],
  barriers: [],
  levels: [],
});

/** Ranks a site that was read: whole, or as a town. */
export function ranked(site: Site, issues: Opened['issues'], asOf: string): OpenSite {
  const scored = new ScoredSite(site, { asOf });
  if (scored.columns.count <= TOWN.segments && site.trees.length <= TOWN.trees) {
    return {
      opened: { site, issues, result: scored.result(), large: null, edits: 0 },
      site,
      issues,
      town: null,
    };
  }
  const town = new Town(scored);
  const result = scored.result({ top: WORST });
  const opened = { site: withoutFeatures(site), issues, result, large: town.large, edits: 0 };
  return { opened, site, issues, town };
}

/** Reads and ranks files. */
export function openSite(inputs: readonly InputFile[], asOf: string): OpenSite {
  const { site, issues } = readSite(inputs);
  return ranked(site, issues, asOf);
}
