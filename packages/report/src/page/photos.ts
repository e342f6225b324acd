import type { Finding, Site } from '@rootreach/core';
import { el, type Markup, text } from '../markup/markup.js';
import { isPicture } from '../markup/picture-address.js';
import { capital } from '../say/trees-said.js';
import { spanSaid, wayInSaid } from '../say/where.js';
import type { Words } from '../words/words.js';
import { part } from './frame.js';
import type { OwnerInput } from './owner-input.js';

/** As many as fit one row of the printed page. */
const MOST = 3;

/** Findings with a photo that may be shown: those of the line in question first, the newest first. */
function shown({ findings }: Site, drainId: string): (Finding & { readonly photo: string })[] {
  const ofLine = (finding: Finding): number => (finding.drain === drainId ? 0 : 1);
  return findings
    .filter((finding): finding is Finding & { readonly photo: string } => isPicture(finding.photo))
    .sort((a, b) => ofLine(a) - ofLine(b) || (b.year ?? 0) - (a.year ?? 0))
    .slice(0, MOST);
}

/** Photos from the camera; no part where there are none. */
export function photosPart({ site, segment, units }: OwnerInput, words: Words): Markup | null {
  const found = shown(site, segment.drainId);
  if (found.length === 0) return null;
  const { photos } = words.owner;
  const figures = found.map((finding) => {
    const what = capital(words.seen[finding.seen]);
    const span = spanSaid(finding.atM, finding.toM ?? finding.atM, units, words);
    const from = finding.from === null ? words.ends.upper : wayInSaid(finding.from, site, words);
    const year = finding.year === null ? '' : String(Math.floor(finding.year));
    return el(
      'figure',
      {},
      el('img', { src: finding.photo, alt: photos.alt(words.seen[finding.seen]) }),
      el('figcaption', {}, text(photos.caption(what, photos.at(span, from), year))),
    );
  });
  return part(photos.title, '', el('div', { class: 'photos' }, figures));
}
