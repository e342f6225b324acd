import { access } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Args } from '../args.js';
import { CannotDo } from '../cannot-do.js';
import type { Command, ExitCode } from '../command.js';
import { siteOptions } from '../common-options.js';
import type { Io } from '../io.js';
import { json } from '../print/json.js';
import { listen } from '../serve/listen.js';
import { pageServer } from '../serve/page-server.js';
import { gather } from '../taking-in.js';

const PORT = 4173;

/** Folder of the built map page. */
async function pageFolder(): Promise<string> {
  try {
    const description = fileURLToPath(import.meta.resolve('@rootreach/map/package.json'));
    const folder = join(description, '..', 'dist');
    await access(join(folder, 'index.html'));
    return folder;
  } catch {
    throw new CannotDo('the map page is not built: run `npm run build` first');
  }
}

async function run(args: Args, io: Io): Promise<ExitCode> {
  const port = args.number('port', { least: 0, most: 65_535, whole: true }) ?? PORT;
  const { inputs } = await gather(args.files, {}, io);
  const files = inputs.map(({ name, text }) => ({ name: basename(name), text }));
  const server = pageServer(await pageFolder(), files);
  const address = await listen(server, port);
  const what = files.length === 0 ? '' : ` with ${files.map(({ name }) => name).join(', ')}`;
  // who reads the address may stop it at once
  const stopped = io.stopped();
  io.stdout.write(
    args.flag('json') ? json({ address }) : `The map${what} is at ${address}\nCtrl-C ends it.\n`,
  );
  await stopped;
  server.closeAllConnections();
  await new Promise((done) => server.close(done));
  return 0;
}

/** Serves the map page on this machine with the files opened. */
export const mapCommand: Command = {
  summary: 'show the files on the map page, served on this machine only',
  usage: 'rootreach map [FILE...] [options]',
  examples: ['rootreach map yard.geojson'],
  options: {
    port: { value: 'N', text: `port to serve on; ${PORT} or the next free one if not given` },
    json: { value: null, text: 'print the address as JSON' },
    help: siteOptions['help'] as (typeof siteOptions)[string],
  },
  run,
};
