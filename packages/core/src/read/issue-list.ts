import type { Issue, IssueCode } from '../model/issue.js';

/** Issues of one code listed for one file before the rest are only counted. */
const LISTED = 50;
/** Codes said once for a file: the count is what matters. */
const ONCE: readonly IssueCode[] = ['kind-guessed', 'unit-guessed', 'excess-precision', 'extra-dimensions'];

/** Collects issues; a town with the same fault on every feature does not drown the reader. */
export class IssueList {
  private readonly listed: Issue[] = [];
  private readonly counts = new Map<string, { first: Issue; count: number }>();

  add(issue: Issue): void {
    const key = `${issue.code} ${issue.place.file}`;
    const seen = this.counts.get(key);
    if (seen) seen.count++;
    else this.counts.set(key, { first: issue, count: 1 });
    const limit = ONCE.includes(issue.code) ? 1 : LISTED;
    if ((seen?.count ?? 1) <= limit) this.listed.push(issue);
  }

  /** Listed issues, then one entry for each code that has more. */
  all(): Issue[] {
    const rest: Issue[] = [];
    for (const { first, count } of this.counts.values()) {
      const listed = Math.min(count, ONCE.includes(first.code) ? 1 : LISTED);
      if (count === listed) continue;
      rest.push({
        code: 'more-of-the-same',
        severity: first.severity,
        of: first.code,
        count: count - listed,
        place: { file: first.place.file, index: null, feature: null, path: '' },
      });
    }
    return [...this.listed, ...rest];
  }
}
