import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { CannotDo } from '../cannot-do.js';

const HOST = '127.0.0.1';
/** Ports tried after the first one. */
const TRIES = 20;

function listenOnce(server: Server, port: number): Promise<void> {
  return new Promise((done, fail) => {
    server.once('error', fail);
    server.listen(port, HOST, () => {
      server.off('error', fail);
      done();
    });
  });
}

/** Listens on this machine only, at the port or the next free one; gives the address to open. */
export async function listen(server: Server, port: number): Promise<string> {
  for (let i = 0; i < TRIES && port + i <= 65_535; i++) {
    try {
      await listenOnce(server, port + i);
      return `http://${HOST}:${(server.address() as AddressInfo).port}/`;
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code !== 'EADDRINUSE' && code !== 'EACCES') throw error;
    }
  }
  throw new CannotDo(`no free port from ${port} on: name another with --port`);
}
