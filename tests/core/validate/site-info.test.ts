import { describe, expect, it } from 'vitest';
import { IssueList } from '../../../packages/core/src/read/issue-list.js';
import { siteInfoOf } from '../../../packages/core/src/validate/site-info.js';

function info(...members: unknown[]) {
  const issues = new IssueList();
  const roots = members.map((rootreach, i) => ({ file: `f${i + 1}`, root: { rootreach } }));
  return { ...siteInfoOf(roots, issues), issues: issues.all() };
}

describe('what a site says of itself', () => {
  it('is nothing where there is no such member', () => {
    expect(info(undefined)).toEqual({
      name: null,
      invented: false,
      units: null,
      soil: null,
      biome: null,
      protection: 'trunk-multiple',
      rainMmPerHour: null,
      issues: [],
    });
  });

  it('is taken as given', () => {
    const given = {
      schema: 1,
      name: 'yard',
      units: 'us',
      soil: 'clay',
      protection: 'foot-per-inch',
      rain_mm_h: 80,
    };
    expect(info(given)).toMatchObject({
      name: 'yard',
      units: 'us',
      soil: 'clay',
      protection: 'foot-per-inch',
      rainMmPerHour: 80,
      issues: [],
    });
  });

  it('is put together from several files, the earlier one counting', () => {
    expect(info({ name: 'first', soil: 'sand' }, { name: 'second', units: 'metric' })).toMatchObject({
      name: 'first',
      soil: 'sand',
      units: 'metric',
    });
  });

  it('is set aside with an issue where it makes no sense', () => {
    const found = info({ name: 'yard', soil: 'marsh' });
    expect(found.name).toBeNull();
    expect(found.issues).toMatchObject([
      { code: 'bad-value', severity: 'error', place: { file: 'f1', index: null, path: 'properties.soil' } },
    ]);
  });

  it.each([null, 7, 'yard'])('may be something else of that name: %s', (other) => {
    expect(info(other)).toMatchObject({ name: null, issues: [] });
  });
});
