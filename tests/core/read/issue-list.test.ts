import { describe, expect, it } from 'vitest';
import type { IssueDetail } from '../../../packages/core/src/model/issue.js';
import { IssueList } from '../../../packages/core/src/read/issue-list.js';

function listOf(detail: IssueDetail, times: number, file = 'f', into = new IssueList()): IssueList {
  for (let index = 0; index < times; index++) {
    into.add({ ...detail, severity: 'warning', place: { file, index, feature: null, path: '' } });
  }
  return into;
}

describe('the list of issues', () => {
  it('holds the first fifty of a kind and counts the rest', () => {
    expect(listOf({ code: 'holes' }, 50).all()).toHaveLength(50);
    const more = listOf({ code: 'holes' }, 53).all();
    expect(more).toHaveLength(51);
    expect(more[50]).toEqual({
      code: 'more-of-the-same',
      of: 'holes',
      count: 3,
      severity: 'warning',
      place: { file: 'f', index: null, feature: null, path: '' },
    });
  });

  it('says once what concerns a whole file', () => {
    expect(listOf({ code: 'kind-guessed', kind: 'tree' }, 1).all()).toHaveLength(1);
    expect(listOf({ code: 'kind-guessed', kind: 'tree' }, 9).all()).toMatchObject([
      { code: 'kind-guessed' },
      { code: 'more-of-the-same', count: 8 },
    ]);
  });

  it('says a name once, however many trees bear it', () => {
    const list = listOf({ code: 'species-unknown', text: 'Zzz' }, 9);
    expect(listOf({ code: 'species-unknown', text: 'Yyy' }, 1, 'f', list).all()).toMatchObject([
      { text: 'Zzz' },
      { text: 'Yyy' },
      { code: 'more-of-the-same', of: 'species-unknown', count: 8 },
    ]);
  });

  it('counts by file', () => {
    const list = listOf({ code: 'holes' }, 50, 'one');
    expect(listOf({ code: 'holes' }, 50, 'two', list).all()).toHaveLength(100);
  });
});
