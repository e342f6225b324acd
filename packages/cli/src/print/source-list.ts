import { bibliography, type Factor, relations, type SourceKey } from '@rootreach/core';
import { wordKnown } from './known.js';

/** A source, what it is used for, and how well we know that. */
export interface SourceUse {
  readonly key: SourceKey;
  readonly known: Factor['known'];
  readonly usedFor: readonly string[];
}

/** Published sources behind a segment's numbers, each once; our own choices stand beside the numbers. */
export function sourcesBehind(factors: readonly Factor[]): SourceUse[] {
  const uses = new Map<string, { key: SourceKey; known: Factor['known']; usedFor: string[] }>();
  for (const { what, source, known } of [...factors, ...relations]) {
    if (source === 'our-judgement') continue;
    const id = `${source} ${known}`;
    const use = uses.get(id) ?? { key: source, known, usedFor: [] };
    if (!use.usedFor.includes(what)) use.usedFor.push(what);
    uses.set(id, use);
  }
  return [...uses.values()];
}

interface Source {
  readonly title: string;
  readonly where: string;
  readonly authors?: string;
  readonly year?: number;
}

/** `Day and others 2010`; a standard by its number; a leaflet by its title. */
function shortName(source: Source): string {
  if (source.authors === undefined) {
    const isStandard = /\d/.test(source.where) && source.where.length < source.title.length;
    return isStandard ? source.where : `${source.title}, ${source.where}`;
  }
  const names = source.authors.split(';').map((name) => name.split(',')[0]?.trim() ?? '');
  const who = names.length > 2 ? `${names[0]} and others` : names.join(' and ');
  return source.year === undefined ? who : `${who} ${source.year}`;
}

/** `Day and others 2010 (read): root radius about 38 trunk diameters in young trees`. */
export const wordSource = ({ key, known, usedFor }: SourceUse): string =>
  `${shortName(bibliography[key])} (${wordKnown[known]}): ${usedFor.join('; ')}.`;

/** The same for scripts, with the whole title. */
export const plainSources = (uses: readonly SourceUse[]) =>
  uses.map((use) => ({ ...use, title: bibliography[use.key].title, where: bibliography[use.key].where }));
