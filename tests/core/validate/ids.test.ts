import { describe, expect, it } from 'vitest';
import { IssueList } from '../../../packages/core/src/read/issue-list.js';
import { Ids } from '../../../packages/core/src/validate/ids.js';

const place = { file: 'f', index: 0, feature: null, path: '' };

function taken(...given: (string | null)[]) {
  const issues = new IssueList();
  const ids = new Ids('t', issues);
  return { ids: given.map((id) => ids.take(id, place)), issues: issues.all() };
}

describe('ids', () => {
  it('are kept as given', () => {
    expect(taken('elm', 'oak')).toEqual({ ids: ['elm', 'oak'], issues: [] });
  });

  it('are made where none is given, past those that are taken', () => {
    expect(taken(null, null, null).ids).toEqual(['t1', 't2', 't3']);
    expect(taken('t2', null).ids).toEqual(['t2', 't2-2']);
  });

  it('are made different where one is given twice, which is said', () => {
    const { ids, issues } = taken('elm', 'elm', 'elm', 'elm-2');
    expect(new Set(ids).size).toBe(4);
    expect(ids.slice(0, 3)).toEqual(['elm', 'elm-2', 'elm-3']);
    expect(issues).toMatchObject([
      { code: 'duplicate-id', id: 'elm', renamed: 'elm-2', severity: 'warning' },
      { code: 'duplicate-id', id: 'elm', renamed: 'elm-3' },
      { code: 'duplicate-id', id: 'elm-2' },
    ]);
  });
});
