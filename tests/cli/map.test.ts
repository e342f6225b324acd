import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CORNER_LOT, FRENCH_DRAIN, here } from './call.js';

interface Running {
  readonly child: ChildProcess;
  readonly address: string;
}

/** Starts the map server and waits for its address. */
function serve(...argv: string[]): Promise<Running> {
  const child = spawn(process.execPath, [here('packages/cli/dist/main.js'), 'map', ...argv]);
  return new Promise((done, fail) => {
    let out = '';
    let err = '';
    child.stderr.on('data', (chunk: Buffer) => {
      err += chunk.toString();
    });
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString();
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(out)?.[0];
      if (address !== undefined) done({ child, address });
    });
    child.once('close', () => fail(new Error(`the server ended: ${err}`)));
  });
}

const ended = (child: ChildProcess): Promise<unknown> => new Promise((done) => child.once('close', done));

/** Asks for a path as it stands, dots and all. */
function ask(address: string, path: string, options: { method?: string; host?: string } = {}) {
  const { hostname, port } = new URL(address);
  return new Promise<{ status: number; type: string; nosniff: boolean; body: string }>((done, fail) => {
    const headers = options.host === undefined ? {} : { host: options.host };
    const asked = request({ hostname, port, path, method: options.method ?? 'GET', headers }, (answer) => {
      let body = '';
      answer.setEncoding('utf8');
      answer.on('data', (chunk: string) => {
        body += chunk;
      });
      answer.on('end', () =>
        done({
          status: answer.statusCode ?? 0,
          type: answer.headers['content-type'] ?? '',
          nosniff: answer.headers['x-content-type-options'] === 'nosniff',
          body,
        }),
      );
    });
    asked.once('error', fail);
    asked.end();
  });
}

describe('rootreach map', () => {
  let running: Running;
  beforeAll(async () => {
    running = await serve(CORNER_LOT, FRENCH_DRAIN, '--port', '4280');
  });
  afterAll(() => running.child.kill());

  it('serves the page, which is told where the opened files are', async () => {
    const page = await ask(running.address, '/');
    expect(page).toMatchObject({ status: 200, type: 'text/html; charset=utf-8', nosniff: true });
    expect(page.body).toContain('<meta name="rootreach-opened" content="opened.json"');
    expect((await ask(running.address, '/index.html?x=1')).body).toBe(page.body);
  });

  it('serves the scripts of the page as scripts', async () => {
    const { body } = await ask(running.address, '/');
    const script = /src="\.?(\/[^"]+\.js)"/.exec(body)?.[1];
    const answer = await ask(running.address, script ?? '');
    expect(answer).toMatchObject({ status: 200, type: 'text/javascript; charset=utf-8', nosniff: true });
    expect(answer.body.length).toBeGreaterThan(1000);
  });

  it('serves the opened files with their names', async () => {
    const answer = await ask(running.address, '/opened.json');
    expect(answer.type).toContain('application/json');
    expect(JSON.parse(answer.body)).toEqual({
      files: [CORNER_LOT, FRENCH_DRAIN].map((path) => ({
        name: path.split('/').pop(),
        text: readFileSync(path, 'utf8'),
      })),
    });
  });

  it.each([
    '/../package.json',
    '/%2e%2e/package.json',
    '/assets/..%2f..%2fpackage.json',
    '/..%5cpackage.json',
    '/%00',
  ])('does not leave its folder for %s', async (path) => {
    const answer = await ask(running.address, path);
    expect(answer.status).toBe(403);
    expect(answer.body).not.toContain('rootreach');
  });

  it('answers 404 for what is not there and for what makes no sense', async () => {
    expect((await ask(running.address, '/nothing.js')).status).toBe(404);
    expect((await ask(running.address, '/assets')).status).toBe(404);
    expect((await ask(running.address, '/%E0%A4%A')).status).toBe(403);
  });

  it('only gives: GET and HEAD', async () => {
    expect(await ask(running.address, '/', { method: 'HEAD' })).toMatchObject({ status: 200, body: '' });
    for (const method of ['POST', 'PUT', 'DELETE']) {
      expect((await ask(running.address, '/', { method })).status).toBe(405);
    }
  });

  it('does not answer to the name of another site', async () => {
    expect((await ask(running.address, '/opened.json', { host: 'example.org' })).status).toBe(403);
    expect((await ask(running.address, '/opened.json', { host: 'localhost:4280' })).status).toBe(200);
  });

  it('takes the next free port, and Ctrl-C ends it with 0', async () => {
    const second = await serve(CORNER_LOT, '--port', new URL(running.address).port);
    expect(second.address).not.toBe(running.address);
    const end = ended(second.child);
    second.child.kill('SIGINT');
    expect(await end).toBe(0);
  });

  it('serves the bare page without a file', async () => {
    const bare = await serve('--port', '4290');
    expect((await ask(bare.address, '/')).body).toContain('<meta name="rootreach-opened" content=""');
    expect((await ask(bare.address, '/opened.json')).status).toBe(404);
    bare.child.kill();
    await ended(bare.child);
  });

  it('ends with 2 for a file that is not there', async () => {
    await expect(serve('not-there.geojson')).rejects.toThrow('cannot read not-there.geojson: no such file');
  });
});
