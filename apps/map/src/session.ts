import { type Box, type LineDetail, Rescorer, type SegmentResult, SiteReader } from '@rootreach/core';
import type { FeatureCollection } from 'geojson';
import type { View } from './large.js';
import { type ListPatch, patchedList } from './list-patch.js';
import { type OpenSite, openSite, ranked } from './open-site.js';
import { asSent, NOTHING_SENT, type OpenedPatch, openedPatch } from './opened-patch.js';
import { asOfFor, type Question, supposed } from './question.js';
import type { SketchFeature } from './sketch/document.js';
import type { InputFile, Opened } from './tasks.js';

/** What changed in the sketch since it was last sent. */
export interface SketchPatch {
  /** Of the file, for what is found wrong in it. */
  readonly name: string;
  readonly features: ListPatch<SketchFeature>;
  /** The collection's own members; null where they are those last sent. */
  readonly members: Readonly<Record<string, unknown>> | null;
  /** True for the first of a site: nothing that was sent before counts. */
  readonly anew: boolean;
}

/** Stretches that are told on either side of the chosen one. */
const BESIDE = 60;

/** The sketch as the worker follows it. */
interface Followed {
  readonly name: string;
  readonly reader: SiteReader;
  readonly rescorer: Rescorer;
  features: readonly SketchFeature[];
  members: Readonly<Record<string, unknown>>;
  sent: Opened;
  current: Pick<Opened, 'site' | 'issues'>;
}

const follow = (name: string): Followed => ({
  name,
  reader: new SiteReader(name),
  rescorer: new Rescorer(),
  features: [],
  members: {},
  sent: NOTHING_SENT,
  current: NOTHING_SENT,
});

/** The model's side of the page: holds the open site and answers about it. */
export class Session {
  private held: OpenSite | null = null;
  private sketch: Followed | null = null;

  open(inputs: readonly InputFile[], asOf: string): Opened {
    this.sketch = null;
    const found = openSite(inputs, asOf);
    // a file with nothing to score is not shown: the page goes on with the site it has
    const { drains, trees } = found.opened.result.totals;
    if (drains > 0 || trees > 0) this.held = found;
    return found.opened;
  }

  /** The site that was opened, asked another way: for one that is not edited. */
  ask(question: Question): Opened {
    if (this.held === null) throw new Error('no site is open');
    const { site, issues } = this.held;
    const asked = ranked(supposed(site, question), issues, asOfFor(question));
    this.held = { ...asked, site };
    return { ...asked.opened, edits: 1 };
  }

  /** Takes a step of the sketch: closed-form ranges at once, until it is settled. */
  take({ name, features, members, anew }: SketchPatch, question: Question): void {
    if (anew || this.sketch?.name !== name) this.sketch = follow(name);
    const { sketch } = this;
    sketch.features = patchedList(sketch.features, features);
    sketch.members = members ?? sketch.members;
    const collection = { type: 'FeatureCollection', ...sketch.members, features: sketch.features };
    sketch.current = sketch.reader.take(collection as unknown as FeatureCollection);
    sketch.rescorer.take(supposed(sketch.current.site, question), asOfFor(question));
  }

  private followed(): Followed {
    if (this.sketch === null) throw new Error('no sketch is followed');
    return this.sketch;
  }

  /** Samples so many rows more. @returns true when none is left. */
  settle(most: number): boolean {
    return this.followed().rescorer.settle(most);
  }

  /** What changed since the last answer. */
  changes(): OpenedPatch {
    const sketch = this.followed();
    const result = sketch.rescorer.result();
    const sent = new Map<string, SegmentResult>(sketch.sent.result.segments.map((row) => [row.id, row]));
    const { site, issues } = sketch.current;
    const now: Opened = {
      site,
      issues,
      result: { ...result, segments: asSent(sent, result.segments) },
      large: null,
      edits: 0,
    };
    const patch = openedPatch(sketch.sent, now);
    sketch.sent = now;
    return patch;
  }

  /** What to draw of a town; null where no town is open. */
  view(box: Box, metresPerPixel: number): View | null {
    return this.held?.town?.view(box, metresPerPixel) ?? null;
  }

  /** Id of a town's stretch nearest to a place. */
  nearest(lon: number, lat: number, withinM: number): string | null {
    return this.held?.town?.nearest(lon, lat, withinM) ?? null;
  }

  /** A town's stretch in full, with its line and trees. */
  around(id: string): LineDetail | null {
    return this.held?.town?.around(id, BESIDE) ?? null;
  }
}
