import type { Place } from '../model/issue.js';
import type { IssueList } from '../read/issue-list.js';

/** Gives every feature of a kind an id of its own, over all the files read together. */
export class Ids {
  private readonly taken = new Set<string>();

  constructor(
    private readonly prefix: string,
    private readonly issues: IssueList,
  ) {}

  /** The given id, or the next free one; a repeated id gets a number and is reported. */
  take(given: string | null, place: Place): string {
    if (given === null) return this.claim(`${this.prefix}${this.taken.size + 1}`);
    const before = this.taken.size;
    this.taken.add(given);
    if (this.taken.size > before) return given;
    const renamed = this.claim(given);
    this.issues.add({
      code: 'duplicate-id',
      severity: 'warning',
      id: given,
      renamed,
      place: { ...place, feature: renamed, path: 'properties.id' },
    });
    return renamed;
  }

  private claim(wanted: string): string {
    let id = wanted;
    for (let n = 2; this.taken.has(id); n++) id = `${wanted}-${n}`;
    this.taken.add(id);
    return id;
  }
}
