import type { SiteDocument } from '../sketch/document.js';
import { nameOf } from './describe.js';
import { fileText } from './file-text.js';

/** A name that every system takes: letters and digits of any script, the rest as hyphens. */
export function fileNameOf(site: SiteDocument): string {
  const plain = nameOf(site)
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 80);
  return `${plain === '' ? 'site' : plain.toLowerCase()}.geojson`;
}

/** Hands the site to the user as a GeoJSON file. */
export function saveFile(site: SiteDocument): void {
  const blob = new Blob([`${fileText(site, 2)}\n`], { type: 'application/geo+json' });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = fileNameOf(site);
  link.click();
  // the download has its own hold on the data once it has begun
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
