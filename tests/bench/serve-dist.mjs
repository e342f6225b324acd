// The built page behind the plainest of web servers.
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join } from 'node:path';

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
        response.writeHead(200, { 'content-type': TYPES[extname(name)] ?? 'application/octet-stream' });
        response.end(body);
      },
      () => response.writeHead(404).end(),
    );
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => server.close() };
}
