import { type Issue, readSite, type SeasonSite, type Site, type TextInput } from '@rootreach/core';
import { wordIntake } from '@rootreach/intake';
import type { Args } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Io } from './io.js';
import { printable } from './print/printable.js';
import { gather, intakeOptionsFrom } from './taking-in.js';

export interface SeasonSites {
  readonly sites: readonly SeasonSite[];
  readonly issues: readonly Issue[];
}

const bareName = (path: string): string => path.replace(/^.*[\\/]/, '').replace(/\.[^.]+$/, '');

/** Files of one client: those that give the site the same name; one without a name is a site of its own. */
function byClient(inputs: readonly TextInput[]): Map<string, TextInput[]> {
  const clients = new Map<string, TextInput[]>();
  for (const input of inputs) {
    const { name } = readSite([input]).site;
    const key = name ?? `file ${input.name}`;
    clients.set(key, [...(clients.get(key) ?? []), input]);
  }
  return clients;
}

/** Reads every client's site; what is no site is said. */
export async function seasonSites(args: Args, io: Io): Promise<SeasonSites> {
  if (args.files.length === 0) throw new CannotDo('name the files of the sites, one or more a site');
  const { inputs, reports, issues: unread } = await gather(args.files, await intakeOptionsFrom(args), io);
  for (const report of reports) io.stderr.write(`${printable(wordIntake(report))}.\n`);
  const issues: Issue[] = [...unread];
  const sites: SeasonSite[] = [];
  for (const files of byClient(inputs).values()) {
    const reading = readSite(files);
    issues.push(...reading.issues);
    if (reading.site.drains.length > 0)
      sites.push({ name: bareName(files[0]?.name ?? ''), site: reading.site });
  }
  if (sites.length === 0) throw new CannotDo('there is no drain line in what was read');
  return { sites, issues };
}

/** Units that all sites share, else metric. */
export function sharedUnits(sites: readonly { readonly site: Site }[]): 'us' | 'metric' {
  const [first, ...others] = new Set(sites.map(({ site }) => site.units));
  return (others.length === 0 ? first : null) ?? 'metric';
}
