import type { Site } from '../model/site.js';
import type { IssueList } from '../read/issue-list.js';
import { checkProperties, tidy } from './property-reader.js';
import { siteInfoSchema } from './schemas.js';

/** What a site says of itself, without its features. */
export type SiteInfo = Omit<
  Site,
  'trees' | 'drains' | 'fittings' | 'findings' | 'obstacles' | 'barriers' | 'levels'
>;

const NOTHING: SiteInfo = {
  name: null,
  invented: false,
  units: null,
  soil: null,
  biome: null,
  protection: 'trunk-multiple',
  rainMmPerHour: null,
};

function infoOf(file: string, root: Readonly<Record<string, unknown>>, issues: IssueList): Partial<SiteInfo> {
  const member = root['rootreach'];
  if (typeof member !== 'object' || member === null) return {};
  const values = tidy(member as Record<string, unknown>);
  const place = { file, index: null, feature: null, path: 'rootreach' };
  if (!checkProperties(siteInfoSchema, values, place, issues)) return {};
  const info = siteInfoSchema.parse(values);
  return {
    ...(info.name === undefined ? {} : { name: info.name }),
    ...(info.invented === undefined ? {} : { invented: info.invented }),
    ...(info.units === undefined ? {} : { units: info.units }),
    ...(info.soil === undefined ? {} : { soil: info.soil }),
    ...(info.biome === undefined ? {} : { biome: info.biome }),
    ...(info.protection === undefined ? {} : { protection: info.protection }),
    ...(info.rain_mm_h === undefined ? {} : { rainMmPerHour: info.rain_mm_h }),
  };
}

/** One account of the site from all files read together; an earlier file's word counts. */
export function siteInfoOf(
  roots: readonly { file: string; root: Readonly<Record<string, unknown>> }[],
  issues: IssueList,
): SiteInfo {
  const info = { ...NOTHING };
  for (const { file, root } of [...roots].reverse()) Object.assign(info, infoOf(file, root, issues));
  return info;
}
