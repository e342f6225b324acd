import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.geojson': 'application/geo+json',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.txt': 'text/plain',
};

export interface StaticServer {
  readonly origin: string;
  readonly close: () => void;
}

/**
 * Serves a folder as the plainest of web servers would, under a path of its own so that the page cannot rely
 * on standing at the root.
 * @param answers texts to answer instead of files, by path inside the folder
 */
export async function serveFolder(
  folder: string,
  answers: Readonly<Record<string, string>> = {},
): Promise<StaticServer & { readonly address: string }> {
  const server: Server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const inside = normalize(pathname.replace(/^\/some\/folder\//, '')) || 'index.html';
    const name = inside === '.' || inside === '/' ? 'index.html' : inside;
    const text = answers[name];
    const found = text === undefined ? readFile(join(folder, name)) : Promise.resolve(text);
    found.then(
      (body) => {
        response.writeHead(200, { 'content-type': TYPES[extname(name)] ?? 'application/octet-stream' });
        response.end(body);
      },
      () => {
        response.writeHead(404);
        response.end();
      },
    );
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const port = (server.address() as { port: number }).port;
  const origin = `http://127.0.0.1:${port}`;
  return { origin, address: `${origin}/some/folder/`, close: () => server.close() };
}
