import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import type { TextInput } from '@rootreach/core';
import { contentTypes } from './content-types.js';

const OPENED = 'opened.json';
const OPENED_TAG = '<meta name="rootreach-opened" content=""';
const OFFLINE_TAG = '<meta name="rootreach-offline" content="keep"';

interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: string | Buffer;
}

const plain = (status: number, text: string): Answer => ({
  status,
  type: 'text/plain; charset=utf-8',
  body: `${text}\n`,
});

/** The file a path names inside the folder; null where it leads out of it or makes no sense. */
function fileIn(folder: string, path: string): string | null {
  let decoded: string;
  try {
    decoded = decodeURIComponent(path);
  } catch {
    return null;
  }
  if (decoded.includes('\0') || decoded.split(/[/\\]/).includes('..')) return null;
  const file = resolve(join(folder, decoded.endsWith('/') ? `${decoded}index.html` : decoded));
  return file.startsWith(folder + sep) ? file : null;
}

/**
 * The page, told where the opened files are, and not to keep itself for offline use: kept from one run, it would
 * hide the files of the next one.
 */
function told(page: string, hasOpened: boolean): string {
  const here = page.replace(OFFLINE_TAG, OFFLINE_TAG.replace('keep', 'no'));
  return hasOpened ? here.replace(OPENED_TAG, OPENED_TAG.replace('content=""', `content="${OPENED}"`)) : here;
}

async function staticAnswer(folder: string, path: string, hasOpened: boolean): Promise<Answer> {
  const file = fileIn(folder, path);
  if (file === null) return plain(403, 'not allowed');
  let body: Buffer;
  try {
    body = await readFile(file);
  } catch {
    return plain(404, 'not there');
  }
  const type = contentTypes[extname(file)] ?? 'application/octet-stream';
  if (file !== join(folder, 'index.html')) return { status: 200, type, body };
  return { status: 200, type, body: told(body.toString('utf8'), hasOpened) };
}

/** Only this machine's own names: another site's page must not reach the files through a name of its own. */
const isOwnHost = (host: string | undefined): boolean => /^(127\.0\.0\.1|localhost)(:\d+)?$/.test(host ?? '');

async function answerTo(request: IncomingMessage, folder: string, opened: string | null): Promise<Answer> {
  if (request.method !== 'GET' && request.method !== 'HEAD') return plain(405, 'only GET and HEAD');
  if (!isOwnHost(request.headers.host)) return plain(403, 'not allowed');
  const path = (request.url ?? '/').split('?')[0] as string;
  if (opened !== null && path === `/${OPENED}`) {
    return { status: 200, type: 'application/json; charset=utf-8', body: opened };
  }
  return await staticAnswer(folder, path, opened !== null);
}

function send(request: IncomingMessage, response: ServerResponse, { status, type, body }: Answer): void {
  response.writeHead(status, {
    'content-type': type,
    'content-length': Buffer.byteLength(body),
    'x-content-type-options': 'nosniff',
    'cross-origin-resource-policy': 'same-origin',
    'referrer-policy': 'no-referrer',
    'cache-control': 'no-store',
    ...(status === 405 ? { allow: 'GET, HEAD' } : {}),
  });
  response.end(request.method === 'HEAD' ? undefined : body);
}

/** Serves a built page from its folder, and the files opened with it. */
export function pageServer(folder: string, files: readonly TextInput[]): Server {
  const opened = files.length === 0 ? null : JSON.stringify({ files });
  return createServer((request, response) => {
    answerTo(request, folder, opened)
      .catch(() => plain(500, 'could not be read'))
      .then((answer) => send(request, response, answer));
  });
}
