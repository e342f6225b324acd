#!/usr/bin/env node
import { text } from 'node:stream/consumers';
import type { Io } from './io.js';
import { run } from './run.js';

/** A reader that has seen enough (`| head`) closes the pipe: that is no fault. */
function endQuietly(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit(0);
  process.exit(2);
}

process.stdout.on('error', endQuietly);
process.stderr.on('error', endQuietly);

const { stdin, stdout, stderr, env } = process;
const io: Io = {
  stdout,
  stderr,
  stdin: () => text(stdin),
  now: new Date(),
  columns: stdout.columns,
  isTTY: stdout.isTTY === true,
  stderrIsTTY: stderr.isTTY === true,
  styled: stdout.isTTY === true && (env['NO_COLOR'] ?? '') === '' && env['TERM'] !== 'dumb',
  stopped: () =>
    new Promise((stop) => {
      for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => stop());
    }),
};

process.exitCode = await run(process.argv.slice(2), io);
