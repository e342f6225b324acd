import type { Interval } from '../geometry/intervals.js';
import type { Sighting } from '../infer/likelihood.js';
import type { LineModel } from '../line/line-model.js';
import type { RiskContext } from './context.js';
import { exposureOf } from './exposure.js';
import { groupsOf } from './groups.js';
import type { KnownByLine } from './known.js';
import { distinctOf, type Seen, seenOf } from './sightings.js';

/** What the camera said of one group of openings in one stretch, against what the model expected there. */
export interface Observation extends Sighting {
  readonly drainId: string;
  /** The line among those of all sites: its id and where it begins. */
  readonly line: string;
  readonly group: string;
  /** Date, fractional year, and since when the stretch was known clean (the latest, where its parts differ). */
  readonly year: number;
  readonly sinceYear: number;
  readonly fromM: number;
  readonly toM: number;
}

/** More places of entry than this a metre nobody has counted: the figure is taken as "some" (judgement). */
const MOST_PER_METRE = 4;

/** Parts of a line between all the places where anything seen begins or ends. */
interface Part {
  readonly interval: Interval;
  /** Year since when it is known clean, and whether roots are known to be in it. */
  cleanSince: number;
  roots: boolean;
}

function partsOf(line: LineModel, seen: readonly Seen[], since: number): Part[] {
  const cuts = [...new Set(seen.flatMap((s) => s.interval))].sort((a, b) => a - b);
  return cuts
    .slice(1)
    .map((to, i) => ({
      interval: [cuts[i] as number, to] as const,
      cleanSince: since,
      roots: false,
    }))
    .filter(({ interval }) => interval[1] <= line.lengthM + 1e-9);
}

const covers = (outer: Interval, inner: Interval): boolean => outer[0] <= inner[0] && outer[1] >= inner[1];

/** Neighbouring parts with the same past become one stretch again. */
function rejoined(parts: readonly Part[]): { interval: Interval; cleanSince: number }[] {
  const stretches: { interval: [number, number]; cleanSince: number }[] = [];
  for (const { interval, cleanSince } of parts) {
    const last = stretches[stretches.length - 1];
    if (last && last.interval[1] === interval[0] && last.cleanSince === cleanSince)
      last.interval[1] = interval[1];
    else stretches.push({ interval: [interval[0], interval[1]], cleanSince });
  }
  return stretches;
}

/** Entries that may be counted on, or null for "some". */
function countOf({ entries, interval, atM }: Seen, partlyKnown: boolean): number | null {
  // of a count over a stretch in part known, nobody can say how many are new
  if (entries === null || (partlyKnown && atM === null)) return null;
  return entries > Math.max(1, interval[1] - interval[0]) * MOST_PER_METRE ? null : entries;
}

type Span = Pick<Observation, 'year' | 'sinceYear'>;

/** Follows one line through its camera runs, oldest first. */
class LineHistory {
  readonly observations: Observation[] = [];
  private readonly parts: Part[];
  private readonly installed: number;

  constructor(
    private readonly context: RiskContext,
    private readonly line: LineModel,
    all: readonly Seen[],
  ) {
    const { drain, pipe } = line;
    this.installed = drain.installedYear ?? context.nowYear - pipe.assumedAgeYears.value;
    this.parts = partsOf(line, all, this.installed);
  }

  /** Digging or cutting between the last run and this one takes the roots out. */
  private clearedBy(year: number): void {
    const { dugYear, cutYear } = this.line.drain;
    for (const cleared of [dugYear, cutYear]) {
      if (cleared === null || cleared >= year) continue;
      for (const part of this.parts) {
        if (cleared <= part.cleanSince) continue;
        part.cleanSince = cleared;
        part.roots = false;
      }
    }
  }

  private expected(parts: readonly Part[], year: number): { entry: number; crush: number } {
    let entry = 0;
    let crush = 0;
    for (const { interval, cleanSince } of rejoined(parts)) {
      const e = exposureOf(this.context, this.line, interval, cleanSince, year);
      entry += e.entry;
      crush += e.crush;
    }
    return { entry, crush };
  }

  private note(
    what: Pick<Observation, 'group' | 'saw' | 'entries' | 'expected'>,
    when: Span,
    at: Interval,
  ): void {
    const { drain } = this.line;
    this.observations.push({
      ...what,
      drainId: drain.id,
      line: `${drain.id} @ ${drain.path[0]?.join(' ')}`,
      year: when.year,
      sinceYear: when.sinceYear,
      fromM: at[0],
      toM: at[1],
    });
  }

  /** Whether roots are known at the place of a point: then it is the same ones again, a little off on the counter. */
  private knownAt(atM: number | null): boolean {
    if (atM === null) return false;
    return this.parts.some(({ interval, roots }) => roots && interval[0] <= atM && atM <= interval[1]);
  }

  /** Roots or a break in one stretch; where they were known already, nothing new is learned. */
  private found(one: Seen, again: boolean, parts: readonly Part[], year: number): void {
    const fresh = again ? [] : parts.filter((p) => !p.roots);
    const [first, last] = [fresh[0], fresh[fresh.length - 1]];
    if (first && last) {
      const expected = this.expected(fresh, year);
      const groups = groupsOf(this.line);
      const crushed = one.sight === 'crushed';
      const entries = countOf(one, fresh.length < parts.length);
      const what = {
        group: crushed ? groups.crush : groups.entry,
        saw: entries === null ? ('some' as const) : ('count' as const),
        entries: entries ?? 0,
        expected: crushed ? expected.crush : expected.entry,
      };
      const when = { year, sinceYear: Math.max(...fresh.map((p) => p.cleanSince)) };
      this.note(what, when, [first.interval[0], last.interval[1]]);
    }
    for (const part of parts) part.roots = true;
  }

  private clear(parts: readonly Part[], year: number): void {
    const groups = groupsOf(this.line);
    const fresh = parts.filter((p) => !p.roots && p.cleanSince < year);
    for (const { interval, cleanSince } of rejoined(fresh)) {
      const { entry, crush } = exposureOf(this.context, this.line, interval, cleanSince, year);
      const when = { year, sinceYear: cleanSince };
      this.note({ group: groups.entry, saw: 'none', entries: 0, expected: entry }, when, interval);
      this.note({ group: groups.crush, saw: 'none', entries: 0, expected: crush }, when, interval);
    }
    for (const part of parts) {
      part.cleanSince = year;
      part.roots = false;
    }
  }

  /** One day's run: what was found counts before what is said to be clear. */
  run(year: number, seen: readonly Seen[]): void {
    if (year <= this.installed) return;
    this.clearedBy(year);
    const taken = new Set<Part>();
    const found = [...distinctOf(seen, 'crushed'), ...distinctOf(seen, 'roots')];
    // asked of all before any of them is noted
    const again = new Set(found.filter((one) => this.knownAt(one.atM)));
    for (const one of found) {
      const parts = this.parts.filter((p) => covers(one.interval, p.interval) && !taken.has(p));
      for (const part of parts) taken.add(part);
      this.found(one, again.has(one), parts, year);
    }
    const said = seen.filter((s) => s.sight === 'clear');
    const clear = this.parts.filter((p) => !taken.has(p) && said.some((s) => covers(s.interval, p.interval)));
    this.clear(clear, year);
  }
}

/**
 * Turns what cameras saw into observations to learn from: for each line its runs in order of date, each stretch
 * held against what the model expected there since it was last known clean. Roots seen twice without having been
 * taken out count once. Findings without a date, and sags and offsets, say nothing of entry and are passed over.
 */
export function observationsOf(context: RiskContext, known: KnownByLine): Observation[] {
  const observations: Observation[] = [];
  for (const [number, placed] of [...known].sort((a, b) => a[0] - b[0])) {
    const line = context.lines.at(number);
    const dated = placed.flatMap((p) => {
      const seen = p.finding.year === null ? null : seenOf(line, p);
      return seen === null ? [] : [{ year: p.finding.year as number, seen }];
    });
    const history = new LineHistory(
      context,
      line,
      dated.map((d) => d.seen),
    );
    for (const year of [...new Set(dated.map((d) => d.year))].sort((a, b) => a - b)) {
      history.run(
        year,
        dated.filter((d) => d.year === year).map((d) => d.seen),
      );
    }
    observations.push(...history.observations);
  }
  return observations;
}
