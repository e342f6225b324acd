import type { Issue, IssueCode } from '../model/issue.js';

/** Issues of one code listed for one file before the rest are only counted. */
const LISTED = 50;
/** Codes said once for a file: the count is what matters. */
const ONCE: readonly IssueCode[] = ['kind-guessed', 'unit-guessed', 'excess-precision', 'extra-dimensions'];

interface Kind {
  readonly first: Issue;
  count: number;
  listed: number;
  /** Names already spoken of: a name that a town has on a thousand trees is said once. */
  readonly names: Set<string>;
}

/** Collects issues; a town with the same fault on every feature does not drown the reader. */
export class IssueList {
  private readonly listed: Issue[] = [];
  private readonly kinds = new Map<string, Kind>();

  add(issue: Issue): void {
    const kind = this.kindOf(issue);
    kind.count++;
    if (kind.listed >= (ONCE.includes(issue.code) ? 1 : LISTED)) return;
    if ('text' in issue) {
      if (kind.names.has(issue.text)) return;
      kind.names.add(issue.text);
    }
    kind.listed++;
    this.listed.push(issue);
  }

  private kindOf(issue: Issue): Kind {
    const key = `${issue.code} ${issue.place.file}`;
    const known = this.kinds.get(key);
    if (known) return known;
    const made: Kind = { first: issue, count: 0, listed: 0, names: new Set() };
    this.kinds.set(key, made);
    return made;
  }

  /** Listed issues, then one entry for each code that has more. */
  all(): Issue[] {
    const rest: Issue[] = [];
    for (const { first, count, listed } of this.kinds.values()) {
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
