import { readFile, stat } from 'node:fs/promises';
import { dirname, isAbsolute, relative, resolve } from 'node:path';
import type { Finding, Site } from '@rootreach/core';

/** First bytes by which the kinds of image are told; what a file is called proves nothing. */
const KINDS: readonly { readonly type: string; readonly starts: (bytes: Buffer) => boolean }[] = [
  { type: 'image/png', starts: (b) => b.subarray(0, 8).toString('latin1') === '\x89PNG\r\n\x1a\n' },
  { type: 'image/jpeg', starts: (b) => b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff },
  { type: 'image/gif', starts: (b) => /^GIF8[79]a/.test(b.subarray(0, 6).toString('latin1')) },
  {
    type: 'image/webp',
    starts: (b) => b.subarray(0, 4).toString() === 'RIFF' && b.subarray(8, 12).toString() === 'WEBP',
  },
];

/** A page that goes by mail should stay a page: photos larger than this are left out, bytes (judgement). */
const MOST_BYTES = 4_000_000;

async function dataOf(path: string): Promise<string | null> {
  const size = await stat(path).then(
    (found) => (found.isFile() ? found.size : null),
    () => null,
  );
  if (size === null || size > MOST_BYTES) return null;
  const bytes = await readFile(path).catch(() => null);
  const kind = bytes === null ? undefined : KINDS.find(({ starts }) => starts(bytes));
  return bytes === null || kind === undefined ? null : `data:${kind.type};base64,${bytes.toString('base64')}`;
}

/** Path of a photo beside or below the site file that names it; null for one that points elsewhere. */
function pathBeside(file: string, photo: string): string | null {
  const folder = dirname(resolve(file));
  const path = resolve(folder, photo);
  const way = relative(folder, path);
  return isAbsolute(photo) || way === '' || way.startsWith('..') || isAbsolute(way) ? null : path;
}

export interface WithPhotos {
  readonly site: Site;
  /** Photos that were named and could not be taken, as written. */
  readonly left: readonly string[];
}

/**
 * The site with photos that findings name as files beside the site file put in as data. A file that names a photo
 * elsewhere on the disk gets none: a page is sent on to others.
 */
export async function photosBeside(site: Site): Promise<WithPhotos> {
  const left: string[] = [];
  const findings: Finding[] = [];
  for (const finding of site.findings) {
    const { photo, ...bare } = finding;
    if (photo === undefined || photo.startsWith('data:')) {
      findings.push(finding);
      continue;
    }
    const path = pathBeside(finding.origin.file, photo);
    const data = path === null ? null : await dataOf(path);
    if (data === null) left.push(photo);
    findings.push(data === null ? bare : { ...bare, photo: data });
  }
  return { site: { ...site, findings }, left };
}
