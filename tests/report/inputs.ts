import { readFileSync } from 'node:fs';
import {
  type DecideResult,
  decide,
  oddsOverYears,
  rank,
  readSite,
  type Site,
} from '../../packages/core/src/index.js';
import type { Language, OwnerInput } from '../../packages/report/src/index.js';

export const AS_OF = '2026-11-25';

const demo = (name: string): string =>
  readFileSync(new URL(`../../data/sites/${name}.geojson`, import.meta.url), 'utf8');

export const DEMOS = ['corner-lot', 'french-drain-plan', 'small-campus'] as const;

/** The smallest PNG there is: one pixel. */
export const PIXEL =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

interface Feature {
  readonly type: 'Feature';
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: unknown;
}

export const finding = (properties: Readonly<Record<string, unknown>>): Feature => ({
  type: 'Feature',
  properties: { kind: 'finding', ...properties },
  geometry: null,
});

const bareSites = new Map<string, Site>();

/** A demo site, with what a camera saw put in. */
export function siteOf(name: (typeof DEMOS)[number], findings: readonly Feature[] = []): Site {
  const bare = findings.length === 0 ? bareSites.get(name) : undefined;
  if (bare !== undefined) return bare;
  const site = readDemo(name, findings);
  if (findings.length === 0) bareSites.set(name, site);
  return site;
}

function readDemo(name: string, findings: readonly Feature[]): Site {
  const file = JSON.parse(demo(name)) as { features: Feature[] };
  return readSite([{ name, text: JSON.stringify({ ...file, features: [...file.features, ...findings] }) }])
    .site;
}

/** Roots that fill part of the clay tail, and fine ones at the tee: as a crew would write them down. */
export const TAIL_FULL = [
  finding({
    id: 'seen-1',
    drain: 'tail',
    from: 'CO1',
    at_ft: 12,
    to_ft: 22,
    seen: 'full',
    blocked_pct: 100,
    date: '2026-11-20',
    photo: PIXEL,
  }),
  finding({
    id: 'seen-2',
    drain: 'collector',
    from: 'CO1',
    at_ft: 31,
    seen: 'fine',
    date: '2026-11-20',
    photo: PIXEL,
  }),
];

interface Wanted {
  readonly segment?: string;
  readonly language?: Language;
  readonly units?: 'us' | 'metric';
  readonly by?: string;
  readonly choices?: boolean;
}

type WorkedOut = Pick<OwnerInput, 'result' | 'segment' | 'odds'> & { readonly decided: DecideResult };

const workedOut = new WeakMap<Site, Map<string, WorkedOut>>();

/** What the core makes of a stretch, once for all tests of a file. */
function workOut(site: Site, segment: string | undefined): WorkedOut {
  const known = workedOut.get(site) ?? new Map<string, WorkedOut>();
  workedOut.set(site, known);
  const before = known.get(segment ?? '');
  if (before !== undefined) return before;
  const result = rank(site, { asOf: AS_OF });
  const found = result.segments.find(({ id }) => id === segment) ?? result.segments[0];
  if (found === undefined) throw new Error('the site has no stretch');
  const made = {
    result,
    segment: found,
    odds: oddsOverYears(site, found.id, { asOf: AS_OF }) ?? [],
    decided: decide(site, { segment: found.id }, { asOf: AS_OF }),
  };
  known.set(segment ?? '', made);
  return made;
}

/** Everything a page needs about a stretch, the worst one if none is named. */
export function ownerInput(site: Site, wanted: Wanted = {}): OwnerInput {
  const { decided, ...common } = workOut(site, wanted.segment);
  return {
    site,
    ...common,
    language: wanted.language ?? 'en',
    units: wanted.units ?? site.units ?? 'metric',
    ...(wanted.by === undefined ? {} : { by: wanted.by }),
    ...(wanted.choices === false ? {} : { decided }),
  };
}
