// The built page behind the plainest of web servers: files, packed for browsers that take them so.
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.geojson': 'application/geo+json',
  '.svg': 'image/svg+xml',
};

export async function serveDist(folder) {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, 'http://localhost');
    const name = pathname === '/' ? 'index.html' : pathname.slice(1);
    readFile(join(folder, name)).then(
      (body) => {
        const type = TYPES[extname(name)];
        const packs = type !== undefined && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
        response.writeHead(200, {
          'content-type': type ?? 'application/octet-stream',
          ...(packs ? { 'content-encoding': 'gzip' } : {}),
        });
        response.end(packs ? gzipSync(body) : body);
      },
      () => response.writeHead(404).end(),
    );
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}
