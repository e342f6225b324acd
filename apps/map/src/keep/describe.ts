import type { SiteDocument } from '../sketch/document.js';
import { words } from '../words/words.js';
import type { Described } from './kept-site.js';

/** Name of a site as its file gives it. */
export function nameOf({ info }: SiteDocument): string {
  const name = info['name'];
  return typeof name === 'string' && name.trim() !== '' ? name : words.value.keep.unnamed;
}

/** What the list of sites says of a document. */
export function describe(site: SiteDocument, copyOf: string | null, writer: string): Described {
  const count = (kind: string) => site.features.filter((one) => one.properties['kind'] === kind).length;
  return { name: nameOf(site), copyOf, writer, lines: count('drain'), trees: count('tree') };
}
