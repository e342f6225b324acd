import type { Feature, FeatureCollection } from 'geojson';
import type { Issue } from '../model/issue.js';
import type { Site } from '../model/site.js';
import { IssueList } from '../read/issue-list.js';
import { textOf } from '../read/text-of.js';
import { gate, ruleBrokenBy } from './gate.js';
import { collectionIssues, countsOf, missingIssues, readSite, type SiteReading } from './read-site.js';
import { SiteBuilder } from './site-builder.js';
import { type SiteInfo, siteInfoOf } from './site-info.js';

const PARTS = ['trees', 'drains', 'fittings', 'findings', 'obstacles', 'barriers', 'levels'] as const;
type Part = (typeof PARTS)[number];

/** Issues one by one: which of many are listed is decided when all are put together. */
class EveryIssue extends IssueList {
  readonly found: Issue[] = [];

  override add(issue: Issue): void {
    this.found.push(issue);
  }
}

/** What one feature came to. */
interface ReadFeature {
  readonly index: number;
  readonly issues: readonly Issue[];
  readonly part: Part | null;
  readonly made: { readonly id: string } | null;
}

/** A collection's own members, by value. */
interface Head {
  readonly members: FeatureCollection;
  readonly key: string;
  readonly info: SiteInfo;
  readonly issues: readonly Issue[];
}

/** Values of a collection without its features. */
const membersOf = (collection: FeatureCollection): FeatureCollection => ({ ...collection, features: NONE });
const NONE: Feature[] = [];

/** True where every member is the very one of before. */
function areSame(a: FeatureCollection, b: FeatureCollection): boolean {
  const names = Object.keys(b) as (keyof FeatureCollection)[];
  return names.length === Object.keys(a).length && names.every((name) => a[name] === b[name]);
}

/**
 * Reads one collection again and again while it is edited. A feature that is the very object of before, at the
 * same place in the list, is not read again, and what it came to is the very object of before. The reading is that
 * of `readSite` for the same collection as text.
 */
export class SiteReader {
  private head: Head | null = null;
  private read = new WeakMap<Feature, ReadFeature>();

  /** @param file name that issues speak of. */
  constructor(private readonly file: string) {}

  /** @param collection never changed in place between two calls. */
  take(collection: FeatureCollection): SiteReading {
    const head = this.headOf(collection);
    const found = head && this.featuresOf(collection.features, head.info);
    return head && found ? this.together(head, found) : this.anew(collection);
  }

  /** The long way round, for whatever is not plain: broken features, names that are given twice, boxes. */
  private anew(collection: FeatureCollection): SiteReading {
    return readSite([{ name: this.file, text: JSON.stringify(collection) }]);
  }

  /** Null where the features must be looked at together with the collection. */
  private headOf(collection: FeatureCollection): Head | null {
    if (collection.bbox !== undefined) return null;
    const members = membersOf(collection);
    // a picture under the sketch may be megabytes of text: it is not written out where nothing was exchanged
    if (this.head && areSame(this.head.members, members)) return this.head;
    const key = JSON.stringify(members);
    if (this.head?.key === key) {
      this.head = { ...this.head, members };
      return this.head;
    }
    const gated = gate(this.file, members);
    const issues = new EveryIssue();
    for (const issue of [...gated.issues, ...collectionIssues(this.file, gated)]) issues.add(issue);
    const info = siteInfoOf([{ file: this.file, root: gated.root }], issues);
    this.read = new WeakMap();
    this.head = { members, key, info, issues: issues.found };
    return this.head;
  }

  private featuresOf(features: readonly Feature[], info: SiteInfo): ReadFeature[] | null {
    const taken = new Set<string>();
    const all: ReadFeature[] = [];
    for (const [index, feature] of features.entries()) {
      const found = this.featureAt(feature, index, info);
      if (found === null) return null;
      // without an id of its own, what a feature is called hangs on those before it
      const given = feature.properties?.['id'] ?? feature.id ?? '';
      const kind = feature.properties?.['kind'] ?? found.part;
      const name = `${textOf(kind)} ${textOf(given)}`;
      if (kind !== null && (given === '' || taken.has(name))) return null;
      taken.add(name);
      all.push(found);
    }
    return all;
  }

  private featureAt(feature: Feature, index: number, info: SiteInfo): ReadFeature | null {
    const known = this.read.get(feature);
    if (known?.index === index) return known;
    if (typeof feature !== 'object' || feature === null || ruleBrokenBy(feature) !== null) return null;
    const issues = new EveryIssue();
    const builder = new SiteBuilder(issues, info);
    builder.add(feature, this.file, index);
    const site = builder.site();
    const part = PARTS.find((one) => site[one].length > 0) ?? null;
    const found = { index, issues: issues.found, part, made: part && (site[part][0] ?? null) };
    this.read.set(feature, found);
    return found;
  }

  private together(head: Head, found: readonly ReadFeature[]): SiteReading {
    const parts = Object.fromEntries(PARTS.map((part) => [part, []])) as unknown as Record<Part, unknown[]>;
    const issues = new IssueList();
    for (const issue of head.issues) issues.add(issue);
    for (const { part, made, issues: own } of found) {
      if (part !== null) parts[part].push(made);
      for (const issue of own) issues.add(issue);
    }
    const site = { ...head.info, ...parts } as unknown as Site;
    for (const issue of missingIssues(this.file, site)) issues.add(issue);
    return { site, issues: issues.all(), counts: countsOf(site) };
  }
}
